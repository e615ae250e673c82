using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// Joining and tempering: bodies of different temperatures stirred to one, by the balance of heat Σ H(t) = Σ H(tᵢ) - loss, H(t) = m·∫c dt. Specific heats come from the composition and change
/// with the temperature, or are given. Good to about 0.5 K where masses and temperatures are known; it is the temperature once all is even: around cold pieces the sol is colder
/// for the minutes that they take to warm.
/// </summary>
public static class Joining
{
    private const double SeaLevelBoilCelsius = 99.974;

    /// <summary>The temperature after joining.</summary>
    /// <param name="bodies">The bodies, the vessel among them; at least one with a mass.</param>
    /// <param name="loss">The heat lost meanwhile; none unless stated.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentException">There is no body with a mass.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The loss is more heat than there is down to absolute zero.</exception>
    public static JoinedMix Of(IReadOnlyList<JoiningBody> bodies, HeatLoss loss = default)
    {
        Guard.NotNull(bodies);
        Polynomial capacity = default;
        double heat = -loss.Joules, min = double.MaxValue, max = double.MinValue;
        bool isFood = false, isIce = false;
        for (int i = 0; i < bodies.Count; i++)
        {
            JoiningBody body = bodies[i];
            capacity = capacity.Plus(body.JoulesPerKgK.Times(body.Kilograms));
            heat += body.Joules;
            min = Math.Min(min, body.Celsius);
            max = Math.Max(max, body.Celsius);
            isFood |= body.IsFood;
            isIce |= body.IsIce;
        }

        if (!(capacity.A > 0))
        {
            throw new ArgumentException("There must be a body with a mass of more than 0 g.", nameof(bodies));
        }

        double coldest = isIce || loss.Joules > 0 ? Guard.AbsoluteZeroCelsius : min;
        if (capacity.Integral(coldest) - heat > 1e-6 * capacity.A)
        {
            throw new ArgumentOutOfRangeException(nameof(loss), loss.Joules, "The bodies do not hold so much heat.");
        }

        double even = Even(capacity, heat, coldest, max);
        double celsius = loss.WattsPerKelvin == 0 ? even : new LumpedCooling(capacity, loss.SurroundingsCelsius).After(even, loss.WattsPerKelvin * loss.Seconds);
        double lost = loss.Joules + (celsius == even ? 0 : capacity.Integral(even) - capacity.Integral(celsius));
        return new(celsius, capacity, lost, loss.IsEstimate, isFood ? FoodProperties.InRange(celsius) : null);
    }

    /// <summary>How warm one body must be for the mix to come to a temperature: the pieces, or the sol.</summary>
    /// <param name="body">The body; its temperature does not count.</param>
    /// <param name="others">The other bodies.</param>
    /// <param name="target">Temperature of the mix.</param>
    /// <param name="loss">The heat lost meanwhile; none unless stated.</param>
    /// <param name="boilsAt">Where the body boils, 0–150 °C; water at sea level unless stated.</param>
    /// <returns>The temperature between 0 °C and the boil, or the limit that was met.</returns>
    /// <exception cref="ArgumentException">The body has no mass.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The body is ice, or a number is outside its range.</exception>
    public static NeededTemperature TemperatureNeeded(JoiningBody body, IReadOnlyList<JoiningBody> others, Temperature target, HeatLoss loss = default, Temperature? boilsAt = null)
    {
        if (body.Kilograms == 0)
        {
            throw new ArgumentException("Must have a mass of more than 0 g.", nameof(body));
        }

        double celsius = Guard.Celsius(target);
        double boil = boilsAt is { } stated ? Guard.InRange(Guard.Celsius(stated), 0, 150, "°C", nameof(boilsAt)) : SeaLevelBoilCelsius;
        JoiningBody[] bodies = [.. Guard.NotNull(others), body];
        JoinedMix With(double t)
        {
            bodies[bodies.Length - 1] = body.At(Temperature.FromDegreesCelsius(t));
            return Of(bodies, loss);
        }

        NeededTemperature Answer(NeededOutcome outcome, double t) => new(outcome, Temperature.FromDegreesCelsius(t), target, With(t));

        return With(boil).Celsius < celsius ? Answer(NeededOutcome.NeedsAboveBoiling, boil)
            : With(0).Celsius > celsius ? Answer(NeededOutcome.NeedsBelowFreezing, 0)
            : Answer(NeededOutcome.Possible, Brent.FindRoot(t => With(t).Celsius - celsius, 0, boil, 1e-10, 200));
    }

    /// <summary>The largest share of a base that may be kept back cold, so that the mix stays at a temperature or above it.</summary>
    /// <param name="hot">The hot part of the base, with its temperature; only the sum of both masses counts.</param>
    /// <param name="cold">The cold part of the base, with its temperature.</param>
    /// <param name="others">The other bodies, such as pieces and vessel.</param>
    /// <param name="target">Temperature that the mix must keep: the highest setting temperature and a margin.</param>
    /// <param name="loss">The heat lost meanwhile; none unless stated.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentException">The cold part is not colder than the hot one, or the base has no mass.</exception>
    public static ColdShare LargestColdShare(JoiningBody hot, JoiningBody cold, IReadOnlyList<JoiningBody> others, Temperature target, HeatLoss loss = default)
    {
        double kilograms = hot.Kilograms + cold.Kilograms, celsius = Guard.Celsius(target);
        if (cold.Celsius >= hot.Celsius || kilograms == 0)
        {
            throw new ArgumentException("The cold part must be colder than the hot one, and the two must have a mass.", nameof(cold));
        }

        JoiningBody[] bodies = [.. Guard.NotNull(others), hot, cold];
        JoinedMix With(double share)
        {
            bodies[bodies.Length - 2] = hot.OfMass(Mass.FromKilograms(kilograms * (1 - share)));
            bodies[bodies.Length - 1] = cold.OfMass(Mass.FromKilograms(kilograms * share));
            return Of(bodies, loss);
        }

        ColdShare Answer(ColdShareOutcome outcome, double share) => new(outcome, 100 * share, Mass.FromKilograms(kilograms * share), target, With(share));

        return With(0).Celsius < celsius ? Answer(ColdShareOutcome.NotEnoughHeat, 0)
            : With(1).Celsius >= celsius ? Answer(ColdShareOutcome.All, 1)
            : Answer(ColdShareOutcome.UpToShare, Brent.FindRoot(s => With(s).Celsius - celsius, 0, 1, 1e-12, 200));
    }

    // The temperature between two at which the heat capacity holds so much heat.
    private static double Even(Polynomial capacity, double joules, double min, double max)
    {
        if (capacity.IsConstant)
        {
            return joules / capacity.A;
        }

        double Miss(double celsius) => (capacity.Integral(celsius) - joules) / capacity.A;

        return Miss(min) >= 0 ? min
            : Miss(max) <= 0 ? max
            : RobustNewtonRaphson.FindRoot(Miss, c => capacity.At(c) / capacity.A, min, max, 1e-10, 50, 20);
    }
}
