using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>A dose that no figure supports, but that a working window would hold if its decimal sign were moved.</summary>
internal sealed class DecimalSlipRule : ICompatibilityRule
{
    public string Id => "decimal-slip";

    public IEnumerable<Finding> Check(Formula formula)
    {
        foreach (AgentDose agent in AgentDose.All(formula))
        {
            if (agent.SlipReading() is { } reading)
            {
                yield return Report(agent, reading.Factor, reading.Window);
            }
        }
    }

    private Finding Report(AgentDose agent, double factor, DoseWindow window)
    {
        FormulaLine line = agent.Line;
        string meant = Numbers.Significant(line.Dose.PercentByMass * factor, 6);
        // Too little does not gel, and a hundred times too much is no dose at all; in between it is a doubt.
        bool fails = agent.IsUnderMinimum || factor < 0.05;
        return new Finding(
            Id,
            fails ? Severity.Conflict : Severity.Caution,
            $"{agent.Stated()}; no published dose comes near it. Read as {meant} % of {line.Dose.Reference} it would be "
            + $"{Numbers.Significant(agent.Percent * factor, 3)} %, in the window for {Words.Of(window.Texture)} ({window.Percent.Value} %): "
            + "a slip of the decimal sign is likely.",
            ValueList<string>.Own([line.Label]),
            ValueList<Evidence>.Own(
            [
                agent.Evidence(window.Percent.Value),
                new Evidence($"{agent.Name} with the decimal sign moved", agent.Percent * factor, "% by weight of the continuous mix", window.Percent.Value),
            ]),
            ValueList<Citation>.Own([window.Percent.Citation]));
    }
}
