using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>A hydrocolloid in a formula with its concentration in the continuous mix, which is what its dose figures are about.</summary>
internal sealed class AgentInMix
{
    // Common practice, no source: from here on a liquid counts as hot.
    private const double HotCelsius = 60;

    private const double FigurePrecision = 1.05;

    // Several rules ask for these.
    private readonly Lazy<SlipReading?> _slip;
    private readonly Lazy<bool> _isInBlend;

    private readonly ReviewContext _context;

    private AgentInMix(ReviewContext context, FormulaLine line)
    {
        _context = context;
        Line = line;
        Profile = line.Ingredient.Profile!;
        Percent = Formula.Proportions.PercentOfContinuousMix(line);
        _slip = new(FindSlip);
        _isInBlend = new(FindBlend);
    }

    public Formula Formula => _context.Formula;

    /// <summary>What it is hydrated in.</summary>
    public MixContents Medium => _context.HydrationMedium(Line);

    /// <summary>The temperature at which it is held to dissolve: the plan's, or the least its protocol asks; °C.</summary>
    public double? HydrationCelsius => Formula.Process.HydrateAtCelsius ?? Profile.Hydration.Window.Value.Celsius.Min;

    /// <summary>How long it is held there: the plan's, or the least its protocol asks; min.</summary>
    public double? HoldMinutes => (Formula.Process.HydrateSeconds ?? Profile.Hydration.Hold.Value.Seconds.Min) / 60;

    /// <summary>True if it must be hot to dissolve, so that what is with it in the pot is heated too.</summary>
    public bool IsHeated => HydrationCelsius >= HotCelsius;

    public FormulaLine Line { get; }

    public HydrocolloidProfile Profile { get; }

    /// <summary>% by weight of the continuous mix.</summary>
    public double Percent { get; }

    public string Name => Line.Ingredient.Name;

    /// <summary>True if the mix is half milk or more and the agent has doses of its own for that, which are not those of water.</summary>
    public bool IsDosedForMilk => Profile.Limits.Any(l => l is { Quantity: LimitedQuantity.Concentration, Stage: LimitStage.BesideCasein })
        && _context.IsMostlyMilk;

    /// <summary>The window of the texture that the formula aims at; null if it aims at none or none is known.</summary>
    public DoseWindow? ChosenWindow => !IsDosedForMilk && Formula.Service.Texture is { } texture ? Profile.WindowFor(texture) : null;

    /// <summary>True if it gels by itself.</summary>
    public bool ReachesMinimum => Profile.MinimumGellingPercent is { Value.Min: { } minimum } && Percent * FigurePrecision >= minimum;

    /// <summary>Below the lowest dose that gels alone, and not a dose of the texture aimed at (a fluid gel may need less).</summary>
    public bool IsUnderMinimum => !IsDosedForMilk && Profile.MinimumGellingPercent?.Value.Min is not null && !ReachesMinimum
        && (ChosenWindow is not { } chosen || !IsWithin(chosen.Percent.Value, Percent));

    /// <summary>True if it is a part of a blend that gels together, at a working dose of both for the texture aimed at, or for any where none is stated, in one of their best ratios.</summary>
    public bool IsInBlend => _isInBlend.Value;

    private bool FindBlend() => _context.Agents.Exists(other => other != this && Synergies.Between(Line.Ingredient, other.Line.Ingredient).Any(pair => GelsWith(other, pair)));

    /// <summary>
    /// True if a percentage lies in a range, at the precision of the figures: they are printed with one or two significant digits, which
    /// carry up to 5 %, so 0.0995 % is the 0.1 % it was meant to be.
    /// </summary>
    public static bool IsWithin(NumberRange range, double percent)
        => new NumberRange(range.Min / FigurePrecision, range.Max * FigurePrecision).Contains(percent);

    public static IEnumerable<AgentInMix> All(ReviewContext context)
        => context.Formula.Lines.Where(l => l.IsContinuous && l.Ingredient.Profile is not null).Select(l => new AgentInMix(context, l));

    /// <summary>Whether it is an ingredient of the catalogue or made from one.</summary>
    public bool Is(string id) => Line.Ingredient.Id == id || Line.Ingredient.BasedOn?.Id == id;

    /// <summary>
    /// The reading that a moved decimal sign would give: in the window of the texture aimed at, if the dose is outside every figure for
    /// it; else in any window, if the dose is half or double any figure of the catalogue, or further off. Null if there is none.
    /// All windows of an agent together may span a factor of ten, so there a dose just outside would land inside by accident.
    /// </summary>
    public SlipReading? Slip() => _slip.Value;

    private SlipReading? FindSlip() => (ChosenWindow is { } chosen ? SlipInto([chosen], Figures(chosen), farness: 1) : null)
        ?? SlipInto(Profile.DoseWindows, Profile.DoseWindows.SelectMany(Figures).Concat(Profile.PublishedDoses.Select(d => d.Percent.Value)), farness: 2);

    public Evidence Evidence(NumberRange limit) => new($"{Name} in the continuous mix", Percent, "% by weight of it", limit);

    /// <summary>The dose as it is written and as it counts.</summary>
    public string Stated()
        => $"{Name} is dosed at {Line.Dose}, which is {Numbers.Significant(Percent, 3)} % of the continuous mix";

    private bool GelsWith(AgentInMix other, Synergy pair)
    {
        double both = Percent + other.Percent;
        double first = (pair.IsFirst(Line.Ingredient) ? Percent : other.Percent) / both * 100;
        return pair.FirstPercent is { } best && IsWithin(best.Value, first)
            && pair.Doses.Any(d => (Formula.Service.Texture is not { } texture || d.Texture == texture) && IsWithin(d.Percent.Value, both));
    }

    private static IEnumerable<NumberRange> Figures(DoseWindow window) => window.Percent.Alternatives.Select(a => a.Value).Append(window.Percent.Value);

    private SlipReading? SlipInto(IEnumerable<DoseWindow> windows, IEnumerable<NumberRange> figures, double farness)
    {
        double[] ends = [.. figures.SelectMany(r => new[] { r.Min, r.Max }).Where(e => e is not null).Select(e => e!.Value)];
        if (ends.Length == 0 || IsWithin(new NumberRange(ends.Min() / farness, ends.Max() * farness), Percent))
        {
            return null;
        }

        foreach (DoseWindow window in windows)
        {
            foreach (double factor in (double[])[10, 0.1, 100, 0.01])
            {
                double percent = PercentIfMultiplied(factor);
                if (IsWithin(window.Percent.Value, percent))
                {
                    return new SlipReading(factor, percent, window);
                }
            }
        }

        return null;
    }

    /// <summary>The concentration in the continuous mix if this line alone were that many times as much.</summary>
    private double PercentIfMultiplied(double factor)
    {
        double mass = Formula.Proportions.MassOf(Line);
        return mass * factor / (Formula.Proportions.ContinuousMix - mass + mass * factor) * 100;
    }
}
