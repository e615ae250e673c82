using UnitsNet;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Another temperature at which a line is added.</summary>
/// <param name="Label">The label of the line.</param>
/// <param name="Temperature">The temperature.</param>
public sealed record LineWarmed(string Label, Temperature Temperature) : IFormulaChange
{
    /// <inheritdoc/>
    public Formula ApplyTo(Formula formula)
    {
        FormulaLine line = formula.Line(Label);
        FormulaBuilder builder = formula.ToBuilder();
        List<DraftLine> lines = line.IsBase ? builder.BaseLines : builder.PhaseDrafts[line.PhaseIndex].Lines;
        int index = lines.FindIndex(l => l.Label == Label);
        lines[index] = lines[index] with { Details = lines[index].Details with { Temperature = Temperature } };
        return builder.Build();
    }
}
