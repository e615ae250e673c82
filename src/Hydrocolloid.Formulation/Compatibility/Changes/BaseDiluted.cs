using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>A liquid in place of a part of the base, every other part less in proportion.</summary>
/// <param name="Ingredient">The liquid; if the base holds it already, its share grows.</param>
/// <param name="PercentOfBase">How much of the new base it takes, % by weight; over 0 and under 100.</param>
public sealed record BaseDiluted(Ingredient Ingredient, double PercentOfBase) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula)
    {
        FormulaBuilder builder = formula.ToBuilder();
        List<DraftLine> lines = builder.BaseLines;
        double kept = (100 - Guard.InRange(PercentOfBase, 0, 100, "%")) / 100;
        for (int i = 0; i < lines.Count; i++)
        {
            lines[i] = lines[i] with { Percent = lines[i].Percent * kept };
        }

        int there = lines.FindIndex(l => l.Label == Ingredient.Id);
        if (there < 0)
        {
            lines.Add(new DraftLine(Ingredient, PercentOfBase, null, DoseReference.Base, LineDetails.None));
        }
        else
        {
            lines[there] = lines[there] with { Percent = lines[there].Percent + PercentOfBase };
        }

        return builder.Build();
    }
}
