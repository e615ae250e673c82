using System.Diagnostics;
using Hydrocolloid.Formulation.Books;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>What a making plan costs: a cost sheet a batch, each part at the cost of its own batch. Immutable, safe to share between threads.</summary>
[DebuggerDisplay("{Whole}")]
public sealed class PlanCost
{
    internal PlanCost(ValueList<string> ids, ValueList<CostSheet> sheets)
    {
        Ids = ids;
        Sheets = sheets;
    }

    /// <summary>The ids of the batches, parts first.</summary>
    public ValueList<string> Ids { get; }

    /// <summary>The cost sheets in the order of <see cref="Ids"/>; the prices of a later one hold the cost of the parts before.</summary>
    public ValueList<CostSheet> Sheets { get; }

    /// <summary>The cost sheet of what was asked for.</summary>
    public CostSheet Whole => Sheets[Sheets.Count - 1];

    /// <summary>Every price that is missing, in the parts too, once; empty if none is.</summary>
    public ValueList<CostingProblem> Missing => ValueList<CostingProblem>.From(Sheets.SelectMany(s => s.Missing).Where(p => !Ids.Contains(p.Subject ?? "")).Distinct());

    /// <summary>The ids and what each batch costs.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Ids.Select((id, i) => $"{id}: {(object?)Sheets[i].Total ?? "not known"}"));
}
