namespace Hydrocolloid.Formulation;

/// <summary>What the 100 % of a dose is.</summary>
public enum DoseReferenceKind
{
    /// <summary>The base phase.</summary>
    Base,

    /// <summary>Everything in the base and in the phases before the line's own phase.</summary>
    Preceding,

    /// <summary>All lines together.</summary>
    Total,

    /// <summary>The water in everything in the base and in the phases before the line's own phase.</summary>
    Water,

    /// <summary>Another line, earlier in the formula.</summary>
    Line,
}
