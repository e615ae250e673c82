using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// Ethanol and water by OIML R 22 (1975): ρ(p, t) = A1 + Σ Ak p^(k-1) + Σ Bk (t-20)^k + ΣΣ Cik p^k (t-20)^i in kg/m³, p the mass fraction of ethanol. Range: 0–100 % by mass,
/// -20 to 40 °C. Alcohol by volume is at 20 °C: q = p ρ(p, 20)/789.24. Volumes contract on mixing, so everything is worked out by mass. Sugar and other extract are
/// not in it: of a liqueur it gives the density without them.
/// </summary>
public static class EthanolWater
{
    /// <summary>Density of ethanol at 20 °C in the definition of alcohol by volume (OIML R 22). Unit: kg/m³.</summary>
    public const double EthanolDensityKilogramsPerCubicMetre = 789.24;

    private const double MinCelsius = -20, MaxCelsius = 40;

    private static readonly double[] s_a =
    [
        998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426,
    ];

    private static readonly double[] s_b = [-0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11];

    private static readonly double[][] s_c =
    [
        [0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045, -12101.64659068747, 22486.46550400788, -26055.62982188164, 18523.73922069467, -7420.201433430137, 1285.617841998974],
        [-0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014, 109.635566657757, -142.2753946421155, 108.043594285623, -44.14153236817392, 7.442971530188783],
        [-0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922, -2.895696483903638, 4.810060584300675, -4.672147440794683, 2.458043105903461, -0.5411227621436812],
        [4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06],
        [-2.788074354782409e-08, 1.345612883493354e-08],
    ];

    /// <summary>Where the formula comes from.</summary>
    public static Citation Source => ChemistrySources.OimlR22;

    /// <summary>Density of the mixture.</summary>
    /// <param name="ethanolPercentByMass">Ethanol in % of the mass, 0–100.</param>
    /// <param name="temperature">Temperature; the formula holds from -20 to 40 °C.</param>
    /// <returns>The density; outside -20 to 40 °C the formula's value at the nearer limit, marked as out of range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is not from 0 to 100.</exception>
    public static Computed<Density> DensityOf(double ethanolPercentByMass, Temperature temperature)
    {
        double p = Guard.InRange(ethanolPercentByMass, 0, 100, "%") / 100;
        double celsius = Guard.Celsius(temperature);
        return new(Density.FromKilogramsPerCubicMeter(At(p, Math.Min(Math.Max(celsius, MinCelsius), MaxCelsius))),
            OutsideRange.Check("temperature", celsius, "°C", MinCelsius, MaxCelsius));
    }

    /// <summary>Alcohol by volume at 20 °C.</summary>
    /// <param name="ethanolPercentByMass">Ethanol in % of the mass, 0–100.</param>
    /// <returns>Ethanol in % of the volume at 20 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is not from 0 to 100.</exception>
    public static double PercentByVolume(double ethanolPercentByMass) => 100 * Strength(Guard.InRange(ethanolPercentByMass, 0, 100, "%") / 100);

    /// <summary>Ethanol by mass from alcohol by volume at 20 °C.</summary>
    /// <param name="ethanolPercentByVolume">Ethanol in % of the volume at 20 °C, 0–100.</param>
    /// <returns>Ethanol in % of the mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is not from 0 to 100.</exception>
    public static double PercentByMass(double ethanolPercentByVolume)
    {
        double q = Guard.InRange(ethanolPercentByVolume, 0, 100, "%") / 100;
        return q == 0 ? 0 : q >= Strength(1) ? 100 : 100 * Brent.FindRoot(p => Strength(p) - q, 0, 1, 1e-14, 200);
    }

    /// <summary>Ethanol by mass from a density of ethanol and water alone.</summary>
    /// <param name="density">The density.</param>
    /// <param name="temperature">Its temperature, -20 to 40 °C.</param>
    /// <returns>Ethanol in % of the mass; a density outside water's and ethanol's gives the nearer limit, marked as out of range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not from -20 to 40 °C.</exception>
    public static Computed<double> PercentByMass(Density density, Temperature temperature)
    {
        double rho = Guard.KilogramsPerCubicMetre(density);
        double celsius = Guard.InRange(Guard.Celsius(temperature), MinCelsius, MaxCelsius, "°C", nameof(temperature));
        double water = At(0, celsius), ethanol = At(1, celsius);
        OutsideRange? outside = OutsideRange.Check("density", rho, "kg/m³", ethanol, water);
        return new(rho >= water ? 0 : rho <= ethanol ? 100 : 100 * Brent.FindRoot(p => At(p, celsius) - rho, 0, 1, 1e-14, 200), outside);
    }

    /// <summary>Mass of a volume at 20 °C.</summary>
    /// <param name="volume">The volume at 20 °C.</param>
    /// <param name="ethanolPercentByVolume">Ethanol in % of the volume at 20 °C, 0–100.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Mass MassOf(Volume volume, double ethanolPercentByVolume)
        => Mass.FromGrams(Guard.Millilitres(volume) * At(PercentByMass(ethanolPercentByVolume) / 100, 20) / 1000);

    /// <summary>Mixes two strengths by mass, with the volume that is lost.</summary>
    /// <param name="first">Mass of the first liquid.</param>
    /// <param name="firstPercentByVolume">Its alcohol in % of the volume at 20 °C, 0–100; 0 is water.</param>
    /// <param name="second">Mass of the second liquid.</param>
    /// <param name="secondPercentByVolume">Its alcohol in % of the volume at 20 °C, 0–100; 0 is water.</param>
    /// <returns>The blend.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or both masses are 0.</exception>
    public static EthanolBlend Blend(Mass first, double firstPercentByVolume, Mass second, double secondPercentByVolume)
    {
        double a = Guard.Grams(first), b = Guard.Grams(second);
        if (a + b <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(second), b, "There must be more than 0 g in all.");
        }

        double pa = PercentByMass(firstPercentByVolume) / 100, pb = PercentByMass(secondPercentByVolume) / 100;
        double p = ((a * pa) + (b * pb)) / (a + b);
        double parts = (a / At(pa, 20)) + (b / At(pb, 20));
        double whole = (a + b) / At(p, 20);
        return new(Mass.FromGrams(a + b), Volume.FromMilliliters(whole * 1000), 100 * p, 100 * Strength(p), Volume.FromMilliliters((parts - whole) * 1000), Mass.FromGrams(b));
    }

    /// <summary>What brings a liquid to a strength: water to dilute it, spirit to fortify it. Exact by mass: x = m (p - p target)/(p target - p added).</summary>
    /// <param name="liquid">Mass of the liquid.</param>
    /// <param name="percentByVolume">Its alcohol in % of the volume at 20 °C, 0–100.</param>
    /// <param name="addedPercentByVolume">Alcohol of what is added, in % of the volume at 20 °C, 0–100; 0 is water.</param>
    /// <param name="targetPercentByVolume">The strength to reach in % of the volume at 20 °C, between the two.</param>
    /// <returns>The blend; <see cref="EthanolBlend.Added"/> is what goes in.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the target does not lie between the liquid's strength and, without it, that of what is added.</exception>
    public static EthanolBlend ToStrength(Mass liquid, double percentByVolume, double addedPercentByVolume, double targetPercentByVolume)
    {
        double m = Guard.PositiveGrams(liquid);
        double p = PercentByMass(percentByVolume), added = PercentByMass(addedPercentByVolume), target = PercentByMass(targetPercentByVolume);
        Shares.RequireBetween(targetPercentByVolume, percentByVolume, addedPercentByVolume, "% by volume");
        return Blend(Mass.FromGrams(m), percentByVolume, Mass.FromGrams(Shares.Added(m, p, added, target)), addedPercentByVolume);
    }

    private static double Strength(double p) => p * At(p, 20) / EthanolDensityKilogramsPerCubicMetre;

    private static double At(double p, double celsius)
    {
        double t = celsius - 20;
        double sum = Polynomial(s_a, p) + (t * Polynomial(s_b, t));
        double power = t;
        foreach (double[] row in s_c)
        {
            sum += power * p * Polynomial(row, p);
            power *= t;
        }

        return sum;
    }

    private static double Polynomial(double[] coefficients, double x)
    {
        double sum = 0;
        for (int i = coefficients.Length - 1; i >= 0; i--)
        {
            sum = (sum * x) + coefficients[i];
        }

        return sum;
    }
}
