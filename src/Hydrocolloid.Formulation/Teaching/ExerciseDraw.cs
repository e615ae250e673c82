using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>Draws the numbers and ingredients of one exercise, within the settings. Not for use from several threads.</summary>
public sealed class ExerciseDraw
{
    private const double GramsPerOunce = 28.349523125; // exact, international yard and pound agreement

    private readonly SplitMix64 _random;
    private readonly List<Given> _givens = [];
    private readonly List<GivenThing> _things = [];

    internal ExerciseDraw(SplitMix64 random, int level, ExerciseSettings settings)
    {
        _random = random;
        Level = level;
        Settings = settings;
    }

    /// <summary>The level asked for, from 1.</summary>
    public int Level { get; }

    /// <summary>The settings.</summary>
    public ExerciseSettings Settings { get; }

    /// <summary>Whether masses of bulk and temperatures are stated in US customary units.</summary>
    public bool IsUs => Settings.Units == UnitSystem.UsCustomary;

    internal ValueList<Given> Givens => ValueList<Given>.From(_givens);

    internal ValueList<GivenThing> Things => ValueList<GivenThing>.From(_things);

    /// <summary>A number on a grid, or the one that the settings fix; it becomes one of the numbers given.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="min">The smallest, in the unit of <paramref name="unit"/>.</param>
    /// <param name="max">The largest, in the unit of <paramref name="unit"/>.</param>
    /// <param name="step">The grid, in the unit of <paramref name="unit"/>; above 0.</param>
    /// <param name="unit">The unit; empty for a count.</param>
    /// <returns>The number.</returns>
    public double Number(string key, double min, double max, double step, string unit)
    {
        double value = FixedOr(key) ?? OnGrid(min, max, step);
        _givens.Add(new Given(key, value, unit));
        return value;
    }

    /// <summary>States a number that follows from others or stands in the catalogue.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="value">The value, in the unit of <paramref name="unit"/>.</param>
    /// <param name="unit">The unit.</param>
    /// <returns>The same number, or the one that the settings fix.</returns>
    public double State(string key, double value, string unit)
    {
        double stated = FixedOr(key) ?? value;
        _givens.Add(new Given(key, stated, unit));
        return stated;
    }

    /// <summary>States a thing that the question names, for questions in other languages.</summary>
    /// <param name="key">A stable word for what it is here, such as <c>agent</c>.</param>
    /// <param name="id">Its id; of an ingredient that of the catalogue.</param>
    /// <exception cref="ArgumentException">The key or the id is blank.</exception>
    public void Name(string key, string id) => _things.Add(new GivenThing(Guard.NotBlank(key), Guard.NotBlank(id)));

    /// <summary>A mass of bulk: in g, or in whole ounces where the units are US customary.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="minGrams">The smallest, in g.</param>
    /// <param name="maxGrams">The largest, in g.</param>
    /// <param name="stepGrams">The grid, in g.</param>
    /// <returns>The mass, its text as stated, and the steps that bring it to g (none if it is stated so).</returns>
    public (Mass Mass, string Text, SolutionStep[] Conversion) BulkMass(string key, double minGrams, double maxGrams, double stepGrams)
    {
        if (!IsUs)
        {
            double grams = Number(key, minGrams, maxGrams, stepGrams, "g");
            return (Mass.FromGrams(grams), Numbers.Significant(grams, 6) + " g", []);
        }

        double ounces = Number(key, Math.Ceiling(minGrams / GramsPerOunce), Math.Max(Math.Ceiling(minGrams / GramsPerOunce), Math.Floor(maxGrams / GramsPerOunce)), 1, "oz");
        string text = Numbers.Significant(ounces, 6) + " oz";
        return (Mass.FromGrams(ounces * GramsPerOunce), text,
            [new SolutionStep("An ounce is 28.3495 g.", key + " in g", $"{text} × 28.3495 g/oz", ounces * GramsPerOunce, "g")]);
    }

    /// <summary>A temperature: in °C, or in °F where the units are US customary.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="minCelsius">The lowest, in °C.</param>
    /// <param name="maxCelsius">The highest, in °C.</param>
    /// <param name="step">The grid, in °C or °F.</param>
    /// <returns>The temperature, its number as stated in °C or °F, its text, and the steps that bring it to °C.</returns>
    public (Temperature Temperature, double Stated, string Text, SolutionStep[] Conversion) Temperature(string key, double minCelsius, double maxCelsius, double step)
    {
        if (!IsUs)
        {
            double celsius = Number(key, minCelsius, maxCelsius, step, "°C");
            return (UnitsNet.Temperature.FromDegreesCelsius(celsius), celsius, Numbers.Significant(celsius, 6) + " °C", []);
        }

        double fahrenheit = Number(key, Math.Ceiling(minCelsius * 9 / 5 + 32), Math.Floor(maxCelsius * 9 / 5 + 32), step, "°F");
        string text = Numbers.Significant(fahrenheit, 6) + " °F";
        double inCelsius = UnitsNet.Temperature.FromDegreesFahrenheit(fahrenheit).DegreesCelsius;
        return (UnitsNet.Temperature.FromDegreesCelsius(inCelsius), fahrenheit, text,
            [new SolutionStep("A reading in °F: take off 32, then times 5/9.", key + " in °C", $"({Numbers.Significant(fahrenheit, 6)} - 32) × 5/9", inCelsius, "°C")]);
    }

    /// <summary>One of several things, each as likely.</summary>
    /// <typeparam name="T">What they are.</typeparam>
    /// <param name="items">At least one.</param>
    /// <returns>The one drawn.</returns>
    /// <exception cref="ArgumentException">There is none.</exception>
    public T Pick<T>(params IReadOnlyList<T> items)
        => Guard.NotNull(items).Count > 0 ? items[_random.Below(items.Count)] : throw new ArgumentException("There is nothing to pick.", nameof(items));

    /// <summary>Options in a random order.</summary>
    /// <param name="options">The options.</param>
    /// <returns>The same, shuffled.</returns>
    public AnswerOption[] Shuffled(params AnswerOption[] options)
    {
        AnswerOption[] shuffled = [.. Guard.NotNull(options)];
        _random.Shuffle(shuffled);
        return shuffled;
    }

    /// <summary>One of the agents that the settings allow; it becomes one of the things named.</summary>
    /// <param name="usual">Those that the exercise would take.</param>
    /// <returns>The agent; null if the settings allow none of them.</returns>
    public Ingredient? Agent(params Ingredient[] usual)
    {
        Ingredient[] allowed = Allowed(usual);
        if (allowed.Length == 0)
        {
            return null;
        }

        Ingredient agent = Pick(allowed);
        Name("agent", agent.Id);
        return agent;
    }

    /// <summary>Those agents that the settings allow.</summary>
    internal Ingredient[] Allowed(params Ingredient[] usual)
        => Settings.Agents.IsEmpty ? Guard.NotNull(usual) : [.. usual.Where(u => Settings.Agents.Any(a => a.Id == u.Id))];

    /// <summary>A dose of an agent inside the window that the catalogue states for a firm or a soft gel, on a grid of 0.05 %, or of 0.1 % without a calculator.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="agent">The agent.</param>
    /// <returns>The dose in %.</returns>
    public double Dose(string key, Ingredient agent)
    {
        HydrocolloidProfile? profile = Guard.NotNull(agent).Profile;
        NumberRange window = (profile?.WindowFor(Texture.Firm) ?? profile?.WindowFor(Texture.Soft))?.Percent.Value ?? new NumberRange(0.2, 1);
        double step = Settings.WithCalculator ? 0.05 : 0.1;
        double min = Math.Ceiling((window.Min ?? window.Max!.Value / 2) / step - 1e-9) * step, max = Math.Floor((window.Max ?? window.Min!.Value * 2) / step + 1e-9) * step;
        return min <= max ? Number(key, min, max, step, "%") : State(key, window.Min ?? window.Max!.Value, "%");
    }

    private double OnGrid(double min, double max, double step)
    {
        int last = (int)Math.Floor((max - min) / step + 1e-9);
        // Rounded in decimals, so that 0.3 is the 0.3 that is printed.
        return Numbers.RoundHalfAway(min + step * _random.Below(last + 1), 6);
    }

    private double? FixedOr(string key)
    {
        foreach (Given given in Settings.Fixed)
        {
            if (given.Key == key)
            {
                return given.Value;
            }
        }

        return null;
    }
}
