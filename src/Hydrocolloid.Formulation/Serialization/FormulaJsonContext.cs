using System.Text.Json;
using System.Text.Json.Serialization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>The generated reader of the document's parts: strict, without reflection.</summary>
[JsonSourceGenerationOptions(
    JsonSerializerDefaults.Strict,
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    NumberHandling = JsonNumberHandling.Strict,
    ReadCommentHandling = JsonCommentHandling.Disallow,
    AllowTrailingCommas = false,
    MaxDepth = JsonLimits.MaxDepth)]
[JsonSerializable(typeof(FormulaDto))]
[JsonSerializable(typeof(FormulaDto.Measured))]
[JsonSerializable(typeof(JsonElement))]
internal sealed partial class FormulaJsonContext : JsonSerializerContext;
