using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Temperatures: units, joining, boiling, cooling.</summary>
internal static class HeatKinds
{
    public static ExerciseKind[] All =>
    [
        new("temperature-units", "°C and °F, readings and differences", 2, TemperatureUnits),
        new("joining", "Joining hot and cold", 3, Joined, needsCalculator: true),
        new("boiling", "Boiling at altitude", 1, Boil, needsCalculator: true),
        new("cooling-time", "How long it cools", 1, CoolingTime, needsCalculator: true),
    ];

    private static string N(double value) => Numbers.Significant(value, 6);

    // 1: a reading; 2: a difference.
    private static ExerciseDraft? TemperatureUnits(ExerciseDraw draw)
    {
        bool toFahrenheit = !draw.IsUs;
        string from = toFahrenheit ? "°C" : "°F", to = toFahrenheit ? "°F" : "°C";
        string factor = toFahrenheit ? "9/5" : "5/9";
        if (draw.Level == 1)
        {
            double reading = toFahrenheit ? draw.Number("reading", 5, 95, 5, from) : draw.Number("reading", 41, 203, 9, from);
            double Convert(double value) => toFahrenheit ? Temperature.FromDegreesCelsius(value).DegreesFahrenheit : Temperature.FromDegreesFahrenheit(value).DegreesCelsius;
            return new ExerciseDraft($"A thermometer shows {N(reading)} {from}. What is that in {to}?", AnswerForm.Reading(QuantityKind.Temperature, to, 1),
                made => made(FahrenheitAsCelsius) && made(Without32) ? null
                    : made(FahrenheitAsCelsius) ? WorkedSolution.Of(new SolutionStep("Not converted.", "reading", N(reading), reading, to))
                    : made(Without32) ? WorkedSolution.Of(new SolutionStep("Only the factor.", "reading", $"{N(reading)} × {factor}", toFahrenheit ? reading * 9 / 5 : reading * 5 / 9, to))
                    : WorkedSolution.Of(new SolutionStep(toFahrenheit ? "Times 9/5, then 32 more." : "Take off 32, then times 5/9.", "reading", toFahrenheit ? $"{N(reading)} × 9/5 + 32" : $"({N(reading)} - 32) × 5/9", Convert(reading), to)),
                FahrenheitAsCelsius, Without32);
        }

        double difference = toFahrenheit ? draw.Number("difference", 5, 60, 5, from) : draw.Number("difference", 9, 108, 9, from);
        double right = toFahrenheit ? TemperatureDelta.FromDegreesCelsius(difference).DegreesFahrenheit : TemperatureDelta.FromDegreesFahrenheit(difference).DegreesCelsius;
        return new ExerciseDraft($"A sol must stay {N(difference)} {from} warmer than its setting temperature. How many {to} of difference is that?", AnswerForm.Reading(QuantityKind.TemperatureDifference, to, 1),
            made => made(FahrenheitAsCelsius) && made(DifferenceWith32) ? null
                : made(FahrenheitAsCelsius) ? WorkedSolution.Of(new SolutionStep("Not converted.", "difference", N(difference), difference, to))
                : made(DifferenceWith32) ? WorkedSolution.Of(new SolutionStep("As though it were a reading.", "difference", toFahrenheit ? $"{N(difference)} × 9/5 + 32" : $"({N(difference)} - 32) × 5/9", toFahrenheit ? right + 32 : (difference - 32) * 5 / 9, to))
                : WorkedSolution.Of(new SolutionStep("In a difference only the factor counts.", "difference", $"{N(difference)} × {factor}", right, to)),
            FahrenheitAsCelsius, DifferenceWith32);
    }

    // 1: equal specific heats; 2: different ones; 3: how warm the pieces must be.
    private static ExerciseDraft? Joined(ExerciseDraw draw)
    {
        double heatHot = draw.Number("specific-heat-hot", 4, 4, 1, "kJ/(kg·K)");
        double heatCold = draw.Level == 1 ? draw.State("specific-heat-cold", heatHot, "kJ/(kg·K)") : draw.Number("specific-heat-cold", 2.8, 3.6, 0.1, "kJ/(kg·K)");
        double hotGrams = draw.Number("hot-mass", 300, 2000, 50, "g"), coldGrams = draw.Number("cold-mass", 100, Math.Min(1000, Math.Max(hotGrams - 50, 100)), 50, "g");
        bool inverse = draw.Level == 3;
        var hot = draw.Temperature("hot-temperature", 70, 95, 1);
        var second = inverse ? draw.Temperature("target", 45, 65, 1) : draw.Temperature("cold-temperature", 3, 25, 1);
        string unit = draw.IsUs ? "°F" : "°C";
        double Shown(double celsius) => draw.IsUs ? Temperature.FromDegreesCelsius(celsius).DegreesFahrenheit : celsius;

        double hotC = hot.Temperature.DegreesCelsius, secondC = second.Temperature.DegreesCelsius;
        WorkedSolution? Solve(Func<Misconception, bool> made)
        {
            // A plain average takes equal masses; then specific heats that are left out too leave nothing to weigh with.
            double m1 = made(PlainAverage) ? 1000 : hotGrams, m2 = made(PlainAverage) ? 1000 : coldGrams;
            bool noHeats = made(SpecificHeatForgotten) || made(PlainAverage);
            double c1 = noHeats ? 4 : heatHot, c2 = noHeats ? 4 : heatCold;
            if (made(PlainAverage) && made(SpecificHeatForgotten))
            {
                return null;
            }

            JoiningBody Body(double grams, double heat, Temperature t) => JoiningBody.OfSpecificHeat(UnitsNet.Mass.FromGrams(grams), t, SpecificEntropy.FromKilojoulesPerKilogramKelvin(heat));
            JoiningBody sol = Body(m1, c1, hot.Temperature);
            double k1 = m1 * c1 / 1000, k2 = m2 * c2 / 1000, celsius;
            SolutionStep last;
            if (inverse)
            {
                NeededTemperature needed = Joining.TemperatureNeeded(Body(m2, c2, second.Temperature), [sol], second.Temperature);
                if (needed.Outcome != NeededOutcome.Possible)
                {
                    return null;
                }

                celsius = needed.Temperature.DegreesCelsius;
                last = new SolutionStep("The pieces may take up what the sol gives off.", "pieces", $"{N(secondC)} - {N(k1)}/{N(k2)} × ({N(hotC)} - {N(secondC)})", celsius, "°C");
            }
            else
            {
                celsius = Joining.Of([sol, Body(m2, c2, second.Temperature)]).Temperature.DegreesCelsius;
                last = new SolutionStep("Each temperature counts with its heat capacity.", "mix", $"({N(k1)} × {N(hotC)} + {N(k2)} × {N(secondC)}) / ({N(k1)} + {N(k2)})", celsius, "°C");
            }

            WorkedSolution solution = WorkedSolution.Of(
                new SolutionStep("Heat capacity is mass times specific heat.", "sol", $"{N(m1 / 1000)} kg × {N(c1)} kJ/(kg·K)", k1, "kJ/K"),
                new SolutionStep("Heat capacity is mass times specific heat.", "cold part", $"{N(m2 / 1000)} kg × {N(c2)} kJ/(kg·K)", k2, "kJ/K"),
                last).After([.. hot.Conversion, .. second.Conversion]);
            return !draw.IsUs ? solution
                : made(FahrenheitAsCelsius) ? solution.Then(new SolutionStep("Not converted back.", "answer", N(celsius), celsius, unit))
                : solution.Then(new SolutionStep("Times 9/5, then 32 more.", "answer", $"{N(celsius)} × 9/5 + 32", Shown(celsius), unit));
        }

        Misconception[] mistakes = [PlainAverage, .. draw.Level > 1 ? new[] { SpecificHeatForgotten } : [], .. draw.IsUs ? new[] { FahrenheitAsCelsius } : []];
        string start = $"{N(hotGrams)} g of sol at {hot.Text} (specific heat {N(heatHot)} kJ/(kg·K)) {(inverse ? "is to be joined with" : "is joined with")} {N(coldGrams)} g of fruit";
        return new ExerciseDraft(
            start + (inverse ? $" (specific heat {N(heatCold)} kJ/(kg·K)). The mix shall have {second.Text}. How warm must the fruit be? No heat is lost."
                : $" at {second.Text} (specific heat {N(heatCold)} kJ/(kg·K)). What temperature has the mix? No heat is lost."),
            AnswerForm.Reading(QuantityKind.Temperature, unit, 1), Solve, mistakes);
    }

    private static ExerciseDraft? Boil(ExerciseDraw draw)
    {
        double metres = draw.Number("altitude", 600, 4000, 100, "m");
        PotPressure pot = PotPressure.AtAltitude(Length.FromMeters(metres));
        double pascals = pot.Absolute.Pascals;
        double celsius = Boiling.PointOf(new LiquidShares(100), pot).Temperature.DegreesCelsius;
        double low = Math.Floor(celsius);
        double Kilopascals(double t) => Numbers.RoundHalfAway(SaturatedWater.PressureAt(Temperature.FromDegreesCelsius(t)).Value.Kilopascals, 2);
        double air = draw.State("air-pressure", Numbers.RoundHalfAway(pascals / 1000, 2), "kPa");
        double p1 = draw.State("pressure-at-" + N(low), Kilopascals(low), "kPa"), p2 = draw.State("pressure-at-" + N(low + 1), Kilopascals(low + 1), "kPa");
        // In proportion between two rows of the steam table, as on the board; the boiling point of the library must agree.
        double share = (air - p1) / (p2 - p1);
        return Math.Abs(low + share - celsius) > 0.02 ? null : new ExerciseDraft(
            $"At {N(metres)} m the air presses with {N(air)} kPa. Steam has {N(p1)} kPa at {N(low)} °C and {N(p2)} kPa at {N(low + 1)} °C. At what temperature does water boil there?",
            AnswerForm.Reading(QuantityKind.Temperature, "°C", 1),
            made => made(SeaLevelBoil)
                ? WorkedSolution.Of(new SolutionStep("The boil at sea level.", "boil", "100 °C", 100, "°C"))
                : WorkedSolution.Of(
                    new SolutionStep("Water boils where its steam presses as much as the air; between two rows go in proportion.", "share of the step", $"({N(air)} - {N(p1)}) / ({N(p2)} - {N(p1)})", share, ""),
                    new SolutionStep("Add it to the lower row.", "boil", $"{N(low)} °C + {N(share)} °C", low + share, "°C")),
            SeaLevelBoil);
    }

    private static ExerciseDraft? CoolingTime(ExerciseDraw draw)
    {
        double medium = draw.Number("surroundings", 2, 22, 2, "°C"), from = draw.Number("first-reading", 70, 90, 2, "°C"), to = draw.Number("second-reading", 48, 64, 2, "°C");
        double minutes = draw.Number("minutes-between", 5, 20, 1, "min"), target = draw.Number("target", 30, 44, 2, "°C");
        var taken = Duration.FromMinutes(minutes);
        Duration constant = NewtonCooling.TimeConstant(Temperature.FromDegreesCelsius(from), Temperature.FromDegreesCelsius(to), taken, Temperature.FromDegreesCelsius(medium));
        if (NewtonCooling.TimeUntil(Temperature.FromDegreesCelsius(to), Temperature.FromDegreesCelsius(target), Temperature.FromDegreesCelsius(medium), constant).Time is not { } more || target <= medium)
        {
            return null;
        }

        return new ExerciseDraft(
            $"A stirred sol cools in surroundings of {N(medium)} °C from {N(from)} °C to {N(to)} °C in {N(minutes)} min. How many more minutes to {N(target)} °C?",
            AnswerForm.Number(QuantityKind.Duration, "min"),
            made => made(LinearCooling)
                ? WorkedSolution.Of(new SolutionStep("Equal drops in equal times.", "time", $"{N(minutes)} min × ({N(to)} - {N(target)}) / ({N(from)} - {N(to)})", minutes * (to - target) / (from - to), "min"))
                : WorkedSolution.Of(
                    new SolutionStep("The difference to the surroundings falls by equal factors in equal times.", "time constant", $"{N(minutes)} min / ln(({N(from)} - {N(medium)}) / ({N(to)} - {N(medium)}))", constant.Minutes, "min"),
                    new SolutionStep("The same law onwards.", "time", $"{N(constant.Minutes)} min × ln(({N(to)} - {N(medium)}) / ({N(target)} - {N(medium)}))", more.Minutes, "min")),
            LinearCooling);
    }
}
