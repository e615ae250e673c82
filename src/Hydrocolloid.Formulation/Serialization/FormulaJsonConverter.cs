using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>
/// Lets a formula stand in a larger document, with <see cref="JsonSerializer"/> and a source-generated context of one's own: the
/// formula is read and written as <see cref="FormulaJson"/> does, with the layout of the larger document.
/// </summary>
public sealed class FormulaJsonConverter : JsonConverter<Formula>
{
    private readonly Catalogue? _catalogue;

    /// <summary>Reads and writes with the built-in catalogue.</summary>
    public FormulaJsonConverter()
    {
    }

    /// <summary>Reads and writes with a catalogue.</summary>
    /// <param name="catalogue">The catalogue.</param>
    public FormulaJsonConverter(Catalogue catalogue) => _catalogue = Guard.NotNull(catalogue);

    /// <inheritdoc/>
    /// <exception cref="JsonException">The value is not a formula; its inner exception is a <see cref="FormulaJsonException"/> with every problem, whose places count from the start of the formula.</exception>
    public override Formula Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using JsonDocument document = JsonDocument.ParseValue(ref reader);
        if (FormulaJson.TryRead(JsonMarshal.GetRawUtf8Value(document.RootElement), _catalogue ?? Catalogue.BuiltIn, out Formula? formula, out ValueList<FormulaJsonProblem> problems))
        {
            return formula;
        }

        FormulaJsonException cause = FormulaJsonException.Unreadable(problems);
        throw new JsonException(cause.Message, cause);
    }

    /// <inheritdoc/>
    /// <exception cref="FormulaJsonException">No document can hold the formula.</exception>
    public override void Write(Utf8JsonWriter writer, Formula value, JsonSerializerOptions options)
        => FormulaJson.Write(writer, value, _catalogue ?? Catalogue.BuiltIn);
}
