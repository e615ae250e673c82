using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A rule on how fast cooked food must cool. The rules known are in <see cref="CoolingRules"/>. Immutable, equal by content.</summary>
public sealed record CoolingRule
{
    internal CoolingRule(string id, string name, Citation citation, params CoolingLimit[] limits)
    {
        Id = id;
        Name = name;
        Citation = citation;
        Limits = ValueList<CoolingLimit>.Own(limits);
    }

    /// <summary>Kebab-case id.</summary>
    public string Id { get; }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Where the rule stands.</summary>
    public Citation Citation { get; }

    /// <summary>What it asks.</summary>
    public ValueList<CoolingLimit> Limits { get; }

    /// <summary>Judges a computed cooling by its warmest part.</summary>
    /// <param name="course">The cooling.</param>
    /// <returns>The verdict. A temperature that is never reached is not met; one after the end of the steps is not shown, unless the time is up before.</returns>
    public CoolingVerdict Check(CoolingCourse course)
    {
        Guard.NotNull(course);
        return Judge(celsius => course.TimeUntilBelow(UnitsNet.Temperature.FromDegreesCelsius(celsius)).Seconds, 0, course.EndSeconds);
    }

    /// <summary>Judges a measured curve; between readings it runs straight.</summary>
    /// <param name="readings">The readings in the order of time.</param>
    /// <returns>The verdict. A temperature that the readings do not come down to is not shown, unless the time is up before.</returns>
    /// <exception cref="ArgumentException">There are no readings, or a reading is not later than the one before.</exception>
    public CoolingVerdict Check(params IEnumerable<CoolingReading> readings)
    {
        CoolingReading[] curve = [.. Guard.NotNull(readings)];
        if (curve.Length == 0)
        {
            throw new ArgumentException("There must be at least one reading.", nameof(readings));
        }

        for (int i = 1; i < curve.Length; i++)
        {
            if (curve[i].Seconds <= curve[i - 1].Seconds)
            {
                throw new ArgumentException("Reading " + Numbers.Exact(i + 1) + " is not later than the one before.", nameof(readings));
            }
        }

        return Judge(FirstAt, curve[0].Seconds, curve[curve.Length - 1].Seconds);

        double? FirstAt(double celsius)
        {
            int i = Array.FindIndex(curve, r => r.Celsius <= celsius);
            if (i <= 0)
            {
                return i < 0 ? null : curve[0].Seconds;
            }

            CoolingReading before = curve[i - 1], after = curve[i];
            return before.Seconds + ((after.Seconds - before.Seconds) * (before.Celsius - celsius) / (before.Celsius - after.Celsius));
        }
    }

    /// <summary>Name, limits and source.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {string.Join("; ", Limits)} ({Citation})";

    private CoolingVerdict Judge(Func<double, double?> firstAt, double startSeconds, double endSeconds)
    {
        var checks = new CoolingCheck[Limits.Count];
        for (int i = 0; i < checks.Length; i++)
        {
            CoolingLimit limit = Limits[i];
            double? start = limit.FromCelsius is { } from ? firstAt(from) : startSeconds;
            double? taken = firstAt(limit.ToCelsius) - start;
            // Before the clock has started nothing is late; after it has, a curve that goes on past the limit is.
            bool late = (taken ?? endSeconds - start) > limit.MaxSeconds * (1 + 1e-9);
            checks[i] = new(limit, taken, late ? CoolingRuleOutcome.NotMet : taken is null ? CoolingRuleOutcome.NotShown : CoolingRuleOutcome.Met);
        }

        return new(this, ValueList<CoolingCheck>.Own(checks));
    }
}
