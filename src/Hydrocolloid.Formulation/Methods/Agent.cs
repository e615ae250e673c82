using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>A hydrocolloid of the formula as the planner sees it.</summary>
internal sealed class Agent(FormulaLine line)
{
    public FormulaLine Line { get; } = line;

    public string Label => Line.Label;

    public string Name { get; } = Phrases.InSentence(line);

    public HydrocolloidProfile Profile { get; } = line.Ingredient.Profile!;

    public HydrationProtocol Hydration => Profile.Hydration;

    /// <summary>The lowest temperature that hydrates it; °C.</summary>
    public double NeedsCelsius => Hydration.Window.Value.Celsius.Min ?? double.NegativeInfinity;

    /// <summary>The temperature that it must not pass; °C.</summary>
    public double LimitCelsius => Hydration.NotAbove?.Value.Celsius.Max ?? double.PositiveInfinity;

    public bool IsSoaked => Profile.Dispersal.SoakWaterPartsPerPart is not null;

    /// <summary>It hydrates without heating beyond a warm kitchen.</summary>
    public bool IsColdSoluble => NeedsCelsius <= 25;

    public SettingTrigger? Trigger => Profile.Setting.Triggers.IsEmpty ? null : Profile.Setting.Triggers[0];

    public bool SetsOnCooling => Trigger?.Cause == SettingCause.Cooling && Profile.Setting.Window is not null;

    /// <summary>The highest temperature at which it may begin to set; °C.</summary>
    public double SetsBelowCelsius => SetsOnCooling ? Profile.Setting.Window!.Value.Celsius.Max ?? double.PositiveInfinity : double.NegativeInfinity;

    /// <summary>The published alternatives that are common practice, as notes: "common practice: 4 min".</summary>
    public static IEnumerable<Cited<string>> Practice<T>(Cited<T> figure, string what)
        where T : notnull
        => figure.Alternatives.Where(a => a.Citation.Quality == CitationQuality.CommonPractice)
            .Select(a => new Cited<string>($"Common practice {what}: {a.Value}{(a.Note is null ? "" : " (" + a.Note + ")")}.", a.Citation));
}
