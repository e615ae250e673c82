using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>A dose outside every figure for it, but that a working window would hold if its decimal sign were moved.</summary>
internal sealed class DecimalSlipRule : ICompatibilityRule
{
    public string Id => "decimal-slip";

    public IEnumerable<Finding> Check(Formula formula)
    {
        foreach (AgentDose agent in AgentDose.All(formula))
        {
            if (agent.Slip() is { } reading)
            {
                yield return Report(agent, reading);
            }
        }
    }

    private Finding Report(AgentDose agent, SlipReading reading)
    {
        DoseWindow window = reading.Window;
        FormulaLine line = agent.Line;
        string meant = Numbers.Significant(line.Dose.PercentByMass * reading.Factor, 6);
        // Too little does not gel, and a hundred times too much is no dose at all; in between it is a doubt.
        bool fails = agent.IsUnderMinimum || reading.Factor < 0.05;
        return new Finding(
            Id,
            fails ? Severity.Conflict : Severity.Caution,
            $"{agent.Stated()}; that is outside every published dose{(agent.ChosenWindow == window ? " for this texture" : "")}. Read as {meant} % of {line.Dose.Reference} it would be "
            + $"{Numbers.Significant(reading.Percent, 3)} %, in the window for {Words.Of(window.Texture)} ({window.Percent.Value} %): "
            + "a slip of the decimal sign is likely.",
            ValueList<string>.Own([line.Label]),
            ValueList<Evidence>.Own(
            [
                agent.Evidence(window.Percent.Value),
                new Evidence($"{agent.Name} with the decimal sign moved", reading.Percent, "% by weight of the continuous mix", window.Percent.Value),
            ]),
            ValueList<Citation>.Own([window.Percent.Citation]));
    }
}
