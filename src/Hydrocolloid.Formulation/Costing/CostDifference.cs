namespace Hydrocolloid.Formulation.Costing;

/// <summary>What changes from one cost sheet to another; nothing is rounded. Immutable, equal by content.</summary>
public sealed record CostDifference
{
    internal CostDifference(CostSheet before, CostSheet after)
    {
        Before = before;
        After = after;
        _ = before.Known + after.Known; // refuses two currencies even where a total is not known
    }

    /// <summary>The first sheet.</summary>
    public CostSheet Before { get; }

    /// <summary>The second sheet.</summary>
    public CostSheet After { get; }

    /// <summary>How much more the batch costs; null if either total is not known.</summary>
    public Money? Total => Minus(After.Total, Before.Total);

    /// <summary>How much more 1 kg of finished gel costs; null if either is not known.</summary>
    public Money? PerKilogram => Minus(After.PerKilogram, Before.PerKilogram);

    /// <summary>How much more a portion costs; null if either is not known.</summary>
    public Money? PerPortion => Minus(After.PerPortion, Before.PerPortion);

    /// <summary>How much more 1 kg costs, % of the first; null if either is not known, or the first is nothing.</summary>
    public decimal? Percent => PerKilogram is { } change && Before.PerKilogram is { Amount: > 0 } before ? change.Amount / before.Amount * 100 : null;

    private static Money? Minus(Money? after, Money? before) => after is null || before is null ? null : after - before;
}
