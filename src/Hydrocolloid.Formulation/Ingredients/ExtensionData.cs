using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation;

/// <summary>An integrator's own data: a JSON object that the library keeps untouched and never reads. Immutable, equal by content.</summary>
public sealed class ExtensionData : IEquatable<ExtensionData>
{
    internal static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false, MaxDepth = JsonLimits.MaxDepth };

    internal ExtensionData(JsonElement json) => Json = json;

    /// <summary>The object.</summary>
    public JsonElement Json { get; }

    /// <summary>Reads an object.</summary>
    /// <param name="json">A JSON object, at most 16 levels deep, no member twice.</param>
    /// <returns>The data.</returns>
    /// <exception cref="ArgumentException">The text is not such an object.</exception>
    public static ExtensionData Parse(string json)
    {
        if (UnicodeText.LoneSurrogateEscape(Encoding.UTF8.GetBytes(Guard.NotNull(json))) >= 0)
        {
            throw new ArgumentException("Must not hold half of a surrogate pair, which is not text.", nameof(json));
        }

        try
        {
            using var document = JsonDocument.Parse(json, Strict);
            return document.RootElement.ValueKind == JsonValueKind.Object
                ? new ExtensionData(document.RootElement.Clone())
                : throw new ArgumentException("Must be a JSON object.", nameof(json));
        }
        catch (JsonException e)
        {
            throw new ArgumentException("Must be a JSON object: " + e.Message, nameof(json), e);
        }
    }

    /// <inheritdoc/>
    public bool Equals(ExtensionData? other) => other is not null && JsonElement.DeepEquals(Json, other.Json);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ExtensionData);

    /// <inheritdoc/>
    public override int GetHashCode() => Json.GetPropertyCount();

    /// <summary>The object as JSON text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Json.GetRawText();
}
