using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>What was read of a CSV of weights, and what could not be. Immutable, equal by content.</summary>
public sealed record WeightsReading
{
    internal WeightsReading(ValueList<WeightRow> rows, ValueList<CsvProblem> problems)
    {
        Rows = rows;
        Problems = problems;
    }

    /// <summary>The weights, in the order of the file.</summary>
    public ValueList<WeightRow> Rows { get; }

    /// <summary>Every record that could not be read; empty if all could.</summary>
    public ValueList<CsvProblem> Problems { get; }

    /// <summary>A formula of the weights that were read, each addition dosed on the base; <see cref="FormulaBuilder.TryBuild"/> says whether it can be.</summary>
    /// <param name="name">The name of the formula.</param>
    /// <param name="inBase">
    /// Which weights are the base. Null to go by the column <c>phase</c>; without that column the base is all but hydrocolloids, salts,
    /// acids and sweeteners, and if that leaves nothing, the heaviest weight.
    /// </param>
    /// <returns>The builder.</returns>
    public FormulaBuilder ToFormula(string name, Func<WeightRow, bool>? inBase = null)
    {
        FormulaBuilder builder = Formula.Named(name);
        WeightRow[] rows = [.. Rows];
        inBase ??= rows.Any(IsBaseByItsNature) ? IsBaseByItsNature : r => ReferenceEquals(r, rows.OrderByDescending(w => w.Grams).First());
        bool[] isBase = [.. rows.Select(r => inBase(r))];
        string[] labels = Labels(rows);
        builder.Base(b =>
        {
            for (int i = 0; i < rows.Length; i++)
            {
                _ = isBase[i] ? b.Weigh(rows[i].Ingredient, rows[i].Mass, Line(rows[i], labels[i])) : b;
            }
        });
        foreach (IGrouping<string, int> phase in Enumerable.Range(0, rows.Length).Where(i => !isBase[i]).GroupBy(i => rows[i].Phase is { Length: > 0 } p ? p : "additions", StringComparer.Ordinal))
        {
            builder.Then(phase.Key, p =>
            {
                foreach (int i in phase)
                {
                    p.Weigh(rows[i].Ingredient, rows[i].Mass, DoseReference.Base, Line(rows[i], labels[i]));
                }
            });
        }

        return builder;
    }

    private static bool IsBaseByItsNature(WeightRow row)
        => row.Phase is { } phase ? phase.Length == 0 : row.Ingredient.Profile is null && row.Ingredient.Category is not ("salt" or "acid" or "sweetener");

    /// <summary>An ingredient that stands in several lines without a label gets one with a number.</summary>
    private static string[] Labels(WeightRow[] rows)
    {
        var taken = new HashSet<string>(rows.Select(r => r.Label).OfType<string>(), StringComparer.Ordinal);
        return [.. rows.Select(r =>
        {
            string label = r.Label ?? r.Ingredient.Id;
            for (int i = 2; r.Label is null && !taken.Add(label); i++)
            {
                label = r.Ingredient.Id + "-" + Numbers.Exact(i);
            }

            return label;
        })];
    }

    private static Action<LineBuilder> Line(WeightRow row, string label) => line =>
    {
        _ = label == row.Ingredient.Id ? line : line.Labelled(label);
        _ = row.Form == LineForm.Pieces ? line.Pieces() : line;
    };
}
