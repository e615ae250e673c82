namespace Hydrocolloid.Formulation;

/// <summary>What decides how much of a base can be kept unheated.</summary>
public enum UnheatedLimit
{
    /// <summary>Nothing has to be heated: all of it can stay cold.</summary>
    NothingIsHeated,

    /// <summary>The mix must stay above where it sets.</summary>
    Setting,

    /// <summary>A hydrocolloid would be more concentrated than any figure of the catalogue.</summary>
    Concentration,

    /// <summary>Nothing can be kept back: even all of it hot, the mix is too cold.</summary>
    NotEnoughHeat,
}
