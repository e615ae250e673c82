namespace Hydrocolloid.Formulation;

/// <summary>What kind of work a method is, where the formula alone does not say.</summary>
public enum MethodPattern
{
    /// <summary>As the formula says: a fluid gel if that is its texture, alginate without calcium into a calcium bath, all else cast or spooned.</summary>
    FromFormula,

    /// <summary>Set, then sheared.</summary>
    FluidGel,

    /// <summary>Alginate dropped into a calcium bath.</summary>
    DirectBath,

    /// <summary>A liquid with calcium dropped into an alginate bath.</summary>
    ReverseBath,

    /// <summary>Whipped, or from a siphon.</summary>
    Foam,

    /// <summary>A liquid cleared by draining it from a weak gel: what drains is the product.</summary>
    Clarify,
}
