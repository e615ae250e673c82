using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>What a line may say beyond its ingredient and its amount. Immutable, equal by content.</summary>
public sealed record LineDetails
{
    private readonly double? _celsius;
    private readonly string? _label;
    private readonly LineForm _form;

    /// <summary>A line that says nothing more.</summary>
    public static LineDetails None { get; } = new();

    /// <summary>A label of its own, for a line whose ingredient stands in another line too; null to use the ingredient's id.</summary>
    /// <exception cref="ArgumentException">The label is blank.</exception>
    public string? Label
    {
        get => _label;
        init => _label = value is null ? null : Guard.NotBlank(value, nameof(Label));
    }

    /// <summary>Whether it takes part in the gel.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public LineForm Form
    {
        get => _form;
        init => _form = (LineForm)Guard.Defined((int)value, (int)LineForm.Pieces, nameof(Form));
    }

    /// <summary>The temperature at which it is added; null if not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Temperature? Temperature
    {
        get => _celsius is { } v ? UnitsNet.Temperature.FromDegreesCelsius(v) : null;
        init => _celsius = value is { } v ? Guard.Celsius(v, nameof(Temperature)) : null;
    }

    /// <summary>What was measured on this lot; null if nothing was.</summary>
    public Measurements? Measured { get; init; }

    /// <summary>An integrator's own data; null if none.</summary>
    public ExtensionData? Extensions { get; init; }

    internal double? Celsius => _celsius;

    /// <summary>The label and the form.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => (_label ?? "") + (Form == LineForm.Pieces ? " (pieces)" : "");
}
