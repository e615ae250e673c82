using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>Hydrocolloids that share one heating: a temperature that all of them reach and the longest hold any of them needs.</summary>
internal sealed class HeatStage
{
    private HeatStage(List<Agent> agents) => Agents = agents;

    public List<Agent> Agents { get; }

    /// <summary>The temperature to reach; °C.</summary>
    public NumberRange Celsius => new(
        Agents.Max(a => a.NeedsCelsius),
        Agents.Min(a => a.Hydration.Window.Value.Celsius.Max ?? double.MaxValue) is var max && max == double.MaxValue ? null : max);

    /// <summary>How long; s. Up to the shortest upper limit, unless another agent needs longer.</summary>
    public NumberRange HoldSeconds
    {
        get
        {
            double? min = Agents.Max(a => a.Hydration.Hold.Value.Seconds.Min);
            double? max = Agents.Min(a => a.Hydration.Hold.Value.Seconds.Max);
            return new NumberRange(min, max < min ? null : max);
        }
    }

    /// <summary>The temperature that none of them may pass; °C.</summary>
    public double LimitCelsius => Agents.Min(a => a.LimitCelsius);

    /// <summary>Groups agents by rising temperature; neighbours whose windows meet share a stage.</summary>
    public static List<HeatStage> Group(IEnumerable<Agent> agents)
    {
        var stages = new List<HeatStage>();
        foreach (Agent agent in agents.OrderBy(a => a.NeedsCelsius).ThenBy(a => a.Line.Index))
        {
            if (stages.Count > 0 && stages[stages.Count - 1] is var last && (last.Celsius.Max is not { } max || agent.NeedsCelsius <= max))
            {
                last.Agents.Add(agent);
            }
            else
            {
                stages.Add(new HeatStage([agent]));
            }
        }

        return stages;
    }
}
