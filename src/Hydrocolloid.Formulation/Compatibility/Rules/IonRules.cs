using Hydrocolloid.Formulation.Analysis;
using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about calcium, potassium, sodium and what binds them.</summary>
internal static class IonRules
{
    public static IDescribedRule[] All =>
    [
        new CalciumWhileHydratingRule(),
        new SaltWhileHydratingRule(),
        new TooFewIonsRule("gelling-ions-missing", LimitedQuantity.Calcium, "the amount of gelling ions (counted as calcium)"),
        new TooFewIonsRule("calcium-missing", LimitedQuantity.CalciumPerGram, "the amount of calcium for it"),
        new TooFewIonsRule("potassium-missing", LimitedQuantity.Potassium, "the amount of potassium in the mix"),
        new TooFewIonsRule("salts-missing", LimitedQuantity.Cations, "the amount of calcium, magnesium, potassium and sodium in the mix"),
        new TooManyIonsRule("too-much-calcium", LimitedQuantity.Calcium, "the amount of calcium in the mix"),
        new TooManyIonsRule("too-much-calcium-for-dose", LimitedQuantity.CalciumPerGram, "the amount of calcium for it"),
        new TooManyIonsRule("too-much-potassium", LimitedQuantity.Potassium, "the amount of potassium in the mix"),
    ];
}

/// <summary>Amounts of ions that count for a gel.</summary>
internal static class GelIons
{
    // 100–200 mmol/L of sodium or potassium set low-acyl gellan as 4–6 of calcium do (the catalogue's facts).
    private const double MonovalentPerCalcium = 25;

    /// <summary>The calcium that is not held by a sequestrant, mmol/kg of the mix; in milk all of it, since what casein holds is not known.</summary>
    public static Reckoned Calcium(MixContents mix, IEnumerable<FormulaLine> lines)
    {
        Reckoned total = InMmol(mix.Calcium);
        return mix.Casein.IsEmpty && lines.Any(l => IsSequestrant(l.Ingredient)) && mix.FreeCalcium is { } free
            ? free with { Value = Math.Min(total.Value, free.Value * mix.Water.Value / 100), Unit = "mmol/kg" } : total;
    }

    /// <summary>
    /// The calcium that hinders a hydrocolloid from dissolving, mmol/kg of what it is in; null if it is not known. What casein holds does not
    /// hinder gellan or pectin, but alginate takes it; what a sequestrant holds and what hardly dissolves hinders nothing.
    /// </summary>
    public static Reckoned? CalciumThatHinders(Formula formula, FormulaLine agent, IEnumerable<FormulaLine> lines)
    {
        FormulaLine[] dissolved = [.. lines.Where(l => !IsSlowCalcium(l.Ingredient))];
        var liquid = new MixContents(formula, dissolved);
        return liquid.Casein.IsEmpty || agent.Ingredient.IsAlginate() ? Calcium(liquid, dissolved) : null;
    }

    /// <summary>Calcium and magnesium, and potassium and sodium for what they do in its place, mmol/kg of the mix.</summary>
    public static Reckoned AsCalcium(MixContents mix, IEnumerable<FormulaLine> lines)
    {
        Reckoned calcium = Calcium(mix, lines);
        return calcium with
        {
            Value = calcium.Value + mix.Magnesium.MmolPerKg + (mix.Potassium.MmolPerKg + mix.Sodium.MmolPerKg) / MonovalentPerCalcium,
            Without = Together(calcium.Without, mix.Potassium, mix.Sodium),
        };
    }

    public static Reckoned Cations(MixContents mix)
        => InMmol(mix.Calcium) with
        {
            Value = mix.Calcium.MmolPerKg + mix.Magnesium.MmolPerKg + mix.Potassium.MmolPerKg + mix.Sodium.MmolPerKg,
            Without = Together(mix.Calcium.MilligramsPerKg.Without, mix.Potassium, mix.Sodium),
        };

    public static Reckoned InMmol(IonContent ion) => ion.MilligramsPerKg with { Value = ion.MmolPerKg, Unit = "mmol/kg" };

    public static bool IsSequestrant(Ingredient ingredient) => (ingredient.BasedOn ?? ingredient).Id is "sodium-citrate" or "tetrasodium-pyrophosphate";

    /// <summary>A calcium salt so little soluble that it does not hinder what is dissolved beside it.</summary>
    public static bool IsSlowCalcium(Ingredient ingredient) => (ingredient.BasedOn ?? ingredient).Id is "calcium-sulphate" or "calcium-carbonate";

    public static bool IsCalciumSalt(FormulaLine line) => line is { IsBase: false, Ingredient: { Category: "salt", Composition.Value.CalciumMg: > 1000 } };

    private static ValueList<string> Together(ValueList<string> first, params IonContent[] others)
        => ValueList<string>.From(first.Concat(others.SelectMany(o => o.MilligramsPerKg.Without)).Distinct(StringComparer.Ordinal));
}

/// <summary>Calcium in what an agent should dissolve in.</summary>
internal sealed class CalciumWhileHydratingRule() : LimitRule("calcium-while-hydrating", "ions", LimitedQuantity.Calcium, LimitStage.Hydrating)
{
    private const double MostCitratePercent = 0.3; // the usual range ends there: 0.1–0.3 % by weight

    protected override string Trigger => "There is more calcium in what a hydrocolloid dissolves in than lets it dissolve.";

    protected override string RemedyInWords => "The calcium salt after the heat; sodium citrate first, up to 0.3 %; softer water; another liquid to dissolve it in; for alginate the reverse bath.";

    protected override string QuantityName => "the calcium in the liquid it dissolves in";

    protected override string Need(AgentInMix agent) => $"the calcium of what the {Phrases.InSentence(agent.Line)} dissolves in that casein does not hold";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => Measure(context, agent, without: []);

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        Formula formula = context.Formula;
        double most = agent.Profile.Limits.Where(l => l is { Quantity: LimitedQuantity.Calcium, Stage: LimitStage.Hydrating }).Min(l => l.Range.Value.Max!.Value);
        ValueList<Citation> citations = ValueList<Citation>.Own([limit.Range.Citation]);
        var remedies = new List<Remedy>();
        FormulaLine[] lines = [.. context.HydrationLines(agent.Line)];
        FormulaLine[] salts = [.. lines.Where(l => GelIons.IsCalciumSalt(l) && !GelIons.IsSlowCalcium(l.Ingredient))];
        if (salts.Length > 0 && IsInside(salts))
        {
            remedies.Add(new Remedy("calcium-after-heat", $"Stir in the {Phrases.Names(salts)} after the heat.", "It dissolves first, and then sets.", HeldBack.Later(salts), citations));
        }

        // Gellan and pectin need some calcium in the end.
        if (agent.Line.Ingredient.IsAlginate() && lines.FirstOrDefault(l => l.Ingredient is { Category: "water", Id: not "water-distilled" }) is { } water && formula.FindLine("water-distilled") is null && IsInside([water]))
        {
            remedies.Add(new Remedy(
                "softer-water", $"Take distilled water instead of the {Phrases.InSentence(water)}.", "There is hardly any calcium left to hinder it.",
                new IngredientSwap(water.Label, Pantry.WaterDistilled), citations));
        }

        if (context.HydrationMedium(agent.Line).Casein.IsEmpty
            && AddedAmount.Find(formula, MostCitratePercent, p => Amounts.Add(formula, Pantry.SodiumCitrate, p, RemedyPhases.BeforeHeat, formula.Phases[agent.Line.PhaseIndex].Name), Available, most) is { } citrate)
        {
            remedies.Add(new Remedy(
                "bind-calcium", $"Dissolve trisodium citrate in the liquid first: {AddedAmount.Stated(citrate)}.",
                $"It binds calcium until {Numbers.Significant(most, 2)} mmol/kg are left.", citrate,
                ValueList<Citation>.Own([limit.Range.Citation, BuiltInCatalogue.Cite("imeson-2010", "0.1–0.3 % by weight of trisodium citrate", CitationBasis.Recalled)])));
        }

        FormulaLine[] rich = [.. lines.Where(l => l.IsBase && l.Ingredient.Composition?.Value.CalciumMg * 10 / MixContents.GramsPerMolCalcium > most)];
        if (rich.Length > 0 && HeldBack.Carriers(context, agent, rich) is { Length: > 0 } carriers && IsInside(rich))
        {
            remedies.Add(new Remedy(
                "calcium-held-back", $"Dissolve the {agent.Name} in the {Phrases.Names(carriers)} alone, and stir in the {Phrases.Names(rich)} afterwards.",
                "It dissolves where there is little calcium.", HeldBack.ByCarriers(context, carriers), citations));
        }

        if (limit.Harm == Harm.Fails && agent.Line.Ingredient.IsAlginate() && ReverseBath.Remedy(agent) is { } reverse)
        {
            remedies.Add(reverse);
        }

        return ValueList<Remedy>.Own([.. remedies]);

        bool IsInside(FormulaLine[] without) => Measure(context, agent, without)?.Value <= limit.Range.Value.Max;

        double? Available(ReviewContext changed) => AddedAmount.Same(changed, agent) is { } same ? Measure(changed, same, [])?.Value : null;
    }

    private Reckoned? Measure(ReviewContext context, AgentInMix agent, FormulaLine[] without)
    {
        Reckoned? calcium = GelIons.CalciumThatHinders(context.Formula, agent.Line, context.HydrationLines(agent.Line).Except(without));
        if (calcium?.Without.IsEmpty == false && without.Length == 0)
        {
            context.Needs(Id, $"the calcium of {calcium.Without}", agent.Line.Label);
        }

        return calcium;
    }
}

/// <summary>Much salt in what alginate should dissolve in.</summary>
internal sealed class SaltWhileHydratingRule() : LimitRule("salt-while-hydrating", "ions", LimitedQuantity.Sodium, LimitStage.Hydrating)
{
    protected override string Trigger => "There is more salt in what a hydrocolloid dissolves in than lets it swell well.";

    protected override string RemedyInWords => "The salt after it has dissolved.";

    protected override string QuantityName => "the sodium in the liquid it dissolves in";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
    {
        Reckoned sodium = GelIons.InMmol(agent.Medium.Sodium);
        if (!sodium.Without.IsEmpty)
        {
            context.Needs(Id, $"the sodium of {sodium.Without}", agent.Line.Label);
        }

        return sodium;
    }

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        FormulaLine[] salt = [.. context.HydrationLines(agent.Line).Where(l => !l.IsBase && l.Ingredient.Composition?.Value.SodiumMg > 5000 && !GelIons.IsSequestrant(l.Ingredient))];
        return salt.Length > 0 && GelIons.InMmol(new MixContents(context.Formula, context.HydrationLines(agent.Line).Except(salt)).Sodium).Value <= limit.Range.Value.Max
            ? ValueList<Remedy>.Own([new Remedy(
                "salt-afterwards", $"Stir in the {Phrases.Names(salt)} once it has dissolved.", "It swells fully first.", HeldBack.Later(salt), ValueList<Citation>.Own([limit.Range.Citation]))])
            : default;
    }
}

/// <summary>The ions that set a gel, in the mix that gels.</summary>
internal abstract class IonsOfTheGelRule(string id, LimitedQuantity quantity, string name) : LimitRule(id, "ions", quantity, LimitStage.Finished)
{
    protected LimitedQuantity Quantity { get; } = quantity;

    protected override string QuantityName => name;

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent) => Quantity switch
    {
        LimitedQuantity.CalciumPerGram => PerGram(GelIons.Calcium(context.Mix, MixLines(context)), agent),
        LimitedQuantity.Potassium => GelIons.InMmol(context.Mix.Potassium),
        LimitedQuantity.Cations => GelIons.Cations(context.Mix),
        _ => GelIons.Calcium(context.Mix, MixLines(context)),
    };

    /// <summary>Alginate is set in a bath, unless calcium is put into the mix to set it from inside.</summary>
    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => !agent.Line.Ingredient.IsAlginate() || MixLines(context).Any(GelIons.IsCalciumSalt);

    protected static IEnumerable<FormulaLine> MixLines(ReviewContext context) => context.Formula.Lines.Where(l => l.IsContinuous);

    private static Reckoned PerGram(Reckoned calcium, AgentInMix agent) => calcium with { Value = calcium.Value / (agent.Percent * 10), Unit = "mmol per gram of it" };
}

/// <summary>Too few of the ions that set a gel.</summary>
internal sealed class TooFewIonsRule(string id, LimitedQuantity quantity, string name) : IonsOfTheGelRule(id, quantity, name)
{
    private const double MostSaltPercent = 2;
    private const double AcidSetsPh = 3.5;

    private static readonly Citation s_gellan = BuiltInCatalogue.Cite("imeson-2010", "calcium for strength, 4–6 mmol/L at 0.5 %", CitationBasis.Recalled);
    private static readonly Citation s_kappa = BuiltInCatalogue.Cite("working-range", "potassium aimed at, 30–150 mmol/kg", CitationBasis.Estimated);

    protected override string Trigger => Quantity switch
    {
        LimitedQuantity.CalciumPerGram => "Low methoxyl pectin over pH 3.5, or alginate that is set from inside, has less calcium than it takes up.",
        LimitedQuantity.Potassium => "Kappa carrageenan has neither potassium nor milk to gel with.",
        LimitedQuantity.Cations => "Iota carrageenan has no ions to gel with.",
        _ => "Low-acyl gellan over pH 3.5 has too few ions to gel with.",
    };

    protected override string RemedyInWords => "A salt of calcium or potassium after the heat, as much as is missing.";

    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
        => Quantity == LimitedQuantity.Calcium ? GelIons.AsCalcium(context.Mix, MixLines(context)) : base.Measure(context, agent);

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => limit.Range.Value.Min is not null && base.Concerns(context, agent, limit) && Quantity switch
        {
            LimitedQuantity.Potassium or LimitedQuantity.Cations => context.Mix.Casein.IsEmpty,
            // Acid sets low-acyl gellan and low methoxyl pectin as well.
            _ => agent.Line.Ingredient.IsAlginate() || !(context.Mix.Ph?.Value <= AcidSetsPh),
        };

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        Formula formula = context.Formula;
        (double target, Citation why) = Quantity switch
        {
            LimitedQuantity.Calcium => (4, s_gellan),
            LimitedQuantity.Potassium => (30, s_kappa),
            _ => (agent.Profile.Limits.Where(l => l.Quantity == Quantity && l.Stage == LimitStage.Finished).Max(l => l.Range.Value.Min ?? 0), limit.Range.Citation),
        };
        Ingredient salt = Quantity switch
        {
            LimitedQuantity.Potassium => Pantry.PotassiumChloride,
            LimitedQuantity.CalciumPerGram => MixLines(context).FirstOrDefault(GelIons.IsCalciumSalt)?.Ingredient ?? Pantry.CalciumLactate,
            _ => Pantry.CalciumChloride,
        };
        return AddedAmount.Find(formula, MostSaltPercent, p => Amounts.Add(formula, salt, p, RemedyPhases.AfterHeat), Reached, target) is { } change
            ? ValueList<Remedy>.Own([new Remedy(
                "add-gelling-ion", GelIons.IsSlowCalcium(salt) || !agent.IsHeated ? $"Take {Phrases.InSentence(salt.Name)}: {AddedAmount.Stated(change)}."
                    : $"Stir in {Phrases.InSentence(salt.Name)}, dissolved in a little water, while the mix is still hot: {AddedAmount.Stated(change)}.",
                $"The mix then has {Numbers.Significant(target, 2)} {value.Unit}.", change, ValueList<Citation>.Own([why]))])
            : default;

        double? Reached(ReviewContext changed) => AddedAmount.Same(changed, agent) is { } same ? Measure(changed, same)?.Value : null;
    }
}

/// <summary>Too many of the ions that set a gel.</summary>
internal sealed class TooManyIonsRule(string id, LimitedQuantity quantity, string name) : IonsOfTheGelRule(id, quantity, name)
{
    protected override string Trigger => Quantity switch
    {
        LimitedQuantity.CalciumPerGram => "Low methoxyl pectin, or alginate that is set from inside, has more calcium than it takes up.",
        LimitedQuantity.Potassium => "Kappa carrageenan has more potassium than makes it strong.",
        _ => "Low-acyl gellan has so much calcium that it turns grainy.",
    };

    protected override string RemedyInWords => "Less of the salt that brings it.";

    protected override string Need(AgentInMix agent) => "the calcium of the mix that casein does not hold";

    /// <summary>In milk the calcium that counts is not known.</summary>
    protected override Reckoned? Measure(ReviewContext context, AgentInMix agent)
    {
        if (Quantity != LimitedQuantity.Potassium && !context.Mix.Casein.IsEmpty)
        {
            return null;
        }

        Reckoned? value = base.Measure(context, agent);
        if (value is { Without.IsEmpty: false })
        {
            context.Needs(Id, $"the minerals of {value.Without}", agent.Line.Label);
        }

        return value;
    }

    protected override bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit)
        => limit.Range.Value.Max is not null && base.Concerns(context, agent, limit);

    protected override ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value)
    {
        if (MixLines(context).Where(IsSource).OrderByDescending(Brought).FirstOrDefault() is not { } salt)
        {
            return default;
        }

        double now = context.Formula.Proportions.PercentOfContinuousMix(salt);
        double excess = (value.Value - limit.Range.Value.Max!.Value * 0.99) / value.Value * Total();
        double wanted = now * (1 - excess / Brought(salt));
        if (!(wanted > 0))
        {
            return default;
        }

        Dose dose = Amounts.ForPercentOfMix(context.Formula, salt, wanted);
        return ValueList<Remedy>.Own([new Remedy(
            "less-salt", $"Take less {Phrases.InSentence(salt)}: {dose}.", $"The mix then has {Numbers.Significant(limit.Range.Value.Max.Value, 3)} {value.Unit}.",
            new DoseChange(salt.Label, dose), ValueList<Citation>.Own([limit.Range.Citation]))]);

        bool IsSource(FormulaLine line) => line is { IsBase: false, Ingredient.Category: "salt" } && Brought(line) > 0;

        double Brought(FormulaLine line) => context.Formula.Proportions.PercentOfContinuousMix(line) / 100 * (line.Ingredient.Composition?.Value is { } c ? Milligrams(c) : 0);

        double Total() => MixLines(context).Sum(Brought);

        double Milligrams(Composition c) => (Quantity == LimitedQuantity.Potassium ? c.PotassiumMg : c.CalciumMg) ?? 0;
    }
}
