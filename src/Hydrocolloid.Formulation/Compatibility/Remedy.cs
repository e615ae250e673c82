using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A change to the formula that helps against a finding. Immutable, equal by content.</summary>
public sealed record Remedy
{
    /// <summary>Offers a change.</summary>
    /// <param name="id">Stable kebab-case id.</param>
    /// <param name="advice">What to do, in plain words.</param>
    /// <param name="effect">What it is expected to do.</param>
    /// <param name="change">The change to the formula.</param>
    /// <param name="citations">Where the advice and its amounts come from.</param>
    /// <exception cref="ArgumentException">The id is not kebab-case, or a text is blank.</exception>
    public Remedy(string id, string advice, string effect, IFormulaChange change, ValueList<Citation> citations = default)
    {
        Id = Ids.Check(id, nameof(id));
        Advice = Guard.NotBlank(advice);
        Effect = Guard.NotBlank(effect);
        Change = Guard.NotNull(change);
        Citations = citations;
    }

    /// <summary>Stable kebab-case id.</summary>
    public string Id { get; }

    /// <summary>What to do, in plain words.</summary>
    public string Advice { get; }

    /// <summary>What it is expected to do.</summary>
    public string Effect { get; }

    /// <summary>The change to the formula.</summary>
    public IFormulaChange Change { get; }

    /// <summary>Where the advice and its amounts come from.</summary>
    public ValueList<Citation> Citations { get; }

    /// <summary>The formula with the change made.</summary>
    /// <param name="formula">The formula that the finding is about.</param>
    /// <returns>The new formula.</returns>
    /// <exception cref="ArgumentException">The change names a line or a phase that the formula does not have.</exception>
    /// <exception cref="FormulaException">The changed formula cannot be.</exception>
    public Formula Apply(Formula formula) => Change.ApplyTo(Guard.NotNull(formula));

    /// <summary>The id and the advice.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Id}: {Advice}";
}
