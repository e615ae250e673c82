using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>Says more about one line while a formula is built. Mutable, not thread-safe.</summary>
public sealed class LineBuilder
{
    internal LineBuilder()
    {
    }

    internal LineDetails Details { get; private set; } = LineDetails.None;

    /// <summary>Gives the line a label of its own, for an ingredient that stands in another line too.</summary>
    /// <param name="label">The label.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The label is blank.</exception>
    public LineBuilder Labelled(string label) => Set(Details with { Label = Guard.NotBlank(label) });

    /// <summary>Marks the line as pieces folded in, which do not take part in the gel.</summary>
    /// <returns>This builder.</returns>
    public LineBuilder Pieces() => Set(Details with { Form = LineForm.Pieces });

    /// <summary>States the temperature at which it is added.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public LineBuilder At(Temperature temperature) => Set(Details with { Temperature = temperature });

    /// <summary>States what was measured on this lot.</summary>
    /// <param name="measured">The measurements.</param>
    /// <returns>This builder.</returns>
    public LineBuilder Measured(Measurements measured) => Set(Details with { Measured = Guard.NotNull(measured) });

    /// <summary>Attaches an integrator's own data.</summary>
    /// <param name="extensions">The data.</param>
    /// <returns>This builder.</returns>
    public LineBuilder WithExtensions(ExtensionData extensions) => Set(Details with { Extensions = Guard.NotNull(extensions) });

    internal static LineDetails Run(Action<LineBuilder>? describe)
    {
        if (describe is null)
        {
            return LineDetails.None;
        }

        var builder = new LineBuilder();
        describe(builder);
        return builder.Details;
    }

    private LineBuilder Set(LineDetails details)
    {
        Details = details;
        return this;
    }
}
