using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>A hydrocolloid of the formula as the planner sees it.</summary>
internal sealed class Agent(FormulaLine line)
{
    // Common practice, no source: what a warm kitchen comes to, so that nothing has to be heated.
    private const double WarmKitchenCelsius = 25;

    public FormulaLine Line { get; } = line;

    public string Label => Line.Label;

    public string Name { get; } = Phrases.InSentence(line);

    public HydrocolloidProfile Profile { get; } = line.Ingredient.Profile!;

    public HydrationProtocol Hydration => Profile.Hydration;

    public NumberRange Window => Hydration.Window.Value.Celsius;

    /// <summary>The lowest temperature that hydrates it; °C.</summary>
    public double NeedsCelsius => Window.Min ?? double.NegativeInfinity;

    /// <summary>The temperature that it must not pass; °C.</summary>
    public double LimitCelsius => Hydration.NotAbove?.Value.Celsius.Max ?? double.PositiveInfinity;

    public bool IsSoaked => Profile.Dispersal.SoakWaterPartsPerPart is not null;

    /// <summary>It hydrates without heating beyond a warm kitchen.</summary>
    public bool IsColdSoluble => NeedsCelsius <= WarmKitchenCelsius;

    public SettingTrigger? Trigger => Profile.Setting.Triggers.IsEmpty ? null : Profile.Setting.Triggers[0];

    public SettingCause Cause => Trigger?.Cause ?? SettingCause.None;

    public bool SetsOnCooling => Cause is SettingCause.Cooling or SettingCause.Calcium && Profile.Setting.Window is not null;

    /// <summary>Calcium sets it at any temperature, as alginate.</summary>
    public bool SetsByCalciumAlone => Cause == SettingCause.Calcium && Profile.Setting.Window is null;

    /// <summary>It dissolves cold and sets when it is heated, as methylcellulose; starch, which swells in the heat, does not count.</summary>
    public bool SetsOnHeating => Cause == SettingCause.Heating && Profile.Setting.Window is not null && IsColdSoluble;

    /// <summary>The highest temperature at which it may begin to set; °C.</summary>
    public double SetsBelowCelsius => SetsOnCooling ? Profile.Setting.Window!.Value.Celsius.Max ?? double.PositiveInfinity : double.NegativeInfinity;

    /// <summary>If it goes in after others were heated: the mix must be no warmer than this; °C.</summary>
    public double GoesInBelowCelsius => SetsOnHeating ? Math.Min(LimitCelsius, Window.Max ?? double.PositiveInfinity) : LimitCelsius;

    /// <summary>Calcium has a part in its setting, so it is hydrated before calcium comes and after what binds it.</summary>
    public bool IsCalciumSensitive => Profile.Setting.Triggers.Any(t => t.Ion == "calcium" || t.Cause == SettingCause.Calcium);

    public bool SetsByAcid => Profile.Setting.Triggers.Any(t => t.Cause == SettingCause.Acid);

    /// <summary>The technique, if it is for this hydrocolloid.</summary>
    public Technique? By(string technique) => Techniques.Get(technique) is { } t && t.IsFor(Line.Ingredient) ? t : null;

    /// <summary>The highest concentration at which a source works with it: the stated limit, else the highest dose; % by weight of what it is in.</summary>
    public Cited<NumberRange>? HighestPercent()
        => Profile.Limits.FirstOrDefault(l => l is { Quantity: LimitedQuantity.Concentration, Stage: LimitStage.Hydrating, Range.Value.Max: not null })?.Range
            ?? Profile.DoseWindows.Select(w => w.Percent).Concat(Profile.PublishedDoses.Select(d => d.Percent))
                .SelectMany(f => f.Alternatives.Prepend(f)).Where(f => f.Value.Max is not null).OrderByDescending(f => f.Value.Max).FirstOrDefault();

    /// <summary>The published alternatives that are common practice, as notes: "common practice: 4 min".</summary>
    public static IEnumerable<Cited<string>> Practice<T>(Cited<T> figure, string what)
        where T : notnull
        => figure.Alternatives.Where(a => a.Citation.Quality == CitationQuality.CommonPractice)
            .Select(a => new Cited<string>($"Common practice {what}: {a.Value}{(a.Note is null ? "" : " (" + a.Note + ")")}.", a.Citation));
}
