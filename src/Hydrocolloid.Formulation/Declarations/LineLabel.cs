using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>What the label says of one line, where the catalogue cannot know it. Immutable, equal by content.</summary>
public sealed record LineLabel
{
    private readonly string? _name;
    private readonly string? _class;
    private readonly double? _sulphurDioxideMgPerKg;
    private readonly double? _saturates;
    private readonly double? _polyols;
    private readonly double? _erythritol;

    /// <summary>Starts what is said of a line.</summary>
    /// <param name="line">The label of the line in the formula.</param>
    /// <exception cref="ArgumentException">The label is blank.</exception>
    public LineLabel(string line) => Line = Guard.NotBlank(line);

    /// <summary>The label of the line in the formula.</summary>
    public string Line { get; }

    /// <summary>The name on the label; null for that of the ingredient.</summary>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public string? Name
    {
        get => _name;
        init => _name = value is null ? null : Guard.NotBlank(value, nameof(Name));
    }

    /// <summary>The class of an additive: what it does in this food, such as <c>firming agent</c>; null to take what the catalogue suggests.</summary>
    /// <exception cref="ArgumentException">Not one of the classes that a label may name.</exception>
    public string? FunctionalClass
    {
        get => _class;
        init => _class = value is null || IngredientListing.Classes.Contains(value) ? value
            : throw new ArgumentException($"'{value}' is not a class that a label may name: {IngredientListing.Classes}.", nameof(value));
    }

    /// <summary>True if the label gives its quantity: because it is in the name of the food, emphasised, or essential to it.</summary>
    public bool Quantify { get; init; }

    /// <summary>The ingredients of a bought compound, in the order and words of its pack; they stand in brackets.</summary>
    public ValueList<string> MadeOf { get; init; }

    /// <summary>Kinds and species behind its allergens.</summary>
    public ValueList<AllergenName> AllergenNames { get; init; }

    /// <summary>Total sulphur dioxide by weight of the ingredient; null if not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 100 000 mg/kg.</exception>
    public MassFraction? SulphurDioxide
    {
        get => _sulphurDioxideMgPerKg is { } v ? MassFraction.FromMilligramsPerKilogram(v) : null;
        init => _sulphurDioxideMgPerKg = value is { } v ? Guard.InRange(v.MilligramsPerKilogram, 0, 100_000, "mg/kg", nameof(SulphurDioxide)) : null;
    }

    /// <summary>Saturated fatty acids, % by weight of the ingredient; null if not known. No catalogue entry states them.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 100 %.</exception>
    public double? SaturatesPercent
    {
        get => _saturates;
        init => _saturates = Part(value, nameof(SaturatesPercent));
    }

    /// <summary>Polyols without erythritol, % by weight of the ingredient, a part of its carbohydrate; null for what the catalogue knows.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 100 %.</exception>
    public double? PolyolsPercent
    {
        get => _polyols;
        init => _polyols = Part(value, nameof(PolyolsPercent));
    }

    /// <summary>Erythritol, % by weight of the ingredient, a part of its carbohydrate; null if it holds none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 100 %.</exception>
    public double? ErythritolPercent
    {
        get => _erythritol;
        init => _erythritol = Part(value, nameof(ErythritolPercent));
    }

    internal double? SulphurDioxideMgPerKg => _sulphurDioxideMgPerKg;

    private static double? Part(double? value, string name) => value is { } v ? Guard.InRange(v, 0, 100, "%", name) : null;
}
