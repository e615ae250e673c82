namespace Hydrocolloid.Formulation;

/// <summary>How a figure follows from its source.</summary>
public enum CitationBasis
{
    /// <summary>It was read there.</summary>
    Read,

    /// <summary>It is from memory; the source is where it is believed to stand.</summary>
    Recalled,

    /// <summary>It was worked out or judged from the source, which does not state it.</summary>
    Estimated,
}
