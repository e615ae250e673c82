namespace Hydrocolloid.Formulation;

/// <summary>The liquid, and the pieces where the dish has them, that counts as 100 %. Immutable, equal by content.</summary>
public sealed record BasePhase
{
    internal BasePhase(ValueList<BasePart> parts) => Parts = parts;

    /// <summary>The parts; their shares add up to 100 %.</summary>
    public ValueList<BasePart> Parts { get; }

    /// <summary>The parts.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Parts.ToString();
}
