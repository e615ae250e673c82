namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Rules about storage: drying, freezing and thawing.</summary>
internal static class StorageRules
{
    public static IDescribedRule[] All => [new DryingRule(), new FreezingRule()];

    /// <summary>What the catalogue says of all hydrocolloids that are sensitive to something.</summary>
    public static ValueList<Cited<string>> Known(SensitiveTo what) => ValueList<Cited<string>>.From(
        from ingredient in Catalogue.BuiltIn.Hydrocolloids
        let sensitivity = ingredient.Profile!.SensitivityTo(what)
        where sensitivity is not null
        select new Cited<string>($"{ingredient.Name}: {sensitivity.Consequence.Value} ({Words.Of(sensitivity.Harm.ToSeverity())})", sensitivity.Consequence.Citation));

    public static (AgentInMix InMix, AgentSensitivity Sensitivity)[] Sensitive(ReviewContext context, SensitiveTo what) =>
    [
        .. from agent in context.Agents
           let sensitivity = agent.Profile.SensitivityTo(what)
           where sensitivity is not null && sensitivity.Harm != Harm.None
           select (agent, sensitivity),
    ];
}

/// <summary>A gel that is stored uncovered.</summary>
internal sealed class DryingRule : IDescribedRule
{
    public string Id => "drying-uncovered";

    public RuleCard Card => new("storage", "A gel is stored uncovered: a caution.", "A cover.", StorageRules.Known(SensitiveTo.Drying));

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        ServicePlan service = context.Service;
        if (service.Covered == true || service.StoredSeconds is not > 0 || StorageRules.Sensitive(context, SensitiveTo.Drying) is not { Length: > 0 } sensitive)
        {
            yield break;
        }

        var lines = ValueList<string>.From(sensitive.Select(s => s.InMix.Line.Label));
        if (service.Covered is null)
        {
            context.Needs(Id, "whether it is stored covered", [.. lines]);
            yield break;
        }

        (AgentInMix agent, AgentSensitivity worst) = sensitive.OrderByDescending(s => s.Sensitivity.Harm).First();
        double hours = service.StoredSeconds.Value / 3600;
        yield return new Finding(
            Id, worst.Harm.ToSeverity(), $"It is stored uncovered for {new DurationRange(NumberRange.Single(service.StoredSeconds.Value))}. {agent.Name}: {worst.Consequence.Value}", lines,
            ValueList<Evidence>.Own([new Evidence("time stored uncovered", hours, "h", new NumberRange(null, 0))]),
            ValueList<Citation>.Own([worst.Consequence.Citation]),
            ValueList<Remedy>.Own([new Remedy(
                "cover", "Cover it, on the surface or airtight.", "The water stays in the gel.",
                new ServiceChange(service with { Covered = true }), ValueList<Citation>.Own([worst.Consequence.Citation]))]));
    }
}

/// <summary>A gel that is frozen and thawed.</summary>
internal sealed class FreezingRule : IDescribedRule
{
    public string Id => "freezing-and-thawing";

    public RuleCard Card => new(
        "storage",
        "A gel that does not stand freezing is frozen and thawed: a conflict or a caution; information if the gum that helps is in the mix.",
        "Chilling in place of freezing; the gum that helps, at its dose; another agent.", StorageRules.Known(SensitiveTo.Freezing));

    public IEnumerable<Finding> Check(ReviewContext context)
        => context.Service.Frozen != true ? []
            : StorageRules.Sensitive(context, SensitiveTo.Freezing).Select(s => Report(context, s.InMix, s.Sensitivity));

    private Finding Report(ReviewContext context, AgentInMix agent, AgentSensitivity sensitivity)
    {
        Helper? helper = Helper.Of(agent);
        double there = helper is null ? 0 : context.Agents.Where(a => a.Is(helper.Ingredient.Id)).Sum(a => a.Percent);
        bool isHelped = there >= helper?.Percent;
        ValueList<Citation> citation = ValueList<Citation>.Own([sensitivity.Consequence.Citation]);
        return new Finding(
            Id, isHelped ? Severity.Information : sensitivity.Harm.ToSeverity(),
            $"It is to be frozen and thawed. {agent.Name}: {sensitivity.Consequence.Value}{(isHelped ? $" Here {helper!.Ingredient.Name} lessens that." : "")}",
            ValueList<string>.Own([agent.Line.Label]),
            helper is null ? default : ValueList<Evidence>.Own([new Evidence($"{helper.Ingredient.Name} beside {agent.Name}", there, "% by weight of the continuous mix", new NumberRange(helper.Percent, null))]),
            helper is null ? citation : ValueList<Citation>.Own([sensitivity.Consequence.Citation, helper.Citation]),
            isHelped ? default : Remedies(context, agent, helper, there, citation));
    }

    private static ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, Helper? helper, double there, ValueList<Citation> citation)
    {
        var remedies = new List<Remedy>
        {
            new("chill-not-freeze", "Chill it, do not freeze it.", "It keeps its water.", new ServiceChange(context.Service with { Frozen = false }), citation),
        };
        if (helper is not null)
        {
            remedies.Add(new Remedy(
                "gum-against-thaw-water", $"Add {helper.Ingredient.Name}, {helper.Amount}.", "Less water comes off on thawing.",
                Amounts.Add(context.Formula, helper.Ingredient, helper.Percent - there, agent.Line.IsBase ? RemedyPhases.AfterHeat : agent.Line.Phase),
                ValueList<Citation>.Own([helper.Citation])));
        }

        if (context.Service.Clear != true
            && AgentSwap.For(context, agent.Line, "Its gel stands freezing and thawing; it is softer and more elastic.", Hydrocolloids.GellanHighAcyl) is { } swap)
        {
            remedies.Add(swap);
        }

        return ValueList<Remedy>.Own([.. remedies]);
    }

    /// <summary>A gum that lessens what thawing does, and how much of it.</summary>
    private sealed record Helper(Ingredient Ingredient, double Percent, string Amount, Citation Citation)
    {
        // Kappa: 7 parts to 3 of locust bean gum, the leanest of the ratios 7:3 to 6:4. Tapioca: 0.5 % xanthan, the better of 0.25 and 0.5 %.
        public static Helper? Of(AgentInMix agent)
            => agent.Is("carrageenan-kappa") ? new Helper(
                    Hydrocolloids.LocustBeanGum, agent.Percent * 3 / 7, "3 parts to 7 of the carrageenan", Catalogues.BuiltInCatalogue.Cite("jhej-kappa-lbg-1990", "ratio 7:3 to 6:4"))
                : agent.Is("starch-tapioca") ? new Helper(Hydrocolloids.XanthanGum, 0.5, "0.5 % of the mix", Catalogues.BuiltInCatalogue.Cite("tapioca-ft"))
                : null;
    }
}
