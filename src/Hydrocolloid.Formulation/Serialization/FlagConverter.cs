using System.Text.Json;
using System.Text.Json.Serialization;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>true or false, or left out; never null.</summary>
internal sealed class FlagConverter : JsonConverter<bool?>
{
    public override bool HandleNull => true;

    public override bool? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.TokenType switch
    {
        JsonTokenType.True => true,
        JsonTokenType.False => false,
        _ => throw new JsonException(),
    };

    public override void Write(Utf8JsonWriter writer, bool? value, JsonSerializerOptions options) => throw new NotSupportedException();
}
