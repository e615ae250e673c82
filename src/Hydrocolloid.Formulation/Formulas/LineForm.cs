namespace Hydrocolloid.Formulation;

/// <summary>Whether a line takes part in the gel.</summary>
public enum LineForm
{
    /// <summary>Part of the continuous mix: it dissolves, mixes in or gels.</summary>
    Mix,

    /// <summary>Pieces folded in, which do not take part in the gel.</summary>
    Pieces,
}
