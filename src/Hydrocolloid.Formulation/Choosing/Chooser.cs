using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Answers a brief.</summary>
internal sealed class Chooser(Brief brief)
{
    private const string Phase = "gel";

    private readonly MethodOptions _options = new() { Kitchen = brief.Kitchen };
    private readonly Formula _liquid = brief.Liquid.WithService(brief.Service);

    public Choice Choose()
    {
        ValueList<Finding> ofLiquid = _liquid.Review(brief.Rules);
        ValueList<Finding> conflicts = ValueList<Finding>.From(ofLiquid.Where(f => f.Severity == Severity.Conflict));
        if (!conflicts.IsEmpty)
        {
            return new Choice(brief, conflicts, default, default);
        }

        bool isMostlyMilk = new ReviewContext(_liquid).IsMostlyMilk;
        var proposals = new List<Proposal>();
        var exclusions = new List<Exclusion>();
        foreach (GelSystem system in Candidates())
        {
            (Proposal? proposal, Obstacle[] reasons) = Try(system, isMostlyMilk, ofLiquid);
            if (proposal is null)
            {
                exclusions.Add(new Exclusion(system, ValueList<Obstacle>.From(reasons.Distinct())));
            }
            else
            {
                proposals.Add(proposal);
            }
        }

        return new Choice(
            brief, default,
            ValueList<Proposal>.From(proposals.OrderByDescending(p => Numbers.RoundHalfAway(p.Score, 6)).ThenBy(p => p.System.Id, StringComparer.Ordinal)),
            ValueList<Exclusion>.From(exclusions.OrderBy(e => e.System.Id, StringComparer.Ordinal)));
    }

    /// <summary>The agents and blends of the catalogue, those at hand as they are at hand, and the own ones at hand.</summary>
    private IEnumerable<GelSystem> Candidates()
    {
        Ingredient[] own = [.. brief.StoreRoom];
        Ingredient[] all = [.. own, .. Catalogue.BuiltIn.Hydrocolloids.Where(i => own.All(o => o.Id != i.Id))];
        return all.Where(i => i.Profile!.Role == HydrocolloidRole.GellingAgent).Select(GelSystem.Of)
            .Concat(from blend in GelSystem.KnownBlends
                    let parts = blend.Agents.Select(a => Array.Find(own, o => (o.BasedOn ?? o).Id == a.Id) ?? a).ToArray()
                    select GelSystem.Of(parts[0], parts[1]));
    }

    private (Proposal? Proposal, Obstacle[] Reasons) Try(GelSystem system, bool isMostlyMilk, ValueList<Finding> ofLiquid)
    {
        Ingredient[] missing = brief.StoreRoom.IsEmpty ? [] : [.. system.Agents.Where(a => brief.StoreRoom.All(i => i.Id != a.Id))];
        if (missing.Length > 0)
        {
            return (null, [new Obstacle("not-at-hand", $"{Phrases.And(missing.Select(m => m.Name))} is not in the store-room.", default)]);
        }

        Obstacle[] obstacles = [.. Placing.Obstacles(system, brief.Service, brief.Texture, isMostlyMilk)];
        string phase = _liquid.Phases.Any(p => p.Name == Phase) ? Phase + " (chosen)" : Phase;
        (Placing.Placed? placed, Obstacle? trouble) = Placing.Place(
            _liquid, system, brief.Texture, phase, _liquid.Phases.Count, DoseReference.Preceding, f => f, _options, brief.Rules, mayChangeTaste: false);
        if (placed is null)
        {
            return (null, obstacles.Any(o => o.Id == trouble!.Id) ? obstacles : [.. obstacles, trouble!]);
        }

        Obstacle[] reasons = [.. obstacles, .. placed.Findings.Where(f => f.Severity == Severity.Conflict).Select(Obstacle.Of), .. placed.Method.Conflicts.Select(Obstacle.Of)];
        return reasons.Length > 0 ? (null, reasons) : (new Proposal(system, placed, new Scoring(brief, system, placed, ofLiquid).Criteria()), []);
    }
}
