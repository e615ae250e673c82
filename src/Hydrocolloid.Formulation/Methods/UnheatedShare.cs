using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;

namespace Hydrocolloid.Formulation;

/// <summary>The largest share of the liquid base that can be kept unheated. Immutable, equal by content.</summary>
/// <param name="Limit">What decides.</param>
/// <param name="PercentOfLiquid">The share, % by weight of the liquid parts of the base; 0–100.</param>
/// <param name="Agent">The label of the hydrocolloid that decides; null if none does.</param>
/// <param name="AgentPercent">The concentration of that hydrocolloid in what is heated, with this share kept back: % by weight of it; null if none decides.</param>
/// <param name="Heat">The balance of heat; null if nothing sets on cooling, or if a composition is not known.</param>
/// <param name="Assumptions">What was assumed because it was not stated.</param>
/// <param name="Citations">Where the figures come from.</param>
public sealed record UnheatedShare(
    UnheatedLimit Limit, double PercentOfLiquid, string? Agent, double? AgentPercent, ColdShare? Heat, ValueList<string> Assumptions, ValueList<Citation> Citations)
{
    /// <summary>The answer in one sentence.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString()
    {
        string share = Numbers.Significant(PercentOfLiquid, 3) + " % of the liquid base";
        return Limit switch
        {
            UnheatedLimit.NothingIsHeated => "Nothing has to be heated.",
            UnheatedLimit.Setting => $"Up to {share} can be kept unheated; with more, the mix comes under {Numbers.Significant(Heat!.Target.DegreesCelsius, 4)} °C.",
            UnheatedLimit.Concentration => $"Up to {share} can be kept unheated; with more, {Agent} passes {Numbers.Significant(AgentPercent!.Value, 3)} % of what is heated, the highest figure known for it.",
            _ => "Nothing can be kept unheated: even all hot, the mix is too cold.",
        };
    }
}
