using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>The strength a producer states for one lot or brand of an agent, such as 200 g Bloom. Immutable, equal by content.</summary>
public sealed record Grade
{
    internal const double MaxValue = 100_000;

    /// <summary>States a grade.</summary>
    /// <param name="scale">The scale it is measured on.</param>
    /// <param name="value">The figure on that scale: g Bloom, g/cm² or °SAG; above 0, up to 100 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above 0 and up to 100 000, or the scale is not defined.</exception>
    public Grade(GradeScale scale, double value)
    {
        Scale = scale is >= GradeScale.Bloom and <= GradeScale.Sag ? scale : throw new ArgumentOutOfRangeException(nameof(scale));
        Value = Guard.InRange(value, double.Epsilon, MaxValue, UnitOf(scale));
    }

    /// <summary>The scale.</summary>
    public GradeScale Scale { get; }

    /// <summary>The figure on the scale: g Bloom, g/cm² or °SAG.</summary>
    public double Value { get; }

    /// <summary>The grade as the trade writes it.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Numbers.Significant(Value, 6) + " " + UnitOf(Scale);

    private static string UnitOf(GradeScale scale) => scale switch
    {
        GradeScale.Bloom => "g Bloom",
        GradeScale.GelStrength => "g/cm²",
        _ => "°SAG",
    };
}
