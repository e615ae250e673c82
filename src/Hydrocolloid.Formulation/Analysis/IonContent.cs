using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A mineral in a mix, all forms of it together. Immutable, equal by content.</summary>
/// <param name="Name">The mineral.</param>
/// <param name="MilligramsPerKg">Its content in mg/kg of the mix.</param>
/// <param name="MmolPerKg">Its content in mmol/kg of the mix.</param>
public sealed record IonContent(string Name, Reckoned MilligramsPerKg, double MmolPerKg)
{
    /// <summary>The content in mg/kg and mmol/kg.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name} {Numbers.Significant(MilligramsPerKg.Value, 4)} mg/kg ({Numbers.Significant(MmolPerKg, 3)} mmol/kg)";
}
