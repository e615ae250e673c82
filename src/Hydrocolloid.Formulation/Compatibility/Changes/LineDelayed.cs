namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>A line moved to a later phase, such as acid that goes in after the heat. Every mass stays what it was.</summary>
/// <param name="Label">The label of the line, an addition.</param>
/// <param name="Phase">The name of the phase it goes to: a later one, or a new one at the end.</param>
public sealed record LineDelayed(string Label, string Phase) : IFormulaChange
{
    /// <inheritdoc/>
    /// <remarks>
    /// The phase must not be an earlier one. The line's dose is restated on the base, and doses on what precedes are restated on what
    /// then precedes, because that no longer holds the line.
    /// </remarks>
    public Formula ApplyTo(Formula formula)
    {
        FormulaLine line = formula.Line(Label);
        if (line.IsBase)
        {
            throw new ArgumentException($"'{Label}' is a part of the base: hold it back from the heat by naming the carriers.", nameof(formula));
        }

        FormulaBuilder builder = formula.ToBuilder();
        DraftPhase from = builder.PhaseDrafts[line.PhaseIndex];
        DraftPhase to = PhasePlace.Of(builder, Phase, before: null);
        int last = builder.PhaseDrafts.IndexOf(to);
        if (last <= line.PhaseIndex)
        {
            throw new ArgumentException($"The phase '{Phase}' does not come after '{Label}'.", nameof(formula));
        }

        double mass = formula.Proportions.MassOf(line);
        for (int p = line.PhaseIndex + 1; p <= last && p < formula.Phases.Count; p++)
        {
            Restate(builder.PhaseDrafts[p].Lines, formula.Proportions.PrecedingMass(p), mass, DoseReferenceKind.Preceding);
            if (formula.Proportions.PrecedingWater(p) is { } water && line.Ingredient.WaterPercent is { } percent)
            {
                Restate(builder.PhaseDrafts[p].Lines, water, mass * percent / 100, DoseReferenceKind.Water);
            }
        }

        int index = from.Lines.FindIndex(l => l.Label == Label);
        to.Lines.Add(from.Lines[index] with { Percent = mass * 100, Reference = DoseReference.Base });
        from.Lines.RemoveAt(index);
        builder.PhaseDrafts.RemoveAll(p => p.Lines.Count == 0);
        return builder.Build();
    }

    private static void Restate(List<DraftLine> lines, double before, double less, DoseReferenceKind kind)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            if (lines[i].Reference.Kind == kind)
            {
                lines[i] = lines[i] with { Percent = lines[i].Percent * before / (before - less) };
            }
        }
    }
}
