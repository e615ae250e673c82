using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>A gelling agent below the lowest dose that gels.</summary>
internal sealed class GellingMinimumRule : ICompatibilityRule
{
    public string Id => "dose-under-gelling-minimum";

    public IEnumerable<Finding> Check(Formula formula)
    {
        AgentDose[] agents = [.. AgentDose.All(formula)];
        foreach (AgentDose agent in agents.Where(a => a.IsUnderMinimum && a.Slip() is null))
        {
            Cited<NumberRange> minimum = agent.Profile.MinimumGellingPercent!;
            bool anotherGels = agents.Any(a => a != agent && a.ReachesMinimum);
            string outcome = anotherGels ? "It will not gel by itself; another agent of the formula carries the gel." : "It will not gel.";
            yield return new Finding(
                Id,
                anotherGels ? Severity.Information : Severity.Conflict,
                $"{agent.Stated()}; the lowest dose that gels is {Numbers.Significant(minimum.Value.Min!.Value, 4)} %. {outcome}",
                ValueList<string>.Own([agent.Line.Label]),
                ValueList<Evidence>.Own([agent.Evidence(new NumberRange(minimum.Value.Min, null))]),
                ValueList<Citation>.Own([minimum.Citation]));
        }
    }
}
