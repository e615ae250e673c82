namespace Hydrocolloid.Formulation.Gelation;

/// <summary>A result with its uncertainty, its source and how far it can be relied on; or the reason why there is none. Immutable.</summary>
/// <typeparam name="T">The type of the result; the member that returns it names the unit of a plain number.</typeparam>
public sealed class Estimate<T>
    where T : struct
{
    internal Estimate(T? value, T? low, T? high, Reliance reliance, string explanation, Citation source, OutsideRange? outside = null)
    {
        Value = value;
        Low = low;
        High = high;
        Reliance = reliance;
        Explanation = explanation;
        Source = source;
        Outside = outside;
    }

    /// <summary>The result; null if the sources give a range only, or nothing.</summary>
    public T? Value { get; }

    /// <summary>The lower end of what the sources allow; null if not known.</summary>
    public T? Low { get; }

    /// <summary>The upper end of what the sources allow; null if not known.</summary>
    public T? High { get; }

    /// <summary>How far it can be relied on.</summary>
    public Reliance Reliance { get; }

    /// <summary>The relation used, or why there is no result, in a sentence.</summary>
    public string Explanation { get; }

    /// <summary>Where the relation comes from.</summary>
    public Citation Source { get; }

    /// <summary>What lies outside the range of the relation; null if nothing does. Outside, the result is an extrapolation.</summary>
    public OutsideRange? Outside { get; }

    /// <summary>True if there is a result or a range, and the relation holds where it was used.</summary>
    public bool InRange => Outside is null && Reliance != Reliance.QualitativeOnly;

    /// <summary>The explanation, and what lies outside.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Outside is null ? Explanation : Explanation + " (" + Outside + ")";

    internal static Estimate<T> None(string explanation, Citation source) => new(null, null, null, Reliance.QualitativeOnly, explanation, source);
}
