using CsCheck;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Properties;

/// <summary>
/// Laws of the mass model on random formulas of at most 15 lines. A mass is a handful of products and sums of doubles, each good to
/// 1e-16; lines dosed on the total divide by what they leave, at least a few % here. So 1e-12 of the value holds all the rounding.
/// </summary>
public class MassProperties
{
    private const double Noise = 1e-12;

    private static Gen<Formula> Formulas => RandomFormulas.Possible;

    private static Gen<double> Grams => Gen.Double[-3, 6].Select(power => Math.Pow(10, power));

    [Fact]
    public void Lines_add_up_to_the_total()
        => Gen.Select(Formulas, Grams).Sample((formula, grams) =>
        {
            Batch batch = formula.OfBase(grams);
            return Near(batch.Lines.Sum(l => l.Mass.Grams), batch.AssembledMass.Grams)
                && Near(batch.Lines.Where(l => l.Line.IsBase).Sum(l => l.Mass.Grams), grams)
                && Near(formula.Proportions.PrecedingMass(formula.Phases.Count), formula.Proportions.Total);
        });

    [Fact]
    public void Every_line_is_its_percentage_of_its_reference()
        => Formulas.Sample(formula => formula.Lines.All(line =>
            Near(formula.Proportions.MassOf(line), line.Dose.PercentByMass / 100 * ReferenceMass(formula, line))));

    [Fact]
    public void Scaling_is_linear()
        => Gen.Select(Formulas, Grams, Gen.Double[0.01, 100]).Sample((formula, grams, factor) =>
            Same(formula.OfBase(grams * factor), formula.OfBase(grams), factor));

    [Fact]
    public void Scaling_twice_is_scaling_once()
        => Gen.Select(Formulas, Grams, Grams).Sample((formula, first, second) =>
        {
            Batch detour = formula.ScaleTo(Yield.Assembled(formula.OfBase(first).AssembledMass));
            return Same(detour, formula.OfBase(first), 1)
                && Same(formula.ScaleTo(Yield.Assembled(Mass.FromGrams(second))), formula.ScaleTo(Yield.Finished(Mass.FromGrams(second))), 1);
        });

    [Fact]
    public void Stock_of_any_line_gives_the_batch_that_uses_it_up()
        => Gen.Select(Formulas, Grams, Gen.Int[0, 100]).Sample((formula, grams, pick) =>
        {
            Batch batch = formula.OfBase(grams);
            string label = batch.Lines[pick % batch.Lines.Count].Line.Label;
            Batch back = formula.ScaleTo(Yield.FromStocks(new Stock(label, batch.MassOf(label))));
            return back.LimitedBy == label && Same(back, batch, 1);
        });

    [Fact]
    public void Weights_to_percentages_and_back_is_the_identity_on_every_reference()
        => Gen.Select(Formulas, Grams.Where(g => g < 1e5), Gen.Int[0, 4].Array[15]).Sample((formula, grams, kinds) =>
        {
            Batch batch = formula.OfBase(grams);
            FormulaBuilder builder = Formula.Named("weighed").Base(b =>
            {
                foreach (BatchLine line in batch.Lines.Where(l => l.Line.IsBase))
                {
                    b.Weigh(line.Line.Ingredient, line.Mass);
                }
            });
            for (int i = 0; i < formula.Phases.Count; i++)
            {
                builder.Then(formula.Phases[i].Name, p =>
                {
                    foreach (BatchLine line in batch.Lines.Where(l => l.Line.PhaseIndex == i))
                    {
                        p.Weigh(line.Line.Ingredient, line.Mass, RandomFormulas.Reference(kinds[line.Line.Index % 15]));
                    }
                });
            }

            Formula weighed = builder.Build();

            // Building it once more goes by the percentages alone.
            return Same(weighed.OfBase(grams), batch, 1) && Same(weighed.ToBuilder().Build().OfBase(grams), batch, 1);
        });

    [Fact]
    public void Reexpressing_and_back_leaves_the_masses_and_the_dose()
        => Gen.Select(Formulas.Where(f => f.Phases.Count > 0), Gen.Int[0, 4], Gen.Int[0, 100]).Sample((formula, kind, pick) =>
        {
            FormulaLine[] additions = [.. formula.Lines.Where(l => !l.IsBase)];
            FormulaLine line = additions[pick % additions.Length];
            Formula there = formula.Reexpress(line.Label, RandomFormulas.Reference(kind));
            Formula back = there.Reexpress(line.Label, line.Dose.Reference);
            return Same(there.OfBase(1000), formula.OfBase(1000), 1) && Same(back.OfBase(1000), formula.OfBase(1000), 1)
                && Near(back.Line(line.Label).Dose.PercentByMass, line.Dose.PercentByMass);
        });

    [Fact]
    public void Explained_values_are_the_batchs_own()
        => Gen.Select(Formulas, Grams).Sample((formula, grams) =>
        {
            Batch batch = formula.OfBase(grams);
            return batch.Lines.All(l => batch.Explain(l.Line.Label).Value.Equals(l.Mass.Grams)) && batch.ExplainTotal().Value.Equals(batch.AssembledMass.Grams);
        });

    [Fact]
    public void Rounded_masses_are_steps_of_the_balance_no_more_than_half_a_step_away()
        => Gen.Select(Formulas, Grams, Gen.OneOf<double>(0.001, 0.01, 0.1, 0.5, 1, 5)).Sample((formula, grams, step) =>
            formula.OfBase(grams).WeighOn(Balance.WithDivision(Mass.FromGrams(step))).Lines.All(l =>
                Math.Abs(l.Rounded.Grams - l.Exact.Grams) <= step / 2 + 1e-12 * l.Exact.Grams
                && Math.Abs(l.Rounded.Grams / step - Math.Round(l.Rounded.Grams / step)) < 1e-6
                && l.ExceedsTolerance == (l.ErrorPercent is { } e ? Math.Abs(e) > 5 * (1 + 1e-9) : l.Exact.Grams > 0 && l.RoundedDose is null)));

    private static bool Near(double actual, double expected) => Math.Abs(actual - expected) <= Noise * Math.Abs(expected);

    private static bool Same(Batch actual, Batch expected, double factor)
        => actual.Lines.Zip(expected.Lines, (a, e) => Near(a.Mass.Grams, e.Mass.Grams * factor)).All(near => near);

    private static double ReferenceMass(Formula formula, FormulaLine line) => line.Dose.Reference.Kind switch
    {
        DoseReferenceKind.Base => 1,
        DoseReferenceKind.Preceding => formula.Lines.Where(l => l.PhaseIndex < line.PhaseIndex).Sum(formula.Proportions.MassOf),
        DoseReferenceKind.Total => formula.Lines.Sum(formula.Proportions.MassOf),
        DoseReferenceKind.Water => formula.Lines.Where(l => l.PhaseIndex < line.PhaseIndex).Sum(l => formula.Proportions.MassOf(l) * l.Ingredient.Composition!.Value.WaterPercent!.Value / 100),
        _ => formula.Proportions.MassOf(formula.Line(line.Dose.Reference.Label!)),
    };
}
