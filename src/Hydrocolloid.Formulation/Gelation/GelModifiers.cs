using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.Interpolation;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>What else changes a gel's firmness, where a figure is published: time, fat, sugar, weeping. Acid and heat: <see cref="StrengthLoss"/>; ions: <see cref="IonDemand"/>; partners: the catalogue's <see cref="Synergy"/> entries; alcohol: facts of the catalogue only, no figure.</summary>
public static class GelModifiers
{
    // Nguyen 2014: shear modulus of 3 % gelatin with 0, 10, 20, 40 % of oil.
    private static readonly double[] OilPercent = [0, 10, 20, 40];
    private static readonly double[] OilModulusKilopascals = [2.01, 1.68, 1.1, 0.88];
    private static readonly LinearSpline OilModulus = LinearSpline.InterpolateSorted(OilPercent, OilModulusKilopascals);

    /// <summary>How long a gelatin gel needs to its full firmness: 15–20 h at 10 °C, 5–8 h at 5 °C; straight between. It still rises a little after that.</summary>
    /// <param name="temperature">The temperature it is kept at; figures are for 5–10 °C.</param>
    /// <returns>The range of times; outside 5–10 °C that of the nearer limit, marked.</returns>
    public static Estimate<Duration> GelatinMaturation(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        double share = (Math.Min(Math.Max(celsius, 5), 10) - 5) / 5;
        return new(null, Duration.FromHours(5 + (10 * share)), Duration.FromHours(8 + (12 * share)), Reliance.Screening,
            "gelatin comes to its full firmness in 5–8 h at 5 °C and in 15–20 h at 10 °C", GelationSources.GelatinMaturation, OutsideRange.Check("temperature", celsius, "°C", 5, 10));
    }

    /// <summary>The firmness of gelatin with fat in it that does not bind to the network, in % of that without: measured at 3 % gelatin with 0–40 % of oil, straight between the points.</summary>
    /// <param name="fatPercent">Fat in % of the gel, 0–100.</param>
    /// <returns>The firmness in % of that without fat; above 40 % that at 40 %, marked.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The fat is not from 0 to 100 %.</exception>
    public static Estimate<double> GelatinWithFat(double fatPercent)
    {
        double fat = Guard.InRange(fatPercent, 0, 100, "%");
        double percent = 100 * OilModulus.Interpolate(Math.Min(fat, 40)) / OilModulusKilopascals[0];
        // At 20 % of oil the loss was 18 to 45 % over 3 to 7 % of gelatin.
        return new(percent, null, null, Reliance.Screening, "measured at 3 % gelatin; at 20 % of oil the loss was 18–45 % over 3–7 % gelatin", Nguyen, OutsideRange.Check("fat", fat, "% of the gel", 0, 40));
    }

    /// <summary>The strength of agar with sugar in it, in % of that without: 120–180 at 30 % of sucrose. Other shares are not published as figures; beyond a maximum more sugar weakens.</summary>
    /// <param name="sucrosePercent">Sucrose in % of the gel, 0–100.</param>
    /// <returns>The range in %; at another share than 30 % no figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 100 %.</exception>
    public static Estimate<double> AgarWithSugar(double sucrosePercent)
        => Math.Abs(Guard.InRange(sucrosePercent, 0, 100, "%") - 30) < 1e-9
            ? new(null, 120, 180, Reliance.Screening, "30 % of sucrose makes agar 1.2–1.8 times as strong", AgarSugar)
            : Estimate<double>.None("Sugar strengthens agar up to a maximum and weakens it beyond; the figure is known at 30 % only.", AgarSugar);

    /// <summary>The share of all the liquid that will weep out that has done so after a time: k t/(1 + k t), second order (agarose and sugar-agarose gels). The rate k and the final amount come from a trial; no figures were read.</summary>
    /// <param name="ratePerHour">The rate k, 0 to 1e6. Unit: 1/h.</param>
    /// <param name="time">The time.</param>
    /// <returns>The share in %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rate is outside its range.</exception>
    public static Estimate<double> Syneresis(double ratePerHour, Duration time)
    {
        double kt = Guard.InRange(ratePerHour, 0, 1e6, "1/h") * Guard.Seconds(time) / 3600;
        return new(100 * kt / (1 + kt), null, null, Reliance.Screening, "k t/(1 + k t); half of the final amount after 1/k", GelationSources.Syneresis);
    }
}
