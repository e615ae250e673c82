namespace Hydrocolloid.Formulation.Teaching;

/// <summary>What exercises may use. Immutable.</summary>
public sealed record ExerciseSettings
{
    /// <summary>Every kind, metric units, a calculator, every agent.</summary>
    public static ExerciseSettings Default { get; } = new();

    /// <summary>The kinds; the standard ones unless stated.</summary>
    public ValueList<ExerciseKind> Kinds { get; init; } = ExerciseKind.Standard;

    /// <summary>Only these agents; empty for those of the catalogue that fit.</summary>
    public ValueList<Ingredient> Agents { get; init; }

    /// <summary>The units.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Whether a calculator may be used. Without one the numbers are round, and kinds that cannot do without are left out.</summary>
    public bool WithCalculator { get; init; } = true;

    /// <summary>A teacher's own formulas, from which the kinds that work on a formula take theirs; empty for drawn ones. If there are any, other kinds are left out.</summary>
    public ValueList<Formula> Formulas { get; init; }

    /// <summary>Own misconceptions, tried on every exercise with a number.</summary>
    public ValueList<Misconception> Misconceptions { get; init; }

    /// <summary>Numbers that are not drawn but stated, by key.</summary>
    public ValueList<Given> Fixed { get; init; }

    /// <summary>The lowest level, from 1.</summary>
    public int MinLevel { get; init; } = 1;

    /// <summary>The highest level.</summary>
    public int MaxLevel { get; init; } = 9;
}
