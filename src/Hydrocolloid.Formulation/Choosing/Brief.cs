using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What is to be gelled, and what the gel must be: <see cref="Choose"/> answers with what. Immutable, equal by content.</summary>
public sealed record Brief
{
    private readonly Kitchen _kitchen = Kitchen.Plain;
    private readonly CriterionWeights _weights = CriterionWeights.Default;
    private readonly RuleSet _rules = RuleSet.Standard;
    private readonly ValueList<Ingredient> _storeRoom;

    /// <summary>A liquid with what is in it, such as sugar.</summary>
    /// <param name="liquid">The formula without what gels it: its base, its additions and its process.</param>
    /// <param name="service">How it is to be served: the texture must be stated; temperature, diets, allergens, market, clarity, freezing count as far as they are.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The texture is not stated or is not that of a gel, or the liquid holds gelling agents; the message has all of it.</exception>
    public Brief(Formula liquid, ServicePlan service)
    {
        Liquid = Guard.NotNull(liquid);
        Service = Guard.NotNull(service);
        var faults = new List<string>();
        if (service.Texture is not (Texture.FluidGel or Texture.Soft or Texture.Firm or Texture.VeryFirm))
        {
            faults.Add($"The service plan must state the texture of a gel: {Texture.FluidGel}, {Texture.Soft}, {Texture.Firm} or {Texture.VeryFirm}, but has {(service.Texture is { } t ? t.ToString() : "none")}.");
        }

        string[] gelled = [.. liquid.Lines.Where(l => l is { IsContinuous: true, Ingredient.Profile.Role: HydrocolloidRole.GellingAgent }).Select(l => l.Label)];
        if (gelled.Length > 0)
        {
            faults.Add($"The liquid is gelled already, with {string.Join(", ", gelled)}: take that out, or substitute it.");
        }

        if (faults.Count > 0)
        {
            throw new ArgumentException(string.Join(" ", faults), faults.Count == 1 && gelled.Length > 0 ? nameof(liquid) : nameof(service));
        }
    }

    /// <summary>One ingredient as the liquid.</summary>
    /// <param name="liquid">The ingredient.</param>
    /// <param name="service">How it is to be served; the texture must be stated.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The texture is not stated or is not that of a gel, or the liquid is a gelling agent; the message has all of it.</exception>
    public Brief(Ingredient liquid, ServicePlan service)
        : this(Formula.Named(Guard.NotNull(liquid).Name).Base(b => b.Share(liquid, 100)).Build(), service)
    {
    }

    /// <summary>The liquid.</summary>
    public Formula Liquid { get; }

    /// <summary>How it is to be served.</summary>
    public ServicePlan Service { get; }

    /// <summary>The texture.</summary>
    public Texture Texture => Service.Texture!.Value;

    /// <summary>Whether it should melt in the mouth (true), must not (false), or either way (null).</summary>
    public bool? MeltsInMouth { get; init; }

    /// <summary>The kitchen: what it has to heat and shear with, and how high it stands.</summary>
    /// <exception cref="ArgumentNullException">It is null.</exception>
    public Kitchen Kitchen
    {
        get => _kitchen;
        init => _kitchen = Guard.NotNull(value, nameof(Kitchen));
    }

    /// <summary>The agents and gums at hand, with their grades; empty for all of the built-in catalogue. Salts and acids are taken to be there.</summary>
    /// <exception cref="ArgumentException">One is not a hydrocolloid, or an id stands twice.</exception>
    public ValueList<Ingredient> StoreRoom
    {
        get => _storeRoom;
        init
        {
            string[] faults =
            [
                .. value.Where(i => i.Profile is null).Select(i => $"'{i.Id}' is not a hydrocolloid."),
                .. value.GroupBy(i => i.Id, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"'{g.Key}' stands twice."),
            ];
            _storeRoom = faults.Length == 0 ? value : throw new ArgumentException(string.Join(" ", faults), nameof(value));
        }
    }

    /// <summary>What each criterion counts.</summary>
    /// <exception cref="ArgumentNullException">It is null.</exception>
    public CriterionWeights Weights
    {
        get => _weights;
        init => _weights = Guard.NotNull(value, nameof(Weights));
    }

    /// <summary>The rules that a proposal must pass without a conflict.</summary>
    /// <exception cref="ArgumentNullException">It is null.</exception>
    public RuleSet Rules
    {
        get => _rules;
        init => _rules = Guard.NotNull(value, nameof(Rules));
    }

    /// <summary>
    /// Tries every agent and known blend: doses it for the texture in this liquid, puts in what it needs, reviews the formula and plans its method. What comes out
    /// without a conflict is a proposal, the rest is left out with its reasons. The order is by score, then by id: always the same for the same brief.
    /// </summary>
    /// <returns>The proposals, the best first, and what was left out.</returns>
    public Choice Choose() => new Chooser(this).Choose();

    /// <summary>The liquid and the texture.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Placing.InWords(Texture)} of {Phrases.InSentence(Liquid.Name)}";
}
