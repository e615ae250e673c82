namespace Hydrocolloid.Formulation;

/// <summary>A result with the word whether its relation holds there. Equal by content.</summary>
/// <typeparam name="T">The type of the result.</typeparam>
/// <param name="Value">The result.</param>
/// <param name="Outside">What lies outside the range of the relation; null if nothing does.</param>
public readonly record struct Computed<T>(T Value, OutsideRange? Outside)
{
    /// <summary>True if the relation holds where it was used; false if the value is an extrapolation.</summary>
    public bool InRange => Outside is null;
}
