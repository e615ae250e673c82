namespace Hydrocolloid.Formulation.Costing;

/// <summary>Who gets the units that are left over when an amount is shared and each share is cut to whole units.</summary>
public enum MoneyRemainder
{
    /// <summary>The shares that lost the largest fraction of a unit; the earlier one if two lost the same.</summary>
    Largest,

    /// <summary>The first shares that are not zero, in their order.</summary>
    First,
}
