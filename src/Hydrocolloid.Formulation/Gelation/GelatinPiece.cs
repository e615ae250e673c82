using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>A sheet of leaf gelatin or a packet of powder. Sheets of different names are not equally firm in the same liquid: convert by weight. Immutable, equal by content.</summary>
public sealed record GelatinPiece
{
    /// <summary>States a piece, such as the sheet a kitchen buys.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="bloom">Its Bloom, g; both limits above 0 and up to 1000.</param>
    /// <param name="massGrams">Mass of one, above 0 and up to 1000. Unit: g.</param>
    /// <param name="source">Where the figures come from; null if the user measured them.</param>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is missing or outside its range.</exception>
    public GelatinPiece(string name, NumberRange bloom, double massGrams, Citation? source = null)
    {
        Name = Guard.NotBlank(name);
        Guard.InRange(bloom.Min ?? double.NaN, double.Epsilon, 1000, "g", nameof(bloom));
        Guard.InRange(bloom.Max ?? double.NaN, double.Epsilon, 1000, "g", nameof(bloom));
        Bloom = bloom;
        MassGrams = Guard.InRange(massGrams, double.Epsilon, 1000, "g");
        Source = source ?? Citation.Measured;
    }

    /// <summary>A bronze sheet: 125–155 g Bloom, 3.3 g.</summary>
    public static GelatinPiece Bronze { get; } = new("bronze sheet", new(125, 155), 3.3, Leaf);

    /// <summary>A silver sheet: 160 g Bloom, 2.5 g.</summary>
    public static GelatinPiece Silver { get; } = new("silver sheet", new(160, 160), 2.5, Leaf);

    /// <summary>A gold sheet: 190–220 g Bloom, 2.0 g.</summary>
    public static GelatinPiece Gold { get; } = new("gold sheet", new(190, 220), 2.0, Leaf);

    /// <summary>A platinum sheet: 235–265 g Bloom, 1.7 g.</summary>
    public static GelatinPiece Platinum { get; } = new("platinum sheet", new(235, 265), 1.7, Leaf);

    /// <summary>A titanium sheet: 100–120 g Bloom, 5.0 g [recalled, weakly].</summary>
    public static GelatinPiece Titanium { get; } = new("titanium sheet", new(100, 120), 5.0, GelatinHandbooks);

    /// <summary>A US retail packet of powder: 225–250 g Bloom, 7 g [recalled].</summary>
    public static GelatinPiece PowderPacket { get; } = new("powder packet", new(225, 250), 7.0, GelatinHandbooks);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its Bloom. Unit: g.</summary>
    public NumberRange Bloom { get; }

    /// <summary>Mass of one. Unit: g.</summary>
    public double MassGrams { get; }

    /// <summary>Where the figures come from.</summary>
    public Citation Source { get; }

    /// <summary>Its grade, the middle of its Bloom range.</summary>
    public Grade Grade => new(GradeScale.Bloom, (Bloom.Min!.Value + Bloom.Max!.Value) / 2);

    /// <summary>How firm one piece makes a liquid against another piece in as much of the same liquid: Bloom · mass², as a ratio without unit.</summary>
    /// <param name="other">The other piece.</param>
    /// <returns>The ratio: above 1 if this one is firmer.</returns>
    /// <exception cref="ArgumentNullException">The other piece is null.</exception>
    public double FirmnessAgainst(GelatinPiece other) => FirmnessIndex / Guard.NotNull(other).FirmnessIndex;

    /// <summary>How many of these replace a mass of gelatin of some grade. Unit of the results: pieces.</summary>
    /// <param name="mass">The mass of the gelatin.</param>
    /// <param name="grade">Its grade.</param>
    /// <param name="rule">The rule.</param>
    /// <returns>The count, and by the other rule; a piece of the lowest Bloom of the range takes more.</returns>
    /// <exception cref="ArgumentNullException">The grade is null.</exception>
    /// <exception cref="ArgumentException">The grade is not in Bloom.</exception>
    public (double Count, double ByOtherRule) CountFor(Mass mass, Grade grade, GradeRule rule = GradeRule.StrengthCurve)
    {
        GradeChange change = StrengthModel.For(Hydrocolloids.GelatinTypeA).Substitute(mass, grade, Grade, rule);
        return (change.Result.Value!.Value.Grams / MassGrams, change.ByOtherRule!.Value.Grams / MassGrams);
    }

    /// <summary>The piece with its figures.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}, {Bloom} g Bloom, {Numbers.Significant(MassGrams, 3)} g";

    // Firmness ∝ Bloom · c², and c ∝ mass in the same liquid.
    internal double FirmnessIndex => Grade.Value * MassGrams * MassGrams;
}
