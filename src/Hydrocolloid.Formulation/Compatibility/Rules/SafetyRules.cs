using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about who eats it, how it is shaped, how it is kept, and what the law of the market says.</summary>
internal static class SafetyRules
{
    public static IDescribedRule[] All =>
    [
        new ClinicalAudienceRule(), new ChokingShapeRule(), new EuMiniCupRule(), new KonjacSweetRule(), new EuKonjacMaximumRule(), new NotListedInEuRule(), new UsCeilingRule(),
        new FlammableVapourRule(), new PerishableRule(), new WarmHoldingRule(),
    ];

    /// <summary>What stands under every statement about safety and the law.</summary>
    public const string Defers = "The food code and the law where you work decide.";

    public static bool IsKonjac(Ingredient ingredient) => IsListed(ingredient, "E 425");

    /// <summary>The number of an additive without its sub-number: E 440(i) is E 440.</summary>
    public static bool IsListed(Ingredient ingredient, params string[] numbers)
        => ingredient.Additive is { } additive && additive.ENumbers.Any(e => numbers.Contains(e.Split('(')[0]));

    public static Remedy OtherShape(ServicePlan service, PortionShape shape, string advice, string effect, Citation citation)
        => new("other-shape", advice, effect, new ServiceChange(service with { Shape = shape }), ValueList<Citation>.Own([citation]));

    /// <summary>The dose of a single line that comes to a ceiling in the whole food.</summary>
    public static ValueList<Remedy> LowerTo(Formula formula, FormulaLine[] lines, double percentOfFood, Citation citation, bool requiresWindow)
    {
        FormulaLine line = lines[0];
        // A hair under the ceiling, so that the rounding of the dose stays below it.
        double percent = percentOfFood * 0.999;
        if (lines.Length > 1 || line.IsBase || (requiresWindow && line.Ingredient.Profile is { } profile && !Works(profile, formula.Service.Texture, percent)))
        {
            return default;
        }

        double mass = percent / (100 - percent) * (formula.Proportions.Total - formula.Proportions.MassOf(line));
        Dose dose = line.IsContinuous ? Amounts.ForPercentOfMix(formula, line, mass / (formula.Proportions.ContinuousMix - formula.Proportions.MassOf(line) + mass) * 100)
            : new Dose(line.Dose.PercentByMass * mass / formula.Proportions.MassOf(line), line.Dose.Reference);
        return ValueList<Remedy>.Own([new Remedy(
            "lower-dose", $"Lower {line.Ingredient.Name} to {dose}: {Numbers.Significant(percent, 3)} % of the food.", "It is then under the ceiling.",
            new DoseChange(line.Label, dose), ValueList<Citation>.Own([citation]))]);
    }

    private static bool Works(HydrocolloidProfile profile, Texture? texture, double percent)
        => (texture is { } t && profile.Role == HydrocolloidRole.GellingAgent ? profile.DoseWindows.Where(w => w.Texture == t) : profile.DoseWindows)
            .Any(w => AgentInMix.IsWithin(w.Percent.Value, percent));
}

/// <summary>Food for infants or for people with a swallowing disorder: no advice is given.</summary>
internal sealed class ClinicalAudienceRule : IDescribedRule
{
    private static Citation Dysphagia => BuiltInCatalogue.Cite("iddsi-hadde", "introduction");

    private static Citation Infants => BuiltInCatalogue.Cite("aap-2011");

    public string Id => "clinical-audience";

    public RuleCard Card => new(
        "safety", "It is meant for infants or for people with a swallowing disorder: a conflict, for a clinician sets their food.", null,
        ValueList<Cited<string>>.Own([new("thickened food for dysphagia is set by a trained clinician for that person", Dysphagia), new("thickeners for infants: caution", Infants)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Service.Audience == Audience.Dysphagia)
        {
            yield return new Finding(
                Id, Severity.Conflict,
                "This library gives no advice on food for people with a swallowing disorder, and no texture here stands for a level of a diet: "
                + "a trained clinician sets the food for that person. A gel that melts in the mouth or weeps may be unsafe.",
                citations: ValueList<Citation>.Own([Dysphagia]));
        }
        else if (context.Service.Audience == Audience.Infants)
        {
            FormulaLine[] xanthan = [.. context.Formula.Lines.Where(l => SafetyRules.IsListed(l.Ingredient, "E 415"))];
            yield return new Finding(
                Id, Severity.Conflict,
                "This library gives no advice on food for infants: ask a paediatrician or another licensed clinician."
                + (xanthan.Length == 0 ? "" : " Feeds thickened with xanthan gum have been followed by a dangerous disease of the bowel in infants born early."),
                ValueList<string>.From(xanthan.Select(l => l.Label)), citations: ValueList<Citation>.Own([Infants]));
        }
    }
}

/// <summary>Firm gels of one bite: for young children, and of konjac for anyone.</summary>
internal sealed class ChokingShapeRule : IDescribedRule
{
    private static Citation Practice => BuiltInCatalogue.Cite("kitchen-safety-practice");

    private static Citation Opinion => BuiltInCatalogue.Cite("efsa-2004-82", "abstract");

    private static Citation Konjac => BuiltInCatalogue.Cite("accc-konjac");

    public string Id => "choking-shape";

    public RuleCard Card => new(
        "safety",
        "A firm gel in cubes, balls or mini-cups for young children: a conflict. For anyone, a firm mini-cup, or one bite of set konjac: a caution.",
        "Thin slices, or a dish eaten with a spoon.",
        ValueList<Cited<string>>.Own(
        [
            new("no firm balls or cubes for young children", Practice), new("any firm, slowly dissolving gel in a mini-cup may lodge in the airway", Opinion), new("set konjac hardly dissolves in the mouth", Konjac),
        ]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ServicePlan service = context.Service;
        if (service.Shape is not (PortionShape.Cube or PortionShape.Sphere or PortionShape.MiniCup) || !IsFirm(context))
        {
            yield break;
        }

        FormulaLine[] konjac = [.. context.Agents.Where(IsKonjacGel).Select(a => a.Line)];
        bool forChildren = service.Audience == Audience.YoungChildren;
        bool lodges = konjac.Length > 0 || service.Shape == PortionShape.MiniCup;
        if (!forChildren && !lodges)
        {
            if (service.Audience is null)
            {
                context.Needs(Id, "who eats it: young children choke on firm pieces of one bite");
            }

            yield break;
        }

        Citation citation = forChildren ? Practice : konjac.Length > 0 ? Konjac : Opinion;
        yield return new Finding(
            Id, forChildren ? Severity.Conflict : Severity.Caution,
            $"A firm gel in one bite ({Words.Of(service.Shape.Value)}){(forChildren ? " for young children" : "")} can lodge in the airway"
            + $"{(konjac.Length > 0 ? ", and set konjac hardly dissolves there" : "")}. Cut firm gels thin and small for young children and frail adults. {SafetyRules.Defers}",
            ValueList<string>.From((konjac.Length > 0 ? konjac : context.Agents.Select(a => a.Line)).Select(l => l.Label)),
            citations: ValueList<Citation>.Own([citation]),
            remedies: ValueList<Remedy>.Own(
            [
                SafetyRules.OtherShape(service, PortionShape.Slice, "Serve it in thin slices.", "No piece fills the airway.", citation),
                SafetyRules.OtherShape(service, PortionShape.Spooned, "Serve it in a bowl or glass, eaten by the spoon.", "It is broken up by the spoon.", citation),
            ]));
    }

    /// <summary>Enough konjac to gel, alone or beside another agent: a little of it only thickens.</summary>
    private static bool IsKonjacGel(AgentInMix agent) => SafetyRules.IsKonjac(agent.Line.Ingredient)
        && agent.Percent >= (agent.Profile.WindowFor(Texture.Modifier)?.Percent ?? agent.Profile.MinimumGellingPercent)?.Value.Min;

    private static bool IsFirm(ReviewContext context) => context.Service.Texture is { } texture ? texture is Texture.Firm or Texture.VeryFirm
        : context.Agents.Exists(a => a.Profile.WindowFor(Texture.Firm)?.Percent.Value.Min is { } firm && a.Percent >= firm);
}

/// <summary>Jelly mini-cups with additives that the EU bars from them.</summary>
internal sealed class EuMiniCupRule : IDescribedRule
{
    // Directive 95/2/EC, annex I, in its text of 2010.
    private static readonly string[] Barred =
        ["E 400", "E 401", "E 402", "E 403", "E 404", "E 406", "E 407", "E 407a", "E 410", "E 412", "E 413", "E 414", "E 415", "E 417", "E 418", "E 440"];

    private static Citation Directive => BuiltInCatalogue.Cite("eu-95-2", "annex I");

    private static Citation Regulation => BuiltInCatalogue.Cite("eu-1333-2008", "annex II part E, 05.2", CitationBasis.Recalled);

    private static Citation Suspension => BuiltInCatalogue.Cite("jelly-ban-press-2004");

    public string Id => "eu-jelly-mini-cup";

    public RuleCard Card => new(
        "safety", "A jelly mini-cup for the EU holds an additive that is barred from it: a conflict.", "A dish eaten with a spoon.",
        ValueList<Cited<string>>.Own(
        [
            new(string.Join(", ", Barred), Directive), new("E 425, with the others, in the regulation now in force", Regulation), new("E 405, in the suspension of 2004; the later list drops it", Suspension),
        ]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ServicePlan service = context.Service;
        if (service.Shape != PortionShape.MiniCup || service.Market == Market.UnitedStates || service.Texture is Texture.FluidGel or Texture.Thickened)
        {
            yield break;
        }

        (FormulaLine Line, Citation Citation)[] barred =
        [
            .. from line in context.Formula.Lines
               let citation = SafetyRules.IsListed(line.Ingredient, Barred) ? Directive
                   : SafetyRules.IsListed(line.Ingredient, "E 425") ? Regulation
                   : SafetyRules.IsListed(line.Ingredient, "E 405") ? Suspension : null
               where citation is not null
               select (line, citation),
        ];
        if (barred.Length == 0)
        {
            yield break;
        }

        if (service.Market is null)
        {
            context.Needs(Id, "the market", [.. barred.Select(b => b.Line.Label)]);
            yield break;
        }

        yield return new Finding(
            Id, Severity.Conflict,
            $"The EU bars {Phrases.Names(barred.Select(b => b.Line))} from jelly mini-cups: firm jelly pressed from a small cup into the mouth in one bite has choked children. {SafetyRules.Defers}",
            ValueList<string>.From(barred.Select(b => b.Line.Label)),
            citations: ValueList<Citation>.From(barred.Select(b => b.Citation).Distinct()),
            remedies: ValueList<Remedy>.Own([SafetyRules.OtherShape(
                service, PortionShape.Spooned, "Serve it in a larger cup, eaten by the spoon.", "It is then no mini-cup.", barred[0].Citation)]));
    }
}

/// <summary>Konjac in jelly sweets (EU) and in mini-cups (United States).</summary>
internal sealed class KonjacSweetRule : IDescribedRule
{
    private const string JellyConfectionery = "jelly-confectionery";

    private static Citation Eu => BuiltInCatalogue.Cite("efsa-2004-82", "abstract: directive of 18 June 2003");

    private static Citation Us => BuiltInCatalogue.Cite("fda-ia-33-15");

    public string Id => "konjac-in-jelly-sweets";

    public RuleCard Card => new(
        "safety", "Konjac in jelly confectionery (category jelly-confectionery) for the EU, or in mini-cups for the United States: a conflict.", "Another agent.",
        ValueList<Cited<string>>.Own([new("EU: E 425 is barred from jelly confectionery", Eu), new("US: gel candies with konjac in mini-cups are detained", Us)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ServicePlan service = context.Service;
        FormulaLine[] konjac = [.. context.Formula.Lines.Where(l => SafetyRules.IsKonjac(l.Ingredient))];
        if (konjac.Length == 0)
        {
            yield break;
        }

        bool inEu = service.Market == Market.EuropeanUnion;
        if (inEu && service.FoodCategory is null)
        {
            context.Needs(Id, "the category of food", [.. konjac.Select(l => l.Label)]);
        }
        else if ((inEu && service.FoodCategory == JellyConfectionery && service.Shape != PortionShape.MiniCup) || (service.Market == Market.UnitedStates && service.Shape == PortionShape.MiniCup))
        {
            Citation citation = inEu ? Eu : Us;
            yield return new Finding(
                Id, Severity.Conflict,
                (inEu ? "The EU allows no konjac in jelly confectionery" : "The United States detain gel candies with konjac in mini-cups") + $": set konjac hardly dissolves, and pieces have choked children. {SafetyRules.Defers}",
                ValueList<string>.From(konjac.Select(l => l.Label)),
                citations: ValueList<Citation>.Own([citation]),
                remedies: konjac.Length == 1 && AgentSwap.For(context, konjac[0], "It holds no konjac; it can still choke in one bite.", Hydrocolloids.Agar, Hydrocolloids.GellanHighAcyl) is { } swap
                    ? ValueList<Remedy>.Own([swap]) : default);
        }
    }
}

/// <summary>More konjac than the EU allows.</summary>
internal sealed class EuKonjacMaximumRule : IDescribedRule
{
    private const double MaxGramsPerKg = 10;

    private static Citation Source => BuiltInCatalogue.Cite("efsa-konjac-2017");

    public string Id => "eu-konjac-maximum";

    public RuleCard Card => new(
        "safety", "Konjac over 10 g per kg of food for the EU: a conflict.", "The dose at the maximum.", ValueList<Cited<string>>.Own([new("E 425: 10 g/kg", Source)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        FormulaLine[] konjac = [.. context.Formula.Lines.Where(l => SafetyRules.IsKonjac(l.Ingredient))];
        double gramsPerKg = konjac.Sum(context.Formula.Proportions.PercentOfTotal) * 10;
        if (gramsPerKg <= MaxGramsPerKg)
        {
            yield break;
        }

        if (context.Service.Market is null)
        {
            context.Needs(Id, "the market", [.. konjac.Select(l => l.Label)]);
        }
        else if (context.Service.Market == Market.EuropeanUnion)
        {
            yield return new Finding(
                Id, Severity.Conflict,
                $"The food holds {Numbers.Significant(gramsPerKg, 3)} g of konjac (E 425) per kg; the EU allows {Numbers.Exact(MaxGramsPerKg)} g/kg. {SafetyRules.Defers}",
                ValueList<string>.From(konjac.Select(l => l.Label)),
                ValueList<Evidence>.Own([new Evidence("konjac in the food", gramsPerKg, "g/kg of the food", new NumberRange(null, MaxGramsPerKg))]),
                ValueList<Citation>.Own([Source]),
                SafetyRules.LowerTo(context.Formula, konjac, MaxGramsPerKg / 10, Source, requiresWindow: false));
        }
    }
}

/// <summary>Curdlan, which the EU does not list.</summary>
internal sealed class NotListedInEuRule : IDescribedRule
{
    private static Citation Source => BuiltInCatalogue.Cite("eu-1333-2008", "annex II", CitationBasis.Recalled);

    public string Id => "eu-not-listed";

    public RuleCard Card => new(
        "safety", "Curdlan in food for the EU: a conflict, as far as the list is recalled.", null, ValueList<Cited<string>>.Own([new("curdlan (INS 424) is not on the list", Source)]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        FormulaLine[] curdlan = [.. context.Formula.Lines.Where(l => Additives.Of(l.Ingredient).Any(a => a.Id == "curdlan"))];
        if (curdlan.Length > 0 && context.Service.Market is null)
        {
            context.Needs(Id, "the market", [.. curdlan.Select(l => l.Label)]);
        }
        else if (curdlan.Length > 0 && context.Service.Market == Market.EuropeanUnion)
        {
            yield return new Finding(
                Id, Severity.Conflict, $"Curdlan is not on the EU list of additives, as recalled: look it up in the list in force before it is sold. {SafetyRules.Defers}",
                ValueList<string>.From(curdlan.Select(l => l.Label)), citations: ValueList<Citation>.Own([Source]));
        }
    }
}

/// <summary>An additive above the ceiling of its section of 21 CFR for the category of food.</summary>
internal sealed class UsCeilingRule : IDescribedRule
{
    private static readonly string[] s_filling = ["and", "other", "commercial", "mixe", "base", "product"];

    public string Id => "us-maximum-use";

    public RuleCard Card => new(
        "safety",
        "An additive in food for the United States is above the ceiling for the category of food, the most specific that matches, else that of all other categories: a caution. The ceilings hold for food in interstate commerce.",
        "The dose at the ceiling, where it still works.",
        ValueList<Cited<string>>.From(
            from additive in Additives.All
            from ceiling in additive.UsCeilings
            select new Cited<string>($"{additive.Name}, {ceiling.Category.Replace('-', ' ')}: {Numbers.Significant(ceiling.Percent.Value, 3)} %", ceiling.Percent.Citation)));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        if (context.Service.Market != Market.UnitedStates)
        {
            yield break;
        }

        Formula formula = context.Formula;
        var uses = from line in formula.Lines
                   from additive in Additives.Of(line.Ingredient)
                   where !additive.UsCeilings.IsEmpty
                   group line by additive;
        foreach (IGrouping<Additive, FormulaLine> use in uses)
        {
            FormulaLine[] lines = [.. use];
            if (context.Service.FoodCategory is not { } category)
            {
                context.Needs(Id, "the category of food", [.. lines.Select(l => l.Label)]);
            }
            else if (CeilingFor(use.Key, category) is { } ceiling && lines.Sum(formula.Proportions.PercentOfTotal) is var percent && percent > ceiling.Percent.Value)
            {
                yield return new Finding(
                    Id, Severity.Caution,
                    $"The food holds {Numbers.Significant(percent, 3)} % of {use.Key.Name}; the ceiling for {ceiling.Category.Replace('-', ' ')} is {Numbers.Significant(ceiling.Percent.Value, 3)} % "
                    + $"({ceiling.Percent.Citation.Source.Title}). It holds for food in interstate commerce of the United States. {SafetyRules.Defers}",
                    ValueList<string>.From(lines.Select(l => l.Label)),
                    ValueList<Evidence>.Own([new Evidence($"{use.Key.Name} in the food", percent, "% by weight of the food", new NumberRange(null, ceiling.Percent.Value))]),
                    ValueList<Citation>.Own([ceiling.Percent.Citation]),
                    SafetyRules.LowerTo(formula, lines, ceiling.Percent.Value, ceiling.Percent.Citation, requiresWindow: true));
            }
        }
    }

    /// <summary>The ceiling of the category that shares the most words with a category, the lower of two alike; else that of all other categories.</summary>
    internal static UsCeiling? CeilingFor(Additive additive, string category)
    {
        HashSet<string> asked = WordsOf(category);
        return additive.UsCeilings
            .Select(c => (Ceiling: c, Words: WordsOf(c.Category)))
            .Where(c => c.Ceiling.Category != UsCeiling.AllOther && (asked.IsSubsetOf(c.Words) || c.Words.IsSubsetOf(asked)))
            .OrderByDescending(c => c.Words.Count(asked.Contains)).ThenBy(c => c.Ceiling.Percent.Value)
            .Select(c => c.Ceiling).FirstOrDefault() ?? additive.UsCeilings.FirstOrDefault(c => c.Category == UsCeiling.AllOther);
    }

    private static HashSet<string> WordsOf(string category)
    {
        var words = new HashSet<string>(category.Split('-').Select(w => w.TrimEnd('s')), StringComparer.Ordinal);
        if (words.Count > 1)
        {
            words.ExceptWith(s_filling);
        }

        return words;
    }
}

/// <summary>A liquid with alcohol heated above its flash point.</summary>
internal sealed class FlammableVapourRule : IDescribedRule
{
    // Ethanol and water: % vol and the flash point in °C, as quoted on an academic list; above 90 % vol the closed-cup values are lower.
    private static readonly (double Abv, double Celsius)[] FlashPoints = [(10, 49), (20, 36), (30, 29), (40, 26), (50, 24), (60, 22), (70, 21), (80, 20), (90, 17), (96, 12)];

    private static Citation Source => BuiltInCatalogue.Cite("ethanol-water-flash-points");

    public string Id => "flammable-vapour";

    public RuleCard Card => new(
        "safety", "A liquid of 10 % vol or more is heated above its flash point: a caution.", "The alcoholic lines after the heat.",
        ValueList<Cited<string>>.From(FlashPoints.Select(p => new Cited<string>($"{Numbers.Exact(p.Abv)} % vol: {Numbers.Exact(p.Celsius)} °C", Source))));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        // One pot, one fire: the agent that is heated most stands for all.
        AgentInMix? agent = context.Agents.Where(a => a.IsHeated && FlashPoint(a.Medium.AlcoholByVolume.Value) <= a.HydrationCelsius).OrderByDescending(a => a.HydrationCelsius).FirstOrDefault();
        if (agent is null)
        {
            yield break;
        }

        double abv = agent.Medium.AlcoholByVolume.Value, flash = FlashPoint(abv)!.Value;
        FormulaLine[] alcoholic = [.. context.HydrationLines(agent.Line).Where(l => l.Ingredient.Composition?.Value.EthanolPercent > 1)];
        yield return new Finding(
            Id, Severity.Caution,
            $"{agent.Name} is heated in a liquid of {Numbers.Significant(abv, 3)} % vol: from about {Numbers.Significant(flash, 2)} °C on it gives off vapour that can catch fire. "
            + $"Keep it away from flames and hot fat, and air the room. {SafetyRules.Defers}",
            ValueList<string>.From([agent.Line.Label, .. alcoholic.Select(l => l.Label)]),
            ValueList<Evidence>.Own([new Evidence("temperature of the alcoholic liquid", agent.HydrationCelsius!.Value, "°C", new NumberRange(null, flash))]),
            ValueList<Citation>.Own([Source]), Remedies(context, agent, alcoholic));
    }

    /// <summary>Between the points of the list; null under its first.</summary>
    internal static double? FlashPoint(double abv)
    {
        for (int i = 1; i < FlashPoints.Length; i++)
        {
            if (abv >= FlashPoints[i - 1].Abv && abv <= FlashPoints[i].Abv)
            {
                double part = (abv - FlashPoints[i - 1].Abv) / (FlashPoints[i].Abv - FlashPoints[i - 1].Abv);
                return FlashPoints[i - 1].Celsius + (part * (FlashPoints[i].Celsius - FlashPoints[i - 1].Celsius));
            }
        }

        return abv > FlashPoints[0].Abv ? FlashPoints[FlashPoints.Length - 1].Celsius : null;
    }

    private static ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, FormulaLine[] alcoholic)
    {
        FormulaLine[] rest = [.. context.HydrationLines(agent.Line).Except(alcoholic)];
        FormulaLine[] carriers = [.. rest.Where(l => l.IsBase && l.Ingredient.WaterPercent > 50)];
        if (carriers.Length == 0)
        {
            return default;
        }

        var changes = new List<IFormulaChange>(alcoholic.Where(l => !l.IsBase).Select(l => new LineDelayed(l.Label, RemedyPhases.AfterHeat)));
        if (alcoholic.Any(l => l.IsBase))
        {
            changes.Add(new ProcessChange(context.Formula.Process with { Carriers = ValueList<string>.From(carriers.Select(c => c.Label)) }));
        }

        return ValueList<Remedy>.Own([new Remedy(
            "alcohol-after-heat", $"Heat {agent.Name} in the {Phrases.Names(carriers)} alone, and stir in the {Phrases.Names(alcoholic)} off the heat.", "Little vapour comes near the flame.",
            new ChangeSequence(ValueList<IFormulaChange>.From(changes)), ValueList<Citation>.Own([Source]))]);
    }
}

/// <summary>Whether a stored gel needs temperature control, by its pH and water activity.</summary>
internal sealed class PerishableRule : IDescribedRule
{
    public static Citation Source => BuiltInCatalogue.Cite("fda-food-code-tables", "tables A and B");

    public string Id => "perishable";

    public RuleCard Card => new(
        "safety",
        "By pH and water activity, a gel that is stored needs temperature control until a product assessment shows otherwise: information, as it is of every such food.",
        null,
        ValueList<Cited<string>>.Own(
        [
            new("table A, heated and then packaged: water activity to 0.92, or to 0.95 with pH to 5.6, or pH to 4.6 needs none", Source),
            new("table B, all other: water activity under 0.88, or to 0.90 with pH to 5.0, or to 0.92 with pH to 4.6, or pH under 4.2 needs none", Source),
        ]));

    /// <summary>Whether an assessment is needed; null if pH or water activity are not known.</summary>
    public static bool? NeedsAssessment(ReviewContext context, string ruleId)
    {
        bool isPackaged = context.Service.Packaged == true;
        double activity = context.Mix.WaterActivity.Value;
        if (activity < FoodCodeTables.DryEnough(isPackaged) && context.Mix.WaterActivity.IsSound)
        {
            return false;
        }

        if (context.Mix.Ph is not { } ph || double.IsNaN(activity))
        {
            context.Needs(ruleId, context.Mix.Ph is null ? "the pH of the mix" : "the water activity of the mix");
            return null;
        }

        // Where the relation for water activity does not hold, it is counted as wet.
        return FoodCodeTables.NeedsAssessment(isPackaged, ph.Value, context.Mix.WaterActivity.IsSound ? activity : 1);
    }

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ServicePlan service = context.Service;
        if (service.StoredSeconds is not > 0 || NeedsAssessment(context, Id) is not true)
        {
            yield break;
        }

        bool isPackaged = service.Packaged == true;
        HoldingRule holding = HoldingRule.UsFoodCode;
        yield return new Finding(
            Id, Severity.Information,
            $"At pH {Numbers.Significant(context.Mix.Ph!.Value, 2)} and water activity {Numbers.Significant(context.Mix.WaterActivity.Value, 2)} it counts as food that needs temperature control, "
            + $"until a product assessment shows otherwise (table {(isPackaged ? "A" : "B")} of the Food Code): keep it at {Numbers.Exact(holding.ColdMaxCelsius.Value)} °C or colder. No gelling agent preserves it. {SafetyRules.Defers}",
            evidence: ValueList<Evidence>.Own(
            [
                new Evidence("pH of the mix", context.Mix.Ph.Value, "pH", new NumberRange(null, FoodCodeTables.SourEnough(isPackaged))),
                new Evidence("water activity of the mix", context.Mix.WaterActivity.Value, "water activity", new NumberRange(null, FoodCodeTables.DryEnough(isPackaged))),
            ]),
            citations: ValueList<Citation>.Own([Source, holding.ColdMaxCelsius.Citation]));
    }
}

/// <summary>A perishable gel held too long between cold and hot.</summary>
internal sealed class WarmHoldingRule : IDescribedRule
{
    // Time as the control: 4 h, or 6 h if it stays at 21 °C or under.
    private const double Hours = 4, CoolHours = 6, CoolCelsius = 21;

    private static Citation Time => BuiltInCatalogue.Cite("fda-food-code-2022", "3-501.19", CitationBasis.Recalled);

    public string Id => "warm-holding";

    public RuleCard Card => new(
        "safety", "A perishable gel is held between 5 and 57 °C for more than 4 h, or 6 h at 21 °C or under: a caution.", "The longest time; holding it cold.",
        ValueList<Cited<string>>.Own(
        [
            new("4 h; 6 h at 21 °C or under", Time), new("held at 5 °C or colder", HoldingRule.UsFoodCode.ColdMaxCelsius.Citation), new("held at 57 °C or hotter", HoldingRule.UsFoodCode.HotMinCelsius.Citation), new("which food is perishable", PerishableRule.Source),
        ]));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ServicePlan service = context.Service;
        if (service.HeldSeconds is not { } seconds || service.ServedAt is not { } served || HoldingRule.UsFoodCode.Check(served) != HoldingOutcome.Between)
        {
            yield break;
        }

        double max = service.ServedAtCelsius <= CoolCelsius ? CoolHours : Hours;
        if (seconds <= max * 3600 || PerishableRule.NeedsAssessment(context, Id) is not true)
        {
            yield break;
        }

        ValueList<Citation> citations = ValueList<Citation>.Own([Time, HoldingRule.UsFoodCode.ColdMaxCelsius.Citation]);
        yield return new Finding(
            Id, Severity.Caution,
            $"It is held at {Numbers.Significant(service.ServedAtCelsius!.Value, 3)} °C for {Numbers.Significant(seconds / 3600, 3)} h. Food that needs temperature control may stay between "
            + $"{Numbers.Exact(HoldingRule.UsFoodCode.ColdMaxCelsius.Value)} and {Numbers.Exact(HoldingRule.UsFoodCode.HotMinCelsius.Value)} °C for {Numbers.Exact(max)} h at most, and is then discarded (US Food Code). {SafetyRules.Defers}",
            evidence: ValueList<Evidence>.Own([new Evidence("time held warm", seconds / 3600, "h", new NumberRange(null, max))]),
            citations: citations,
            remedies: ValueList<Remedy>.Own(
            [
                new Remedy("shorter-service", $"Hold it for {Numbers.Exact(max)} h at most, and discard what is left.", "It stays inside the time.", new ServiceChange(service with { HeldFor = Duration.FromHours(max) }), citations),
            ]));
    }
}
