namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about temperatures at work and at service.</summary>
internal static class TemperatureRules
{
    public static IDescribedRule[] All => [];
}
