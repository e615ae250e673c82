using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>Holds one quantity of the mix against the limits that the catalogue states for each hydrocolloid.</summary>
internal abstract class LimitRule(string id, string family, LimitedQuantity quantity, LimitStage stage) : IDescribedRule
{
    public string Id => id;

    public RuleCard Card => new(family, Trigger, RemedyInWords, LimitsOf(quantity, stage));

    protected abstract string Trigger { get; }

    protected virtual string? RemedyInWords => null;

    /// <summary>The quantity and its unit as people say it, such as <c>the pH of the mix</c>.</summary>
    protected abstract string QuantityName { get; }

    public IEnumerable<Finding> Check(ReviewContext context)
    {
        foreach (AgentInMix agent in context.Agents)
        {
            if (Worst(context, agent) is ({ } limit, { } value))
            {
                yield return new Finding(
                    Id, limit.Harm.ToSeverity(), Explain(agent, limit, value), Lines(context, agent),
                    ValueList<Evidence>.Own([new Evidence(QuantityName, value.Value, value.Unit, limit.Range.Value)]),
                    ValueList<Citation>.Own([limit.Range.Citation]), Remedies(context, agent, limit, value));
            }
        }
    }

    /// <summary>The value that counts for an agent; null if it is not known.</summary>
    protected abstract Reckoned? Measure(ReviewContext context, AgentInMix agent);

    /// <summary>What would be needed to know it.</summary>
    protected virtual string Need(AgentInMix agent) => QuantityName;

    /// <summary>Whether a limit concerns this formula at all, beyond the numbers.</summary>
    protected virtual bool Concerns(ReviewContext context, AgentInMix agent, AgentLimit limit) => true;

    protected virtual ValueList<string> Lines(ReviewContext context, AgentInMix agent) => ValueList<string>.Own([agent.Line.Label]);

    protected virtual ValueList<Remedy> Remedies(ReviewContext context, AgentInMix agent, AgentLimit limit, Reckoned value) => default;

    protected virtual string Explain(AgentInMix agent, AgentLimit limit, Reckoned value)
        => $"{agent.Name}: {QuantityName} is {Numbers.Significant(value.Value, 3)}{UnitText(value.Unit)}, but should be {RangeInWords(limit.Range.Value)}{UnitText(value.Unit)}. {limit.Consequence}";

    private static string UnitText(string unit) => unit is "" or "pH" ? "" : " " + unit;

    private static string RangeInWords(NumberRange range) => range switch
    {
        { Min: { } min, Max: null } => $"at least {Numbers.Significant(min, 4)}",
        { Min: null, Max: { } max } => $"at most {Numbers.Significant(max, 4)}",
        _ => range.ToString(),
    };

    private static ValueList<Cited<string>> LimitsOf(LimitedQuantity quantity, LimitStage stage) => ValueList<Cited<string>>.From(
        from ingredient in Catalogue.BuiltIn.Hydrocolloids
        from limit in ingredient.Profile!.Limits
        where limit.Quantity == quantity && limit.Stage == stage
        select new Cited<string>($"{ingredient.Name}: {RangeInWords(limit.Range.Value)} ({Words.Of(limit.Harm.ToSeverity())})", limit.Range.Citation));

    private (AgentLimit? Limit, Reckoned? Value) Worst(ReviewContext context, AgentInMix agent)
    {
        AgentLimit? worst = null;
        Reckoned? measured = null;
        foreach (AgentLimit limit in agent.Profile.Limits.Span)
        {
            if (limit.Quantity != quantity || limit.Stage != stage || !Concerns(context, agent, limit))
            {
                continue;
            }

            measured ??= Measure(context, agent);
            NumberRange range = limit.Range.Value;
            // What is not counted can only add to an amount, so it cannot save one that is too high, but may fill one that is too low.
            bool unsure = measured is not null && measured.Value < range.Min
                // A hydrocolloid of which no composition is stated brings next to nothing of what is limited.
                && measured.Without.Any(l => context.Formula.FindLine(l)?.Ingredient.Profile is null);
            if (measured is null || unsure)
            {
                context.Needs(Id, Need(agent), agent.Line.Label);
            }
            else if (!range.Contains(measured.Value) && (worst is null || limit.Harm > worst.Harm))
            {
                worst = limit;
            }
        }

        return (worst, measured);
    }
}
