using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>What the 100 % of a dose is. Immutable, equal by content.</summary>
public sealed record DoseReference
{
    private DoseReference(DoseReferenceKind kind, string? label)
    {
        Kind = kind;
        Label = label;
    }

    /// <summary>The base phase.</summary>
    public static DoseReference Base { get; } = new(DoseReferenceKind.Base, null);

    /// <summary>Everything in the base and in the phases before the line's own phase.</summary>
    public static DoseReference Preceding { get; } = new(DoseReferenceKind.Preceding, null);

    /// <summary>All lines together.</summary>
    public static DoseReference Total { get; } = new(DoseReferenceKind.Total, null);

    /// <summary>The water in everything in the base and in the phases before the line's own phase.</summary>
    public static DoseReference Water { get; } = new(DoseReferenceKind.Water, null);

    /// <summary>The kind of reference.</summary>
    public DoseReferenceKind Kind { get; }

    /// <summary>The label of the line, for <see cref="DoseReferenceKind.Line"/>; null for the others.</summary>
    public string? Label { get; }

    /// <summary>Another line, earlier in the formula.</summary>
    /// <param name="label">The label of that line: its ingredient's id unless the line was given a label of its own.</param>
    /// <returns>The reference.</returns>
    /// <exception cref="ArgumentException">The label is blank.</exception>
    public static DoseReference Line(string label) => new(DoseReferenceKind.Line, Guard.NotBlank(label));

    /// <summary>The line of an ingredient, earlier in the formula.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <returns>The reference.</returns>
    public static DoseReference Line(Ingredient ingredient) => Line(Guard.NotNull(ingredient).Id);

    /// <summary>The reference in words.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => Kind switch
    {
        DoseReferenceKind.Base => "the base",
        DoseReferenceKind.Preceding => "everything so far",
        DoseReferenceKind.Total => "the total",
        DoseReferenceKind.Water => "the water so far",
        _ => Label!,
    };
}
