using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>
/// How firm an agent's gel is by dose and grade: S(c) = grade · (c/c₀)ⁿ, where c₀ is the concentration of the grade's own test; and what follows from it:
/// the dose for a firmness and the mass of another grade. For an agent whose firmness depends mostly on something else (ions, sugar, acid) there is no number
/// but the outcome <see cref="Reliance.QualitativeOnly"/> with the reason. Immutable.
/// </summary>
public sealed class StrengthModel
{
    // Standard recipe of the Bloom test: 7.50 g in 105 g of water, 6 2/3 %.
    private const double BloomTestPercent = 100 * 7.5 / (7.5 + 105);

    // n = 2 is what a series of 3-7 % gives (1.97, 95 % interval 1.31-2.64, Nguyen 2014); the handbooks' working range is 1.7-2.3.
    private static readonly StrengthModel Gelatin = new(GradeScale.Bloom, BloomTestPercent, 2, new(1.7, 2.3), new(1.5, 10), Reliance.Predictive, GelatinHandbooks,
        "load in the Bloom test = Bloom · (c/6.667 %)², 10 °C, 17 h");

    private static readonly StrengthModel FishGelatin = new(GradeScale.Bloom, BloomTestPercent, 2, new(1.7, 2.3), new(1.5, 10), Reliance.Screening, GelatinHandbooks,
        "load in the Bloom test = Bloom · (c/6.667 %)², 10 °C, 17 h; measured on mammalian gelatin, and cold-water fish gelatin does not set at serving temperature");

    // Exponent from 82 and 535 g/cm² at 0.5 and 1.5 %; handbooks 1.7-2.3, agarose 1.39.
    private static readonly StrengthModel Agar = new(GradeScale.GelStrength, 1.5, 1.7, new(1.4, 2.3), new(0.4, 2), Reliance.Screening, Shauli,
        "strength = grade · (c/1.5 %)^1.7; measure one gel of the lot before relying on it");

    private static readonly StrengthModel HighMethoxylPectin = new(GradeScale.Sag, null, 1, new(1, 1), new(null, null), Reliance.QualitativeOnly, SagMethod,
        "the firmness of a high-methoxyl pectin gel depends on solids and acid; °SAG is the sugar one part of pectin sets in the standard gel");

    private static readonly StrengthModel Carrageenan = None(Hermansson, "the ion form alone changes the modulus of a carrageenan gel up to 600-fold, so dose and grade give no firmness: make a trial in the dish's own liquid");

    private static readonly StrengthModel Alginate = None(GelationSources.Alginate, "the firmness of an alginate gel depends on calcium and on the share of guluronic blocks: make a trial");

    private static readonly StrengthModel Gellan = None(Tang, "the firmness of a gellan gel depends on the kind and amount of ions: make a trial");

    private static readonly StrengthModel LowMethoxylPectin = None(SagMethod, "the firmness of a low-methoxyl pectin gel depends on calcium, acid and solids: make a trial");

    private static readonly StrengthModel Unknown = None(Citation.CommonPractice, "no published relation of firmness to dose is known here for this agent: make a trial");

    private readonly double _exponent;

    private StrengthModel(GradeScale? scale, double? referencePercent, double exponent, NumberRange exponentRange, NumberRange validPercent, Reliance reliance, Citation source, string explanation)
    {
        Scale = scale;
        ReferencePercent = referencePercent;
        _exponent = exponent;
        ExponentRange = scale is null ? null : exponentRange;
        ValidPercent = validPercent;
        Reliance = reliance;
        Source = source;
        Explanation = explanation;
    }

    /// <summary>The scale of the agent's grades; null if no grade scale gives a usable relation.</summary>
    public GradeScale? Scale { get; }

    /// <summary>The concentration c₀ of the grade's test, % of the gel; null if dose and grade give no firmness.</summary>
    public double? ReferencePercent { get; }

    /// <summary>The exponent n; it has no unit. Null if no grade scale gives a usable relation.</summary>
    public double? Exponent => Scale is null ? null : _exponent;

    /// <summary>The range of the exponent in the sources; it has no unit.</summary>
    public NumberRange? ExponentRange { get; }

    /// <summary>Doses the curve was made for, % of the gel.</summary>
    public NumberRange ValidPercent { get; }

    /// <summary>How far the firmness can be relied on.</summary>
    public Reliance Reliance { get; }

    /// <summary>Where the curve comes from.</summary>
    public Citation Source { get; }

    /// <summary>The relation, or why there is none.</summary>
    public string Explanation { get; }

    /// <summary>The model of an agent. An own ingredient has that of the entry it was made from.</summary>
    /// <param name="agent">The agent.</param>
    /// <returns>The model; for an agent of which nothing is known one that says so.</returns>
    /// <exception cref="ArgumentNullException">The agent is null.</exception>
    public static StrengthModel For(Ingredient agent)
    {
        Ingredient entry = Guard.NotNull(agent);
        while (entry.BasedOn is { } based)
        {
            entry = based;
        }

        return entry.Id switch
        {
            "gelatin-type-a" or "gelatin-type-b" => Gelatin,
            "gelatin-fish" => FishGelatin,
            "agar" => Agar,
            "carrageenan-kappa" or "carrageenan-iota" => Carrageenan,
            "sodium-alginate" or "sodium-alginate-high-g" or "sodium-alginate-high-m" => Alginate,
            "gellan-low-acyl" or "gellan-high-acyl" => Gellan,
            "pectin-low-methoxyl" or "pectin-amidated-low-methoxyl" => LowMethoxylPectin,
            { } id when id.StartsWith("pectin-high-methoxyl", StringComparison.Ordinal) => HighMethoxylPectin,
            _ => Unknown,
        };
    }

    /// <summary>The firmness of a gel, in the unit of the grade: g of load in the Bloom test, or g/cm².</summary>
    /// <param name="grade">The agent's grade.</param>
    /// <param name="percent">The dose in % of the gel, above 0 and up to 100.</param>
    /// <returns>The firmness; <see cref="Estimate{T}.Low"/> and <see cref="Estimate{T}.High"/> are what the range of the exponent leaves.</returns>
    /// <exception cref="ArgumentNullException">The grade is null.</exception>
    /// <exception cref="ArgumentException">The grade is on another scale.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The dose is not above 0 and up to 100 %, or the grade is below 1.</exception>
    public Estimate<double> StrengthAt(Grade grade, double percent)
    {
        double dose = Guard.InRange(percent, double.Epsilon, 100, "%");
        double reference = Figure(grade);
        return Curve(n => PowerLaw.At(reference, dose / ReferencePercent!.Value, n), StrengthUnit, dose);
    }

    /// <summary>The dose for a firmness, in % of the gel: c = c₀ · (S/grade)^(1/n).</summary>
    /// <param name="grade">The agent's grade.</param>
    /// <param name="strength">The firmness in the unit of the grade (g of load in the Bloom test, or g/cm²), above 0 and up to 100 000.</param>
    /// <returns>The dose.</returns>
    /// <exception cref="ArgumentNullException">The grade is null.</exception>
    /// <exception cref="ArgumentException">The grade is on another scale.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The firmness is not above 0 and up to 100 000, or the grade is below 1.</exception>
    public Estimate<double> DoseFor(Grade grade, double strength)
    {
        double target = Guard.InRange(strength, double.Epsilon, 100_000, "");
        double reference = Figure(grade);
        return Curve(n => PowerLaw.At(ReferencePercent!.Value, target / reference, 1 / n), "% of the gel", null);
    }

    /// <summary>The mass of another grade that gives the same firmness in the same batch.</summary>
    /// <param name="mass">The mass of the first grade.</param>
    /// <param name="from">The first grade.</param>
    /// <param name="to">The other grade.</param>
    /// <param name="rule">The rule; for pectin both rules are the same.</param>
    /// <returns>The mass by the rule, and what the other rule would give.</returns>
    /// <exception cref="ArgumentNullException">A grade is null.</exception>
    /// <exception cref="ArgumentException">A grade is on another scale.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A grade is below 1.</exception>
    public GradeChange Substitute(Mass mass, Grade from, Grade to, GradeRule rule = GradeRule.StrengthCurve)
    {
        double grams = Guard.Grams(mass);
        Guard.Defined((int)rule, (int)GradeRule.Proportional, nameof(rule));
        double ratio = Figure(from) / Figure(to);
        if (Scale is null)
        {
            return new(rule, Estimate<Mass>.None(Explanation, Source), null);
        }

        double curve = PowerLaw.At(grams, ratio, 1 / _exponent), straight = grams * ratio;
        if (rule == GradeRule.Proportional)
        {
            // By definition for °SAG; for the other scales a rule of the kitchen without a stated uncertainty.
            Reliance reliance = Scale == GradeScale.Sag ? Reliance.Predictive : Reliance.Screening;
            return new(rule, new(Mass.FromGrams(straight), null, null, reliance, Told(StraightName, straight, CurveName, curve), Scale == GradeScale.Bloom ? Leaf : Source), Mass.FromGrams(curve));
        }

        (double low, double high) = Sorted(PowerLaw.At(grams, ratio, 1 / ExponentRange!.Value.Min!.Value), PowerLaw.At(grams, ratio, 1 / ExponentRange.Value.Max!.Value));
        return new(rule, new(Mass.FromGrams(curve), Mass.FromGrams(low), Mass.FromGrams(high), Scale == GradeScale.Sag ? Reliance.Predictive : Reliance,
            Told(CurveName, curve, StraightName, straight), Source), Mass.FromGrams(straight));

        string Told(string used, double result, string other, double otherResult)
            => $"{Text(grams)} of {from} is {Text(result)} of {to} by {used}" + (used == other ? "" : $"; {Text(otherResult)} by {other}");
    }

    /// <summary>The grade of a lot by one measured gel, in the unit of the grade (g Bloom or g/cm²): S · (c₀/c)ⁿ. The gel must have been made and tested as the grade's test asks, but for the dose.</summary>
    /// <param name="percent">The dose in % of the gel, above 0 (0.01) and up to 100.</param>
    /// <param name="strength">The strength measured, in the unit of the grade, above 0 and up to 100 000.</param>
    /// <returns>The figure of the grade.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Estimate<double> GradeOf(double percent, double strength)
    {
        double dose = Guard.InRange(percent, 0.01, 100, "%"), measured = Guard.InRange(strength, double.Epsilon, 100_000, "");
        return Curve(n => PowerLaw.At(measured, ReferencePercent!.Value / dose, n), StrengthUnit, dose);
    }

    /// <summary>The explanation.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString() => Explanation;

    /// <summary>A dose for one grade as a dose for another, in %: c · (S₁/S₂)^(1/n).</summary>
    internal double Corrected(double percent, double from, double to) => PowerLaw.At(percent, from / to, 1 / _exponent);

    private string CurveName => Scale switch
    {
        GradeScale.Bloom => "mass × √Bloom",
        GradeScale.Sag => StraightName,
        _ => $"mass × strength^(1/{Numbers.Significant(_exponent, 3)})",
    };

    private string StraightName => Scale switch { GradeScale.Bloom => "mass × Bloom", GradeScale.Sag => "mass × °SAG", _ => "mass × strength" };

    private static StrengthModel None(Citation source, string reason) => new(null, null, 1, default, default, Reliance.QualitativeOnly, source, reason);

    private string StrengthUnit => Scale == GradeScale.Bloom ? "g" : "g/cm²";

    private Estimate<double> Curve(Func<double, double> at, string unit, double? percent)
    {
        if (ReferencePercent is null)
        {
            return Estimate<double>.None(Explanation, Source);
        }

        double value = at(_exponent);
        (double low, double high) = Sorted(at(ExponentRange!.Value.Min!.Value), at(ExponentRange.Value.Max!.Value));
        string text = $"{Numbers.Significant(value, 3)} {unit}, from {Numbers.Significant(low, 3)} to {Numbers.Significant(high, 3)}: {Explanation}";
        return new(value, low, high, Reliance, text, Source, OutsideRange.Check("dose", percent ?? value, "% of the gel", ValidPercent.Min!.Value, ValidPercent.Max!.Value));
    }

    private double Figure(Grade grade)
        => Scale is null || Guard.NotNull(grade).Scale == Scale ? Guard.InRange(Guard.NotNull(grade).Value, 1, 100_000, "", nameof(grade))
            : throw new ArgumentException($"Must be on the scale of the agent's grades, but is {grade}.", nameof(grade));

    private static (double Low, double High) Sorted(double a, double b) => (Math.Min(a, b), Math.Max(a, b));

    private static string Text(double grams) => Numbers.Significant(grams, 3) + " g";
}
