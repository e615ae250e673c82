namespace Hydrocolloid.Formulation.Internal;

/// <summary>What bounds every JSON text the library reads.</summary>
internal static class JsonLimits
{
    /// <summary>Levels of objects and lists, the document itself included. A formula needs about six.</summary>
    public const int MaxDepth = 16;
}
