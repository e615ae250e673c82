namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What a dose rests on.</summary>
public enum DoseStanding
{
    /// <summary>The window stands in its source as it is used here; its citation says whether it was read there or is recalled.</summary>
    Published,

    /// <summary>Worked out from a published window: corrected for the grade.</summary>
    Derived,

    /// <summary>A judgement of the catalogue, from the published values beside it, or a rule of the trade without a source.</summary>
    Judged,

    /// <summary>From the kitchen's own trial.</summary>
    Measured,
}
