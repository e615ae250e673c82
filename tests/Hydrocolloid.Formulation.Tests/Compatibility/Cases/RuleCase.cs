namespace Hydrocolloid.Formulation.Tests.Compatibility.Cases;

/// <summary>What a rule must do: fire on one formula, keep silent on one just inside its limit, and on one that lacks what it needs.</summary>
/// <param name="Name">What the case is about, with the source of the limit where it is not the catalogue's.</param>
/// <param name="RuleId">The id of the rule.</param>
/// <param name="Severity">How serious the finding is.</param>
/// <param name="Triggers">Makes a formula that triggers it.</param>
/// <param name="Inside">Makes one just inside the limit, which does not.</param>
/// <param name="Missing">Makes one without the data that the rule needs; null if it needs none beyond the lines.</param>
internal sealed record RuleCase(string Name, string RuleId, Severity Severity, Func<Formula> Triggers, Func<Formula> Inside, Func<Formula>? Missing = null)
{
    public override string ToString() => $"{RuleId}: {Name}";
}
