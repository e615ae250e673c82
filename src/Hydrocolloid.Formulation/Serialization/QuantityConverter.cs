using System.Text.Json;
using System.Text.Json.Serialization;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Reads <c>{ "value": 35, "unit": "g" }</c>, the most frequent object beside the lines, without a new text for each unit.</summary>
internal sealed class QuantityConverter : JsonConverter<FormulaDto.Quantity>
{
    public override FormulaDto.Quantity Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        double value = double.NaN;
        string? unit = null;
        Expect(ref reader, JsonTokenType.StartObject);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            if (double.IsNaN(value) && reader.ValueTextEquals("value"u8))
            {
                reader.Read();
                Expect(ref reader, JsonTokenType.Number);
                value = reader.GetDouble();
            }
            else if (unit is null && reader.ValueTextEquals("unit"u8))
            {
                reader.Read();
                Expect(ref reader, JsonTokenType.String);
                unit = reader.ValueTextEquals("g"u8) ? "g"
                    : reader.ValueTextEquals("Cel"u8) ? "Cel"
                    : reader.ValueTextEquals("s"u8) ? "s"
                    : reader.GetString();
            }
            else
            {
                throw new JsonException(); // another member, or one twice
            }
        }

        return unit is not null && !double.IsNaN(value) ? new FormulaDto.Quantity { Value = value, Unit = unit } : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, FormulaDto.Quantity value, JsonSerializerOptions options) => throw new NotSupportedException();

    private static void Expect(ref Utf8JsonReader reader, JsonTokenType type)
    {
        if (reader.TokenType != type)
        {
            throw new JsonException();
        }
    }
}
