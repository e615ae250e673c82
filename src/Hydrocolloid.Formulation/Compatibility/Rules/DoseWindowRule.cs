namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>
/// A dose outside the working window of the texture aimed at; where no texture is stated, outside all working windows.
/// A thickener beside a gelling agent is held against its own windows.
/// </summary>
internal sealed class DoseWindowRule : ICompatibilityRule
{
    public string Id => "dose-outside-window";

    public IEnumerable<Finding> Check(Formula formula)
    {
        foreach (AgentDose agent in AgentDose.All(formula))
        {
            if (agent.Profile.DoseWindows.IsEmpty || agent.Slip() is not null || agent.IsUnderMinimum)
            {
                continue;
            }

            Texture? aim = formula.Service.Texture;
            if (aim is { } texture && agent.Profile.Role == HydrocolloidRole.GellingAgent)
            {
                if (agent.ChosenWindow is not { } window)
                {
                    yield return new Finding(
                        Id, Severity.Information, $"{agent.Stated()}; no working dose for {Words.Of(texture)} is known, so the dose was not checked.",
                        ValueList<string>.Own([agent.Line.Label]));
                }
                else if (!AgentDose.IsWithin(window.Percent.Value, agent.Percent))
                {
                    yield return Outside(agent, window, $"the window for {Words.Of(texture)} is {window.Percent.Value} %");
                }
            }
            else if (!agent.Profile.DoseWindows.Any(w => AgentDose.IsWithin(w.Percent.Value, agent.Percent)))
            {
                DoseWindow nearest = agent.Profile.DoseWindows.OrderBy(w => Distance(w.Percent.Value, agent.Percent)).First();
                yield return Outside(agent, nearest, $"the nearest window ({Words.Of(nearest.Texture)}) is {nearest.Percent.Value} %");
            }
        }
    }

    private static double Distance(NumberRange range, double value)
        => Math.Max((range.Min ?? double.NegativeInfinity) - value, value - (range.Max ?? double.PositiveInfinity));

    private Finding Outside(AgentDose agent, DoseWindow window, string what)
    {
        string consequence = agent.Percent < window.Percent.Value.Min ? "Expect it softer than meant." : "Expect it firmer or thicker than meant.";
        return new Finding(
            Id,
            Severity.Caution,
            $"{agent.Stated()}; {what}. {consequence}",
            ValueList<string>.Own([agent.Line.Label]),
            ValueList<Evidence>.Own([agent.Evidence(window.Percent.Value)]),
            ValueList<Citation>.Own([window.Percent.Citation]));
    }
}
