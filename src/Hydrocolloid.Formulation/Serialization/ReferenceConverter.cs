using System.Text.Json;
using System.Text.Json.Serialization;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Reads what a dose is a percentage of: a word, <c>{ "ingredient": id }</c> or <c>{ "line": label }</c>.</summary>
internal sealed class ReferenceConverter : JsonConverter<FormulaDto.Reference>
{
    private static readonly FormulaDto.Reference Base = new(DoseReference.Base, false);
    private static readonly FormulaDto.Reference Preceding = new(DoseReference.Preceding, false);
    private static readonly FormulaDto.Reference Total = new(DoseReference.Total, false);
    private static readonly FormulaDto.Reference Water = new(DoseReference.Water, false);

    public override FormulaDto.Reference Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String)
        {
            return reader.ValueTextEquals("base"u8) ? Base
                : reader.ValueTextEquals("preceding"u8) ? Preceding
                : reader.ValueTextEquals("total"u8) ? Total
                : reader.ValueTextEquals("water"u8) ? Water
                : throw new JsonException();
        }

        if (reader.TokenType == JsonTokenType.StartObject && reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            bool isIngredient = reader.ValueTextEquals("ingredient"u8);
            if ((isIngredient || reader.ValueTextEquals("line"u8)) && reader.Read() && reader.TokenType == JsonTokenType.String)
            {
                string label = reader.GetString()!;
                if (!string.IsNullOrWhiteSpace(label) && reader.Read() && reader.TokenType == JsonTokenType.EndObject)
                {
                    return new FormulaDto.Reference(DoseReference.Line(label), isIngredient);
                }
            }
        }

        throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, FormulaDto.Reference value, JsonSerializerOptions options) => throw new NotSupportedException();
}
