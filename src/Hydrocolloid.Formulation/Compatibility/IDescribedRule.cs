namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>A rule that can say what it does.</summary>
public interface IDescribedRule : ICompatibilityRule
{
    /// <summary>What the rule does.</summary>
    RuleCard Card { get; }
}
