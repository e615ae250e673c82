namespace Hydrocolloid.Formulation.Costing;

/// <summary>What a batch pays for where only whole packs are sold.</summary>
public enum PackCharge
{
    /// <summary>The part that goes into the pot; the rest of the pack goes into other batches.</summary>
    UsedPart,

    /// <summary>Every pack that is opened, the ingredient's lines taken together.</summary>
    WholePacks,
}
