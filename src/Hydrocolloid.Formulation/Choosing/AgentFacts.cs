using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What the catalogue says of each property of an agent, in sentences with their sources.</summary>
internal static class AgentFacts
{
    public static ValueList<Cited<string>> Of(Ingredient agent, AgentProperty property) => ValueList<Cited<string>>.From(All(agent, agent.Profile!, property));

    private static IEnumerable<Cited<string>> All(Ingredient agent, HydrocolloidProfile profile, AgentProperty property) => property switch
    {
        AgentProperty.Origin => One(agent.Origin?.Description),
        AgentProperty.Diets => Diets(agent),
        AgentProperty.Allergens => Allergens(agent),
        AgentProperty.Texture => Topic(profile, "texture"),
        AgentProperty.Doses => profile.DoseWindows.Select(w => Range($"{Plain(Words.Of(w.Texture))}: ", w.Percent, " %"))
            .Concat(profile.PublishedDoses.Select(d => Range($"{Plain(d.Purpose)}: ", d.Percent, " %"))),
        AgentProperty.LowestDose => One(profile.MinimumGellingPercent is { } least ? Range("", least, " %") : null),
        AgentProperty.Grades => One(agent.Grade is { } lot ? new($"this lot: {lot}", Citation.Measured) : null).Concat(profile.Strength is not { } scale ? [] : scale.Definition.Select(d => Fact($"{scale.Name}: ", d)).Concat(scale.Typical.Select(t => Range("on the market: ", t, scale.Unit.Length == 0 ? "" : " " + scale.Unit)))),
        AgentProperty.Dispersal => Dispersal(profile.Dispersal),
        AgentProperty.Hydration => Hydration(profile.Hydration),
        AgentProperty.Setting => profile.Setting.Triggers.Select(t => t.Description)
            .Concat(One(profile.Setting.Window is { } window ? Text("sets at ", window) : null)).Concat(profile.Setting.Dependence),
        AgentProperty.SettingTime => One(profile.Setting.TimeToStable is { } time ? Text("", time) : null),
        AgentProperty.Melting => One(profile.Melting.Window is { } window ? Text("melts at ", window) : null).Concat(One(profile.Melting.ReversibilityFact)).Concat(profile.Melting.Dependence),
        AgentProperty.Hysteresis => Topic(profile, "hysteresis"),
        AgentProperty.HeatStability => Topic(profile, "heat-stability"),
        AgentProperty.Clarity => Topic(profile, "clarity"),
        AgentProperty.Flavour => Topic(profile, "flavour"),
        AgentProperty.Syneresis => Topic(profile, "syneresis"),
        AgentProperty.FreezeThaw => Topic(profile, "freeze-thaw"),
        AgentProperty.Acid => One(profile.Ph?.Range is { } range ? Range("the gel stands pH ", range, "") : null).Concat(profile.Ph?.Facts ?? default).Concat(Topic(profile, "acid")),
        AgentProperty.Ions => Topic(profile, "ions"),
        AgentProperty.Salt => Topic(profile, "salt"),
        AgentProperty.Calcium => Topic(profile, "calcium"),
        AgentProperty.Sugar => Topic(profile, "sugar"),
        AgentProperty.Alcohol => Topic(profile, "alcohol"),
        AgentProperty.Proteins => Topic(profile, "proteins"),
        AgentProperty.Enzymes => Topic(profile, "enzymes"),
        AgentProperty.Tannins => Topic(profile, "tannins"),
        AgentProperty.Viscosity => Topic(profile, "viscosity"),
        AgentProperty.Limits => profile.Limits.Select(Limit),
        AgentProperty.Sensitivities => profile.Sensitivities.Select(s => Fact($"{Plain(Words.Of(s.To))} ({(s.Harm == Harm.None ? "no harm" : Words.Of(s.Harm))}): ", s.Consequence)),
        AgentProperty.Synergies => Synergies.All.Where(s => IsIn(s.First, agent) || IsIn(s.Second, agent)).Select(Pair),
        _ => agent.Cautions,
    };

    private static IEnumerable<Cited<string>> Topic(HydrocolloidProfile profile, string topic) => profile.Facts.Where(f => f.Topic == topic).Select(f => f.Text);

    private static IEnumerable<Cited<string>> Diets(Ingredient agent)
    {
        if (agent.Diet is not { } diet)
        {
            yield break;
        }

        string vegan = diet.Vegan switch { true => "vegan", false => diet.Vegetarian == true ? "vegetarian, not vegan" : diet.Vegetarian == false ? "neither vegan nor vegetarian" : "not vegan", _ => "not known" };
        yield return new(vegan + (diet.AnimalSource is { } animal ? $", from {animal}" : ""), agent.DietCitation ?? Citation.CommonPractice);
        foreach (Cited<string> note in diet.Notes)
        {
            yield return note;
        }
    }

    private static IEnumerable<Cited<string>> Allergens(Ingredient agent)
        => agent.Allergens is not { } allergens ? [] : [new(allergens.Value.IsEmpty ? "none" : string.Join(", ", allergens.Value.Select(Words.Of)), allergens.Citation, allergens.Note)];

    private static IEnumerable<Cited<string>> Dispersal(Dispersal dispersal)
        => dispersal.Medium
            .Concat(One(dispersal.SugarPartsPerPart is { } sugar ? Range("dry sugar: ", sugar, " parts to one") : null))
            .Concat(One(dispersal.SoakWaterPartsPerPart is { } water ? Range("soaked in ", water, " parts of water to one") : null))
            .Concat(One(dispersal.LumpsAbove is { } lumps ? Text("lumps in liquid above ", lumps) : null))
            .Concat(dispersal.Slurry).Concat(dispersal.Shear);

    private static IEnumerable<Cited<string>> Hydration(HydrationProtocol protocol)
        => One(Text("at ", protocol.Window)).Concat(One(Text("for ", protocol.Hold)))
            .Concat(One(protocol.NotAbove is { } most ? Text("not above ", most) : null)).Concat(protocol.Shear).Concat(protocol.HoldingLimit);

    private static Cited<string> Limit(AgentLimit limit)
        => new($"{Plain(Words.Of(limit.Quantity))}, {Plain(Words.Of(limit.Stage))}: {limit.Range.Value}{Unit(limit.Quantity)}. {limit.Consequence}", limit.Range.Citation, limit.Range.Note);

    private static string Unit(LimitedQuantity quantity) => quantity switch
    {
        LimitedQuantity.Ph => "",
        LimitedQuantity.SolubleSolids => " °Brix",
        LimitedQuantity.Calcium or LimitedQuantity.Potassium or LimitedQuantity.Sodium or LimitedQuantity.Cations => " mmol/kg",
        LimitedQuantity.Temperature => " °C",
        LimitedQuantity.Minutes => " min",
        LimitedQuantity.CalciumPerGram => " mmol/g",
        LimitedQuantity.AlcoholByVolume => " % by volume",
        _ => " % by weight",
    };

    private static Cited<string> Pair(Synergy pair)
        => new($"{Plain(pair.Id)}: {string.Join(", ", pair.Effects.Value.Select(e => Plain(Words.Of(e))))}", pair.Effects.Citation, pair.Effects.Note);

    private static bool IsIn(ValueList<string> ids, Ingredient agent) => ids.Contains(agent.Id) || (agent.BasedOn is { } entry && IsIn(ids, entry));

    private static IEnumerable<Cited<string>> One(Cited<string>? fact) => fact is null ? [] : [fact];

    private static Cited<string> Range(string before, Cited<NumberRange> range, string unit) => new(before + range.Value.ToString(unit), range.Citation, range.Note);

    private static Cited<string> Text<T>(string before, Cited<T> figure)
        where T : notnull
        => new(before + figure.Value, figure.Citation, figure.Note);

    private static Cited<string> Fact(string before, Cited<string> fact) => new(before + fact.Value, fact.Citation, fact.Note);

    private static string Plain(string word) => word.Replace('-', ' ');
}
