namespace Hydrocolloid.Formulation.Serialization;

/// <summary>What bounds a document.</summary>
internal static class DocumentLimits
{
    public const string Format = "hydrocolloid-formula";

    public const int Version = 1;
}
