namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about calcium, potassium, sodium and what binds them.</summary>
internal static class IonRules
{
    public static IDescribedRule[] All => [];
}
