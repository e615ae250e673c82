namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about storage: drying, swelling, freezing and thawing.</summary>
internal static class StorageRules
{
    public static IDescribedRule[] All => [];
}
