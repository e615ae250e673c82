namespace Hydrocolloid.Formulation;

/// <summary>What kind of thing stands in the way of a method.</summary>
public enum ConflictKind
{
    /// <summary>No order of steps satisfies two protocols.</summary>
    Order,

    /// <summary>The pot does not get hot enough.</summary>
    NotHotEnough,

    /// <summary>It would set before it is where it belongs.</summary>
    SetsTooEarly,

    /// <summary>A limit of a hydrocolloid is passed.</summary>
    Limit,

    /// <summary>There is too little liquid for the hydrocolloid.</summary>
    TooLittleLiquid,

    /// <summary>It would make lumps.</summary>
    Lumps,

    /// <summary>The kitchen lacks equipment.</summary>
    Equipment,

    /// <summary>The thermometer or the balance is too coarse.</summary>
    Instrument,

    /// <summary>Something that it needs to set is not there.</summary>
    NothingSetsIt,

    /// <summary>It melts where it is served, or melts what it is cast on.</summary>
    Melts,
}
