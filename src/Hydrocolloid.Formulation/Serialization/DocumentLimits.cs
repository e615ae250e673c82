namespace Hydrocolloid.Formulation.Serialization;

/// <summary>What bounds a document.</summary>
internal static class DocumentLimits
{
    public const string Format = "hydrocolloid-formula";

    public const int Version = 1;

    /// <summary>Levels of objects and lists, the document itself included.</summary>
    public const int MaxDepth = 16;
}
