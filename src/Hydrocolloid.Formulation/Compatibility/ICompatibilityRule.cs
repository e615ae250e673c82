namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>Looks at a formula and reports what it notices. Stateless and safe to call from many threads.</summary>
public interface ICompatibilityRule
{
    /// <summary>Stable kebab-case id, also that of its findings.</summary>
    string Id { get; }

    /// <summary>Looks at a formula.</summary>
    /// <param name="context">The formula, with what has been worked out of it.</param>
    /// <returns>What was noticed; empty if nothing was.</returns>
    IEnumerable<Finding> Check(ReviewContext context);
}
