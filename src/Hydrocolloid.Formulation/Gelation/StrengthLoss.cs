using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>
/// Gel strength lost by acid and heat. For carrageenan a handbook's table in closed form: a quarter of the strength goes in t₂₅ = 3 min · 3^((pH - 4)/0.5) · 3^((100 °C - T)/10 K),
/// and steps add up, S/S₀ = 0.75^Σ(t/t₂₅). For gelatin, agar and the rest no figure could be read, and none is given.
/// </summary>
public static class StrengthLoss
{
    // Masson 1955: k = 2.75e13 exp(-29 200/(R T)) per hour with R = 1.987 cal/(mol K), as the paper works.
    private const double MassonPerHour = 2.75e13;
    private const double MassonCaloriesPerMol = 29_200;
    private const double CalorieGasConstant = 1.987;
    private const double JoulesPerCalorie = 4.184;

    /// <summary>Activation energy of the scission of carrageenan at pH 7: 29.2 kcal/mol (Masson 1955). Unit: kJ/mol.</summary>
    public const double CarrageenanActivationEnergy = MassonCaloriesPerMol * JoulesPerCalorie / 1000;

    /// <summary>How long hot acid takes to cost carrageenan 20–25 % of its gel strength. Uncertain by a factor of two; 80–120 °C, pH 3–6.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="ph">The pH, 0–14.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH is not from 0 to 14.</exception>
    public static Estimate<Duration> CarrageenanQuarterLoss(Temperature temperature, double ph)
    {
        double celsius = Guard.Celsius(temperature);
        double minutes = QuarterLossMinutes(celsius, Guard.InRange(ph, 0, 14, "pH"));
        return new(Duration.FromMinutes(minutes), Duration.FromMinutes(minutes / 2), Duration.FromMinutes(minutes * 2), Reliance.Screening,
            $"a quarter of the gel strength is lost in about {Numbers.Significant(minutes, 2)} min", CarrageenanAcid, Outside(celsius, ph));
    }

    /// <summary>The gel strength that is left after heating, in % of the strength without it.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="steps">The steps.</param>
    /// <returns>The rest in %; for an agent other than carrageenan no value, and what to do instead.</returns>
    /// <exception cref="ArgumentNullException">The agent or the steps are null.</exception>
    public static Estimate<double> Remaining(Ingredient agent, IEnumerable<HeatStep> steps)
    {
        Ingredient entry = Guard.NotNull(agent);
        HeatStep[] heating = [.. Guard.NotNull(steps)];
        while (entry.BasedOn is { } based)
        {
            entry = based;
        }

        switch (entry.Id)
        {
            case "carrageenan-kappa" or "carrageenan-iota":
                return Carrageenan(heating);
            case "gelatin-type-a" or "gelatin-type-b" or "gelatin-fish":
                return Estimate<double>.None("Viscosity and jelly strength of gelatin fall with time at 60 °C, faster hotter and in acid, but no rate was read: hold it below 60 °C, as short as possible, and at pH 4 or above.", GelatinHeat);
            case "agar":
                return Estimate<double>.None("Agar boiled with acid loses gelling power with time, but no rate was read: add the acid off the boil and do not boil again.", AgarAcid);
            default:
                return Estimate<double>.None("No rate of loss is known here for this agent.", Citation.CommonPractice);
        }
    }

    /// <summary>How many of a carrageenan chain's bonds break in an hour at pH 7: k = 2.75e13 · exp(-29 200/(1.987 T)) (Masson 1955), 60–101 °C.</summary>
    /// <param name="temperature">The temperature, above -200 °C.</param>
    /// <returns>The share of the bonds that breaks, per h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static Computed<double> CarrageenanScissionPerHour(Temperature temperature)
    {
        double kelvins = Kinetics.Kelvins(temperature);
        return new(MassonPerHour * Math.Exp(-MassonCaloriesPerMol / (CalorieGasConstant * kelvins)),
            OutsideRange.Check("temperature", kelvins + Guard.AbsoluteZeroCelsius, "°C", 60, 101));
    }

    private static Estimate<double> Carrageenan(HeatStep[] heating)
    {
        double Left(double factor) => 100 * Math.Pow(0.75, factor * heating.Sum(s => s.Time.Minutes / QuarterLossMinutes(s.Temperature.DegreesCelsius, s.Ph)));
        double value = Left(1);
        OutsideRange? outside = heating.Select(s => Outside(s.Temperature.DegreesCelsius, s.Ph)).FirstOrDefault(o => o is not null)
            ?? OutsideRange.Check("remaining strength", value, "%", 50, 100); // not first order in time beyond half
        return new(value, Left(2), Left(0.5), Reliance.Screening, $"{Numbers.Significant(value, 2)} % of the gel strength is left; the times are good to a factor of two", CarrageenanAcid, outside);
    }

    private static double QuarterLossMinutes(double celsius, double ph) => 3 * Math.Pow(3, ((ph - 4) / 0.5) + ((100 - celsius) / 10));

    private static OutsideRange? Outside(double celsius, double ph)
        => OutsideRange.Check("temperature", celsius, "°C", 80, 120) ?? OutsideRange.Check("pH", ph, "", 3, 6);
}
