namespace Hydrocolloid.Formulation.Thermal;

/// <summary>How much of a base may be kept back cold.</summary>
public enum ColdShareOutcome
{
    /// <summary>A part of it, up to a largest share.</summary>
    UpToShare,

    /// <summary>All of it: the other bodies keep the mix hot enough.</summary>
    All,

    /// <summary>Nothing: even with all of it hot the mix is under the target.</summary>
    NotEnoughHeat,
}
