using System.Text.Json;
using System.Text.Json.Serialization;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Reads a line, of which a document holds most. As strict as the generated readers: no other member, none twice, no null.</summary>
/// <typeparam name="T">The type of line; only an addition says what its percentage is of.</typeparam>
internal sealed class LineConverter<T> : JsonConverter<T>
    where T : FormulaDto.Part, new()
{
    private static readonly ReferenceConverter References = new();

    private static readonly QuantityConverter Quantities = new();

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var line = new T { Percent = double.NaN };
        var addition = line as FormulaDto.Addition;
        Expect(ref reader, JsonTokenType.StartObject);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            if (line.Ingredient is null && reader.ValueTextEquals("ingredient"u8))
            {
                line.Ingredient = Text(ref reader);
            }
            else if (double.IsNaN(line.Percent) && reader.ValueTextEquals("percent"u8))
            {
                reader.Read();
                Expect(ref reader, JsonTokenType.Number);
                line.Percent = reader.GetDouble();
            }
            else if (addition is { Of: null } && reader.ValueTextEquals("of"u8))
            {
                reader.Read();
                addition.Of = References.Read(ref reader, typeof(FormulaDto.Reference), options);
            }
            else
            {
                ReadDetail(ref reader, line, options);
            }
        }

        return line.Ingredient is null || double.IsNaN(line.Percent) || addition is { Of: null } ? throw new JsonException() : line;
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => throw new NotSupportedException();

    private static void ReadDetail(ref Utf8JsonReader reader, T line, JsonSerializerOptions options)
    {
        if (line.Label is null && reader.ValueTextEquals("label"u8))
        {
            line.Label = Text(ref reader);
        }
        else if (line.Form is null && reader.ValueTextEquals("form"u8))
        {
            line.Form = Text(ref reader);
        }
        else if (line.Temperature is null && reader.ValueTextEquals("temperature"u8))
        {
            reader.Read();
            line.Temperature = Quantities.Read(ref reader, typeof(FormulaDto.Quantity), options);
        }
        else if (line.Measured is null && reader.ValueTextEquals("measured"u8))
        {
            reader.Read();
            line.Measured = JsonSerializer.Deserialize(ref reader, FormulaJsonContext.Default.Measured) ?? throw new JsonException();
        }
        else if (line.Extensions.ValueKind == JsonValueKind.Undefined && reader.ValueTextEquals("extensions"u8))
        {
            reader.Read();
            line.Extensions = JsonSerializer.Deserialize(ref reader, FormulaJsonContext.Default.JsonElement);
        }
        else
        {
            throw new JsonException(); // another member, or one twice
        }
    }

    private static string Text(ref Utf8JsonReader reader)
    {
        reader.Read();
        Expect(ref reader, JsonTokenType.String);
        return reader.GetString()!;
    }

    private static void Expect(ref Utf8JsonReader reader, JsonTokenType type)
    {
        if (reader.TokenType != type)
        {
            throw new JsonException();
        }
    }
}
