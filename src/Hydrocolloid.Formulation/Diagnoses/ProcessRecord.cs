using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>What was actually done with a batch, as far as anyone knows: everything may be left out. Immutable, equal by content.</summary>
public sealed record ProcessRecord
{
    private readonly double? _soakedCelsius;
    private readonly double? _hydratedCelsius;
    private readonly double? _hydratedSeconds;
    private readonly double? _castCelsius;
    private readonly double? _ph;
    private readonly double? _leftSeconds;
    private readonly double? _servedCelsius;
    private readonly double? _heldSeconds;
    private readonly double? _storedSeconds;
    private readonly double? _castGrams;
    private readonly double? _altitudeMetres;

    /// <summary>Nothing is known.</summary>
    public static ProcessRecord Nothing { get; } = new();

    /// <summary>What was weighed, a line each: all lines of the base or none, and any additions.</summary>
    public ValueList<WeighedLine> Weighed { get; init; }

    /// <summary>The temperature of the soaking liquid; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? SoakedAt
    {
        get => Degrees(_soakedCelsius);
        init => _soakedCelsius = value is { } v ? Guard.Celsius(v, nameof(SoakedAt)) : null;
    }

    /// <summary>The hottest it was while the hydrocolloids dissolved; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? HydratedAt
    {
        get => Degrees(_hydratedCelsius);
        init => _hydratedCelsius = value is { } v ? Guard.Celsius(v, nameof(HydratedAt)) : null;
    }

    /// <summary>How long it was held there; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or over 1e9 s.</exception>
    public Duration? HydratedFor
    {
        get => Time(_hydratedSeconds);
        init => _hydratedSeconds = value is { } v ? Guard.Seconds(v, nameof(HydratedFor)) : null;
    }

    /// <summary>The temperature at which it was cast; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? CastAt
    {
        get => Degrees(_castCelsius);
        init => _castCelsius = value is { } v ? Guard.Celsius(v, nameof(CastAt)) : null;
    }

    /// <summary>The pH that was measured in the mix; null if it was not.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 to 14.</exception>
    public double? Ph
    {
        get => _ph;
        init => _ph = value is { } v ? Guard.InRange(v, 0, 14, "pH", nameof(Ph)) : null;
    }

    /// <summary>What the whole batch weighed when it was cast; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public Mass? CastMass
    {
        get => _castGrams is { } g ? Mass.FromGrams(g) : null;
        init => _castGrams = value is { } v ? Guard.PositiveGrams(v, nameof(CastMass)) : null;
    }

    /// <summary>How long it was left to set before it was judged; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or over 1e9 s.</exception>
    public Duration? LeftToSet
    {
        get => Time(_leftSeconds);
        init => _leftSeconds = value is { } v ? Guard.Seconds(v, nameof(LeftToSet)) : null;
    }

    /// <summary>The temperature on the plate; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? ServedAt
    {
        get => Degrees(_servedCelsius);
        init => _servedCelsius = value is { } v ? Guard.Celsius(v, nameof(ServedAt)) : null;
    }

    /// <summary>How long it was held there; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or over 1e9 s.</exception>
    public Duration? HeldFor
    {
        get => Time(_heldSeconds);
        init => _heldSeconds = value is { } v ? Guard.Seconds(v, nameof(HeldFor)) : null;
    }

    /// <summary>How long it was stored cold; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or over 1e9 s.</exception>
    public Duration? StoredFor
    {
        get => Time(_storedSeconds);
        init => _storedSeconds = value is { } v ? Guard.Seconds(v, nameof(StoredFor)) : null;
    }

    /// <summary>Altitude of the kitchen; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside -500 m to 9000 m.</exception>
    public Length? Altitude
    {
        get => _altitudeMetres is { } m ? Length.FromMeters(m) : null;
        init => _altitudeMetres = value is { } v ? Guard.InRange(Guard.Metres(v, nameof(Altitude)), -500, 9000, "m", nameof(Altitude)) : null;
    }

    /// <summary>Whether it was stored covered; null if not known.</summary>
    public bool? Covered { get; init; }

    /// <summary>Whether it was frozen; null if not known.</summary>
    public bool? Frozen { get; init; }

    internal double? CastGrams => _castGrams;

    internal double? LeftToSetSeconds => _leftSeconds;

    /// <summary>The formula as it was made: what is recorded in place of what was planned.</summary>
    /// <param name="formula">The formula as planned.</param>
    /// <returns>The formula as made.</returns>
    /// <exception cref="ArgumentException">A weighed line is not in the formula or stands twice, or only a part of the base was weighed.</exception>
    /// <exception cref="FormulaException">What was weighed makes no formula.</exception>
    public Formula AsMade(Formula formula)
    {
        Guard.NotNull(formula);
        FormulaBuilder builder = formula.ToBuilder();
        if (!Weighed.IsEmpty)
        {
            Weigh(formula, builder);
        }

        ProcessPlan plan = formula.Process;
        ServicePlan service = formula.Service;
        builder.Process(plan with
        {
            SoakAt = SoakedAt ?? plan.SoakAt,
            HydrateAt = HydratedAt ?? plan.HydrateAt,
            HydrateFor = HydratedFor ?? plan.HydrateFor,
            CastAt = CastAt ?? plan.CastAt,
            Altitude = Altitude ?? plan.Altitude,
        });
        builder.Serve(service with
        {
            ServedAt = ServedAt ?? service.ServedAt,
            HeldFor = HeldFor ?? service.HeldFor,
            StoredFor = StoredFor ?? service.StoredFor,
            Covered = Covered ?? service.Covered,
            Frozen = Frozen ?? service.Frozen,
        });
        return builder.Build();
    }

    private void Weigh(Formula formula, FormulaBuilder builder)
    {
        var grams = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (WeighedLine line in Weighed)
        {
            _ = formula.Line(line.Label);
            if (grams.ContainsKey(line.Label))
            {
                throw new ArgumentException($"'{line.Label}' is weighed twice.", nameof(formula));
            }

            grams.Add(line.Label, line.Grams);
        }

        string[] basis = [.. formula.Base.Parts.Select(p => p.Label)];
        string[] left = [.. basis.Where(l => !grams.ContainsKey(l))];
        if (left.Length > 0)
        {
            throw new ArgumentException($"The base was weighed in part: {string.Join(", ", left)} is missing, so no percentage of the base is known.", nameof(formula));
        }

        double baseGrams = basis.Sum(l => grams[l]);
        for (int i = 0; i < builder.BaseLines.Count; i++)
        {
            builder.BaseLines[i] = builder.BaseLines[i] with { Percent = grams[builder.BaseLines[i].Label] / baseGrams * 100 };
        }

        foreach (DraftPhase phase in builder.PhaseDrafts)
        {
            for (int i = 0; i < phase.Lines.Count; i++)
            {
                if (grams.TryGetValue(phase.Lines[i].Label, out double weighed))
                {
                    phase.Lines[i] = phase.Lines[i] with { Percent = weighed / baseGrams * 100, Reference = DoseReference.Base };
                }
            }
        }
    }

    private static Temperature? Degrees(double? celsius) => celsius is { } c ? Temperature.FromDegreesCelsius(c) : null;

    private static Duration? Time(double? seconds) => seconds is { } s ? Duration.FromSeconds(s) : null;
}
