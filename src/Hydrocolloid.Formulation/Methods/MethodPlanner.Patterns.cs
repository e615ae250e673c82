using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Phrases;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>What is worked otherwise than cast: baths, fluid gels, foams, liquids cleared through a gel.</summary>
internal sealed partial class MethodPlanner
{
    // From a skin that just holds to one that bites, m: a choice of this library, the times follow from it.
    private const double ThinSkinMetres = 0.0005, ThickSkinMetres = 0.001;

    private void CheckPattern()
    {
        Agent? alginate = _agents.FirstOrDefault(a => a.SetsByCalciumAlone);
        if (_pattern == MethodPattern.FluidGel && !_agents.Any(a => a.SetsOnCooling))
        {
            Conflict(ConflictKind.NothingSetsIt, "A fluid gel is set and then sheared, and nothing here sets on cooling.", "Use agar, gellan or a carrageenan.", _agents.Select(a => a.Line));
        }

        if (_pattern == MethodPattern.DirectBath && alginate is null)
        {
            Conflict(ConflictKind.NothingSetsIt, "A calcium bath sets alginate, and there is none.", "Add alginate, or plan the reverse bath.", []);
        }

        if (_pattern == MethodPattern.ReverseBath && alginate is not null)
        {
            Conflict(ConflictKind.Order, "In a reverse bath the alginate is in the bath, not in the formula that is dropped into it.", "Take the alginate out of the formula.", [alginate.Line]);
        }

        if (_pattern is MethodPattern.Foam or MethodPattern.Clarify)
        {
            CheckTechnique(_pattern == MethodPattern.Foam ? "foam" : "gel-filtration", _pattern == MethodPattern.Foam ? "foam" : "clear a liquid");
        }

        if (alginate is not null && _pattern != MethodPattern.ReverseBath)
        {
            CheckCalcium(alginate);
        }

        if (_pattern == MethodPattern.ReverseBath && !(new MixContents(_formula, _formula.Lines.Where(l => l.IsContinuous)).Calcium.MmolPerKg > 0))
        {
            Conflict(ConflictKind.NothingSetsIt, "No calcium is known in what is dropped into the alginate bath.",
                $"Add a calcium salt. {Techniques.Get("reverse-bath").Fact("core")!.Value}", [], Techniques.Get("reverse-bath").Fact("core")!.Citation);
        }
    }

    private void CheckCalcium(Agent alginate)
    {
        FormulaLine[] soluble = [.. _sorted.CalciumLast.Where(l => l.Ingredient.Id is not ("calcium-carbonate" or "calcium-sulphate"))];
        if (soluble.Length > 0)
        {
            Conflict(ConflictKind.Order, $"The {Names(soluble)} would set the {alginate.Name} in lumps the moment it is stirred in.",
                "Leave it out and drop the mix into a calcium bath, or use a calcium salt that hardly dissolves with a slow acid.", [alginate.Line, .. soluble], alginate.Trigger!.Description.Citation);
            return;
        }

        FormulaLine[] liquid = [.. _sorted.Carriers, .. _sorted.Rest];
        if (liquid.Length == 0)
        {
            return;
        }

        TechniqueFigure part = Techniques.Get("direct-calcium-bath").Figure("calcium-part-of-exchange");
        MixContents mix = new(_formula, [.. liquid, alginate.Line]);
        double milligrams = mix.Calcium.MilligramsPerKg.Value;
        double bears = part.Range.Value.Min!.Value * CalciumNeed.AlginateCalciumGrams(1000 * _formula.Proportions.MassOf(alginate.Line) / mix.MassPerBase) * 1000;
        if (milligrams > bears)
        {
            Conflict(ConflictKind.Limit, $"The liquid brings {Numbers.Significant(milligrams, 3)} mg/kg of calcium ({Numbers.Significant(mix.Calcium.MmolPerKg, 3)} mmol/kg); from about {Numbers.Significant(bears, 2)} mg/kg on it sets the {alginate.Name} in the bowl.",
                "Plan the reverse bath: the liquid with its calcium goes into an alginate bath.", [alginate.Line, .. liquid], part.Range.Citation);
        }
    }

    private void CheckTechnique(string id, string what)
    {
        if (!_agents.Any(a => a.By(id) is not null))
        {
            Technique technique = Techniques.Get(id);
            string[] names = [.. technique.AgentNames.Select(InSentence)];
            Conflict(ConflictKind.NothingSetsIt, $"The catalogue knows of no hydrocolloid here with which to {what}.", $"Use one of: {string.Join(", ", names)}.", _agents.Select(a => a.Line), [.. technique.Facts.Select(f => f.Text.Citation).Distinct()]);
        }
    }

    private void FluidGel()
    {
        Agent[] agents = [.. _agents.Where(a => a.SetsOnCooling)];
        Cited<string>? how = agents.Select(a => a.By("fluid-gel")?.Fact("shear")).FirstOrDefault(f => f is not null);
        SetOnCooling();
        Equipment shearer = Shearer();
        if (shearer == Equipment.None)
        {
            Conflict(ConflictKind.Equipment, "A fluid gel is sheared, and the kitchen has nothing to shear with.", "Bring a hand blender.", agents.Select(a => a.Line), how?.Citation);
        }

        Step(StepAction.Shear, $"Break the set gel up and shear it smooth with {Named(shearer)}.", how?.Value ?? "Sheared, the set gel becomes particles that flow.", "It pours, and holds its shape at rest; no grains on the tongue.",
            agents.Select(a => a.Line), null, with: shearer, citations: [how?.Citation ?? agents.FirstOrDefault()?.Profile.WindowFor(Texture.FluidGel)?.Percent.Citation]);
        Step(StepAction.Strain, "Push through a fine sieve.", "It takes out pieces that were not sheared; before shearing nothing would pass.", "Nothing is left in the sieve.", []);
        Equipment vacuum = _kitchen.Has(Equipment.VacuumChamber) ? Equipment.VacuumChamber : Equipment.None;
        Step(StepAction.Deaerate, vacuum != Equipment.None ? "Draw a vacuum until it is clear of bubbles." : "Let stand until the bubbles have risen.", "Air makes it opaque.", "No bubbles against the light.", [], waits: true, with: vacuum);
        FoldPiecesLate();
    }

    /// <summary>Whipped while it thickens, or from a siphon; what sets on heating is whipped cold.</summary>
    private void Foam()
    {
        Technique technique = Techniques.Get("foam");
        Agent[] agents = [.. _agents.Where(a => a.By("foam") is not null)];
        bool onCooling = agents.Any(a => a.SetsOnCooling);
        if (onCooling)
        {
            NumberRange window = agents.First(a => a.SetsOnCooling).Profile.Setting.Window!.Value.Celsius;
            Step(StepAction.Cool, $"Cool, stirring, until it thickens, at {new TemperatureRange(window)}; not until it has set.", technique.Fact("whip")!.Value, "The whisk leaves a trace that closes slowly.", agents.Select(a => a.Line), null, window,
                citations: [technique.Fact("whip")!.Citation, .. SettingCitations()]);
        }

        Step(StepAction.Whip, "Whip air in with a whisk or a whipping machine until it holds a peak.", onCooling ? "What sets holds the bubbles where they are." : technique.Fact("heat")!.Value,
            "Weigh the same cup full of mix before and of foam after: (mix − foam) / foam is the overrun.", agents.Select(a => a.Line),
            citations: [onCooling ? technique.Fact("whip")!.Citation : technique.Fact("heat")!.Citation, technique.Fact("overrun")!.Citation], notes: [technique.Fact("overrun"), technique.Fact("siphon")]);
        FoldPiecesLate();
        if (onCooling)
        {
            SetOnCooling();
        }
        else
        {
            AlkaliOrHeatSet();
        }
    }

    /// <summary>A weak gel holds back what clouds the liquid: broken and drained, or frozen and thawed over a cloth. What drains is the product.</summary>
    private void Clarify()
    {
        Technique technique = Techniques.Get("gel-filtration");
        Agent[] agents = [.. _agents.Where(a => a.By("gel-filtration") is not null)];
        foreach (Agent agent in agents)
        {
            double percent = _formula.Proportions.PercentOfContinuousMix(agent.Line);
            if (agent.Profile.WindowFor(Texture.Soft)?.Percent is { } soft && percent > soft.Value.Max)
            {
                Conflict(ConflictKind.Limit, $"{Numbers.Significant(percent, 3)} % of {agent.Name} makes a gel firmer than soft ({soft.Value} %), which keeps the liquid.", "Take no more than sets it softly.", [agent.Line], soft.Citation, technique.Fact("dose")!.Citation);
            }
        }

        SetOnCooling();
        bool frozen = agents.Length > 0 && agents.All(a => a.Profile.Melting.Window?.Value.Celsius.Min < ScaldsAboveCelsius);
        if (frozen)
        {
            Step(StepAction.Freeze, "Freeze it through, in a flat block.", technique.Fact("freeze")!.Value, "Hard in the middle.", agents.Select(a => a.Line), null, waits: true, ahead: "frozen", citations: [technique.Fact("freeze")!.Citation],
                notes: [.. agents.Select(a => a.Profile.SensitivityTo(SensitiveTo.Freezing)?.Consequence)]);
        }
        else
        {
            Step(StepAction.Shear, "Break the set gel into curds with a few strokes of a whisk; do not blend it.", technique.Fact("break")!.Value, "Curds the size of peas in clear liquid.", agents.Select(a => a.Line), citations: [technique.Fact("break")!.Citation]);
        }

        string kept = _formula.Process.Losses.Straining.IsNone ? "" : $" Counted on to stay in the cloth: {_formula.Process.Losses.Straining}.";
        Step(StepAction.Drain, frozen ? $"Lay the block in a sieve lined with cloth over a bowl and let it thaw in the refrigerator.{kept}" : $"Pour into a sieve lined with cloth over a bowl and let it drain in the refrigerator.{kept}",
            "The network keeps the cloud; pressing drives it through.", "What drips is clear; stop when it runs cloudy.", agents.Select(a => a.Line), null, waits: true, ahead: "covered in the cold",
            citations: [technique.Fact("yield")!.Citation], notes: [technique.Fact("yield"), technique.Fact("traces")]);
    }

    private void Bath()
    {
        bool direct = _pattern == MethodPattern.DirectBath;
        Technique technique = Techniques.Get(direct ? "direct-calcium-bath" : "reverse-bath");
        TechniqueFigure bath = technique.Figures.First(f => f.What == "bath-percent");
        NumberRange percent = bath.Range.Value;
        double middle = (percent.Min!.Value + percent.Max!.Value) / 2;
        string others = string.Join("; ", technique.Figures.Where(f => f.What == "bath-percent").Skip(1).Select(f => $"{f.Of!.Replace('-', ' ')} {f.Range.Value} %"));
        Step(StepAction.MakeBath, $"Make up the bath: {percent} % by weight of {bath.Of!.Replace('-', ' ')} in water{(direct ? "" : " low in calcium")}.{(others.Length > 0 ? $" Or: {others}." : "")}",
            direct ? "Its calcium sets the skin." : "The calcium inside sets the alginate around it.", direct ? "Clear, no grains." : "Clear, no lumps, no bubbles.", [], waits: !direct, ahead: "covered in the cold",
            citations: technique.Figures.Where(f => f.What == "bath-percent").Select(f => f.Range.Citation), notes: [direct ? technique.Fact("taste") : technique.Fact("water"), direct ? null : technique.Fact("air"), direct ? null : technique.Fact("core")]);

        double calcium, alginate;
        Agent? agent = _agents.FirstOrDefault(a => a.SetsByCalciumAlone);
        if (direct)
        {
            // mg per 100 g of salt, so middle % of it is middle·mg/10 mg per kg of bath.
            calcium = middle * Pantry.CalciumLactate.Composition!.Value.CalciumMg!.Value / 10 / CalciumNeed.CalciumGramsPerMol;
            alginate = agent is null ? 0 : 10 * _formula.Proportions.PercentOfContinuousMix(agent.Line);
        }
        else
        {
            calcium = new MixContents(_formula, _formula.Lines.Where(l => l.IsContinuous)).Calcium.MmolPerKg;
            alginate = 10 * middle;
        }

        NumberRange? seconds = null;
        Citation? skinCitation = null;
        string times = "";
        if (calcium > 0 && alginate > 0)
        {
            // Skin ∝ √t, so t = t₀ (x/x₀)².
            Estimate<Length> minute = IonDemand.AlginateSkin(calcium, alginate, Duration.FromMinutes(1));
            double metres = minute.Value!.Value.Meters;
            seconds = new NumberRange(Math.Round(60 * Math.Pow(ThinSkinMetres / metres, 2)), Math.Round(60 * Math.Pow(ThickSkinMetres / metres, 2)));
            skinCitation = minute.Source;
            times = $" A skin of 0.5 mm takes about {Numbers.Significant(seconds.Value.Min!.Value, 2)} s, one of 1 mm {Numbers.Significant(seconds.Value.Max!.Value, 2)} s (computed; a skin is good to a factor of 1.5, so its time to about 2{(direct ? "" : "; longer as the calcium inside is used up")}).";
        }

        Step(StepAction.Bathe, $"Drop or spoon the mix into the bath, stirring it gently.{times}", direct ? "The skin grows inwards with the root of the time: twice as thick takes four times as long." : "The skin grows outwards into the bath.",
            "Lift one out and cut it: skin outside, liquid inside.", agent is null ? [] : [agent.Line], null, null, seconds, citations: [skinCitation, agent?.Trigger?.Description.Citation], notes: [technique.Fact("shape")]);
        Step(StepAction.Rinse, "Lift out with a slotted spoon and rinse in clean water.", direct ? technique.Fact("rinse")!.Value : "It takes off the alginate that clings, which would glue them together.", "They roll singly and taste of the filling.",
            agent is null ? [] : [agent.Line], citations: [direct ? technique.Fact("rinse")!.Citation : null], ahead: direct ? null : "covered in the filling's own liquid, in the cold");
        FoldPiecesLate();
        Step(StepAction.Serve, direct ? "Serve within minutes: calcium goes on working inwards." : "Serve, or keep in their own liquid: no calcium comes from outside, so they stay liquid inside.", direct ? technique.Fact("rinse")!.Value : "What sets them is used up at the skin.",
            "Liquid inside when bitten.", [], citations: [direct ? technique.Fact("rinse")!.Citation : null]);
    }
}
