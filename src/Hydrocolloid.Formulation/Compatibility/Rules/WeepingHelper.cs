using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>What keeps an agent from weeping, with the amount that is there and the amount it takes.</summary>
internal sealed class WeepingHelper(ReviewContext context, AgentInMix agent, Synergy pair)
{
    // More than this, as the 60 % of sugar at which agar no longer weeps, would make another dish of it.
    private const double MostAddedPercent = 20;

    public static IEnumerable<WeepingHelper> Of(ReviewContext context, AgentInMix agent) => Synergies.All
        .Where(s => s.IsFirst(agent.Line.Ingredient) && (s.AgainstWeepingPercent is not null || s.Has(SynergyEffect.LessSyneresis)))
        .Select(s => new WeepingHelper(context, agent, s));

    public double Needed { get; } = pair.AgainstWeepingPercent?.Value.Min
        ?? (pair.FirstPercent?.Value.Max is { } most ? agent.Percent * (100 - most) / most : 0);

    public bool IsEnough => Held > 0 && Held * 1.05 >= Needed;

    /// <summary>Where the amount, or else the effect, comes from.</summary>
    public Citation Citation => (pair.AgainstWeepingPercent ?? pair.FirstPercent)?.Citation ?? pair.Effects.Citation;

    public Evidence Evidence => new($"{Phrases.InSentence(Ingredient.Name)} in the continuous mix", Held, "% by weight of it", new NumberRange(Needed, null));

    public Ingredient Ingredient => Catalogue.BuiltIn.Get(pair.Second[0]);

    /// <summary>% by weight of the mix; of sugar all that is in it.</summary>
    public double Held => pair.Second.Contains(Pantry.Sucrose.Id) ? context.Mix.Sugars.Value
        : context.Formula.Lines.Where(l => l.IsContinuous && l != agent.Line && pair.IsOf(agent.Line.Ingredient, l.Ingredient)).Sum(context.Formula.Proportions.PercentOfContinuousMix);

    public Remedy? ToRemedy()
    {
        // What is there already is thinned by what is added.
        double more = (Needed - Held) / (1 - Held / 100);
        if (pair.Second.Count != 1 || context.Formula.FindLine(pair.Second[0]) is { IsBase: true } || Needed <= 0 || more > MostAddedPercent || WouldCloud())
        {
            return null;
        }

        Cited<NumberRange> figure = pair.AgainstWeepingPercent ?? pair.FirstPercent!;
        return new Remedy(
            "add-" + pair.Second[0], $"Add {Phrases.InSentence(Ingredient.Name)}: {Numbers.Significant(more, 3)} % of the continuous mix.",
            "It weeps less." + (figure.Note is { } note ? $" ({char.ToUpperInvariant(note[0])}{note.Substring(1)}.)" : ""),
            Amounts.Add(context.Formula, Ingredient, more, agent.Line.Phase), ValueList<Citation>.Own([figure.Citation]));
    }

    /// <summary>Whether it is a gum that clouds with gelatin at this pH, or may: then it is no help.</summary>
    private bool WouldCloud() => agent.Profile.Limits.Any(l => l.Stage == LimitStage.BesideAnionicGum
        && (context.Mix.Ph is not { } ph || !l.Range.Value.Contains(ph.Value))
        && Synergies.Between(agent.Line.Ingredient, Ingredient).Any(s => s.Has(SynergyEffect.Precipitation)));
}
