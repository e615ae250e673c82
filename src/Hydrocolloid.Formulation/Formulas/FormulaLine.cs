namespace Hydrocolloid.Formulation;

/// <summary>One line of a formula as the weigh sheet sees it: a part of the base or an addition. Immutable, equal by content.</summary>
public sealed record FormulaLine
{
    internal FormulaLine(int index, string phase, BasePart part)
    {
        Index = index;
        PhaseIndex = -1;
        Phase = phase;
        Part = part;
        Dose = new Dose(part.PercentOfBase, DoseReference.Base);
    }

    internal FormulaLine(int index, int phaseIndex, string phase, Addition addition)
    {
        Index = index;
        PhaseIndex = phaseIndex;
        Phase = phase;
        Addition = addition;
        Dose = addition.Dose;
    }

    /// <summary>Its position in <see cref="Formula.Lines"/>, from 0.</summary>
    public int Index { get; }

    /// <summary>The position of its phase in <see cref="Formula.Phases"/>; -1 for the base.</summary>
    public int PhaseIndex { get; }

    /// <summary>The name of its phase; <c>base</c> for the base.</summary>
    public string Phase { get; }

    /// <summary>The part of the base; null for an addition.</summary>
    public BasePart? Part { get; }

    /// <summary>The addition; null for a part of the base.</summary>
    public Addition? Addition { get; }

    /// <summary>The dose; for a part of the base its share of the base.</summary>
    public Dose Dose { get; }

    /// <summary>True for a part of the base.</summary>
    public bool IsBase => Part is not null;

    /// <summary>The ingredient.</summary>
    public Ingredient Ingredient => Part?.Ingredient ?? Addition!.Ingredient;

    /// <summary>The label of the line, unique in the formula.</summary>
    public string Label => Details.Label ?? Ingredient.Id;

    /// <summary>What else the line says.</summary>
    public LineDetails Details => Part?.Details ?? Addition!.Details;

    /// <summary>True if it takes part in the gel.</summary>
    public bool IsContinuous => Details.Form == LineForm.Mix;

    /// <summary>The ingredient and its dose.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Ingredient}: {Dose}";
}
