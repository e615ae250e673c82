using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>Units of firmness: g/cm² and N or g on a probe to pressure and back, and the Bloom test as a pressure. A load on another probe, at another depth or speed is another test: the pressures compare roughly, not exactly.</summary>
public static class Firmness
{
    // Standard gravity, SI brochure [recalled].
    private const double MetresPerSecondSquared = 9.80665;
    private const double BloomDepthMetres = 0.004;
    private const double PoissonRatio = 0.5;

    /// <summary>Diameter of the flat plunger of the Bloom test: 12.7 mm [recalled, and read in a producer's bulletin].</summary>
    public static Length BloomPlunger => Length.FromMillimeters(12.7);

    /// <summary>A gel strength in g/cm² as a pressure: 1 g/cm² is 98.0665 Pa.</summary>
    /// <param name="gramsPerSquareCentimetre">The strength in g/cm², 0 to 1e6.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is not from 0 to 1e6 g/cm².</exception>
    public static Pressure FromGramsPerSquareCentimetre(double gramsPerSquareCentimetre)
        => Pressure.FromPascals(Guard.InRange(gramsPerSquareCentimetre, 0, 1e6, "g/cm²") * 10 * MetresPerSecondSquared);

    /// <summary>A pressure in g/cm².</summary>
    /// <param name="pressure">The pressure.</param>
    /// <returns>The strength in g/cm².</returns>
    public static double InGramsPerSquareCentimetre(Pressure pressure) => Guard.Pascals(pressure) / (10 * MetresPerSecondSquared);

    /// <summary>The weight of a mass: the force of a load stated in g or kg.</summary>
    /// <param name="load">The load.</param>
    /// <returns>The force.</returns>
    public static Force WeightOf(Mass load) => Force.FromNewtons(Guard.Grams(load) / 1000 * MetresPerSecondSquared);

    /// <summary>A force on a flat round probe as a nominal pressure.</summary>
    /// <param name="force">The force, 0 to 1e6 N.</param>
    /// <param name="probeDiameter">The probe's diameter, above 0 and up to 1 m.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force or the diameter is outside its range.</exception>
    public static Pressure On(Force force, Length probeDiameter) => Pressure.FromPascals(Guard.Newtons(force) / SquareMetres(probeDiameter));

    /// <summary>The force of a nominal pressure on a flat round probe.</summary>
    /// <param name="pressure">The pressure.</param>
    /// <param name="probeDiameter">The probe's diameter, above 0 and up to 1 m.</param>
    /// <returns>The force.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static Force ForceOf(Pressure pressure, Length probeDiameter) => Force.FromNewtons(Guard.Pascals(pressure) * SquareMetres(probeDiameter));

    /// <summary>
    /// Young's modulus behind a Bloom reading, E = F (1 - ν²)/(2 a d) for a flat punch on a half-space [Johnson, Contact Mechanics, recalled]; ν = 0.5, so the shear modulus is a
    /// third of it. Rough: the cup is no half-space and 4 mm is deep, so tens of per cent.
    /// </summary>
    /// <param name="bloomGrams">The reading, 0 to 1000. Unit: g Bloom.</param>
    /// <returns>The modulus.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The reading is not from 0 to 1000 g.</exception>
    public static Estimate<Pressure> YoungsModulusOfBloom(double bloomGrams)
    {
        double newtons = Guard.InRange(bloomGrams, 0, 1000, "g") / 1000 * MetresPerSecondSquared;
        double pascals = newtons * (1 - (PoissonRatio * PoissonRatio)) / (2 * (BloomPlunger.Meters / 2) * BloomDepthMetres);
        return new(Pressure.FromPascals(pascals), null, null, Reliance.Screening, "flat punch on a half-space at 4 mm; expect an error of tens of per cent", BloomMethod);
    }

    /// <summary>Young's modulus of gelatin gels of elastography phantoms, E = 0.0034 · C^2.09 kPa with C in g/L; Bloom and range not stated.</summary>
    /// <param name="gramsPerLitre">Gelatin in g/L, 0–200.</param>
    /// <returns>The modulus.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is not from 0 to 200 g/L.</exception>
    public static Estimate<Pressure> YoungsModulusOfGelatin(double gramsPerLitre)
        => new(Pressure.FromPascals(PowerLaw.At(3.4, Guard.InRange(gramsPerLitre, 0, 200, "g/L"), 2.09)), null, null, Reliance.Screening,
            "E = 0.0034 · C^2.09 kPa; the grade and the range of the formula are not stated", Hall);

    private static double SquareMetres(Length diameter)
    {
        double metres = Guard.InRange(Guard.Metres(diameter), 1e-6, 1, "m", nameof(diameter));
        return Math.PI / 4 * metres * metres;
    }
}
