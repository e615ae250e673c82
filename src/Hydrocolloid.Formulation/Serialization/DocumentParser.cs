using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>From bytes to a formula, or to every problem with its place.</summary>
internal static class DocumentParser
{
    private static readonly JsonReaderOptions Strict = new() { MaxDepth = JsonLimits.MaxDepth };

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    public static Formula? Parse(ReadOnlySpan<byte> utf8, Catalogue catalogue, out ValueList<FormulaJsonProblem> problems)
    {
        int start = utf8.StartsWith(ByteOrderMark) ? ByteOrderMark.Length : 0;
        ReadOnlySpan<byte> text = utf8.Slice(start);
        int invalid = UnicodeText.InvalidByte(text);
        if (invalid >= 0)
        {
            problems = One(start + invalid, utf8, new FormulaJsonProblem("text-invalid", "", "The byte is not UTF-8."));
            return null;
        }

        int lone = UnicodeText.LoneSurrogateEscape(text);
        if (lone >= 0)
        {
            problems = One(start + lone, utf8, new FormulaJsonProblem("text-invalid", "", "The text holds half of a surrogate pair, which is not text."));
            return null;
        }

        List<FormulaJsonProblem> found;
        try
        {
            FormulaDto document = JsonSerializer.Deserialize(text, FormulaJsonContext.Default.FormulaDto) ?? throw new JsonException();
            if (document.Version != DocumentLimits.Version || document.Format != DocumentLimits.Format)
            {
                throw new JsonException();
            }

            Formula? formula = DocumentReader.Read(document, catalogue, out found);
            if (formula is not null)
            {
                problems = default;
                return formula;
            }
        }
        catch (JsonException e)
        {
            if ((VersionProblem(text) ?? Syntax(text)) is { } first)
            {
                problems = One(start + first.Offset, utf8, first.Problem);
                return null;
            }

            found = Shape(text, e);
        }

        problems = DocumentPlaces.Place(found, utf8, start);
        return null;
    }

    private static ValueList<FormulaJsonProblem> One(int offset, ReadOnlySpan<byte> utf8, FormulaJsonProblem problem)
        => ValueList<FormulaJsonProblem>.Own([DocumentPlaces.At(offset, utf8, problem)]);

    /// <summary>
    /// What is wrong with the format and the version, which goes before anything else, so that a document of a later version is told
    /// so whatever else it holds; null if nothing is or the text is not JSON as far as they stand.
    /// </summary>
    private static (int Offset, FormulaJsonProblem Problem)? VersionProblem(ReadOnlySpan<byte> utf8)
    {
        try
        {
            return FindVersionProblem(utf8);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static (int Offset, FormulaJsonProblem Problem)? FindVersionProblem(ReadOnlySpan<byte> utf8)
    {
        var reader = new Utf8JsonReader(utf8, Strict);
        reader.Read();
        int root = (int)reader.TokenStartIndex;
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            return (root, new FormulaJsonProblem("value-type", "", "A formula is an object."));
        }

        bool hasFormat = false, hasVersion = false;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            bool isFormat = reader.ValueTextEquals("format"u8), isVersion = reader.ValueTextEquals("version"u8);
            reader.Read();
            if (isFormat)
            {
                hasFormat = true;
                if (reader.TokenType != JsonTokenType.String || !reader.ValueTextEquals("hydrocolloid-formula"u8))
                {
                    return ((int)reader.TokenStartIndex,
                        new FormulaJsonProblem("format-unknown", "/format", $"Must be \"{DocumentLimits.Format}\": this is a document of another kind."));
                }
            }
            else if (isVersion)
            {
                hasVersion = true;
                bool isNumber = reader.TokenType == JsonTokenType.Number;
                int version = isNumber && reader.TryGetInt32(out int read) ? read : 0;
                if (version != DocumentLimits.Version)
                {
                    return ((int)reader.TokenStartIndex, version > DocumentLimits.Version
                        ? new FormulaJsonProblem("version-newer", "/version",
                            $"Version {Numbers.Exact(version)} is newer than this library reads ({Numbers.Exact(DocumentLimits.Version)}).")
                        : new FormulaJsonProblem("version-unknown", "/version", $"Must be the number {Numbers.Exact(DocumentLimits.Version)}: there is no other version."));
                }
            }
            else
            {
                reader.Skip();
            }

            if (hasFormat && hasVersion)
            {
                return null;
            }
        }

        return (root, !hasFormat
            ? new FormulaJsonProblem("format-unknown", "/format", $"\"format\" is missing: a formula has \"format\": \"{DocumentLimits.Format}\".")
            : new FormulaJsonProblem("version-unknown", "/version", $"\"version\" is missing: this library reads version {Numbers.Exact(DocumentLimits.Version)}."));
    }

    /// <summary>Where the text stops being JSON, if it does.</summary>
    private static (int Offset, FormulaJsonProblem Problem)? Syntax(ReadOnlySpan<byte> utf8)
    {
        var reader = new Utf8JsonReader(utf8, Strict);
        int open = 0;
        try
        {
            while (reader.Read())
            {
                open += reader.TokenType switch
                {
                    JsonTokenType.StartObject or JsonTokenType.StartArray => 1,
                    JsonTokenType.EndObject or JsonTokenType.EndArray => -1,
                    _ => 0,
                };
            }

            return null;
        }
        catch (JsonException e)
        {
            int offset = Math.Min(DocumentPlaces.OffsetOf(utf8, e.LineNumber ?? 0, e.BytePositionInLine ?? 0), utf8.Length);
            if (open == JsonLimits.MaxDepth && offset < utf8.Length && utf8[offset] is (byte)'{' or (byte)'[')
            {
                return (offset, new FormulaJsonProblem("too-deep", "", $"The document is more than {Numbers.Exact(JsonLimits.MaxDepth)} levels deep."));
            }

            int end = e.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
            return (offset, new FormulaJsonProblem("syntax", "", "Not JSON: " + (end < 0 ? e.Message : e.Message.Substring(0, end))));
        }
    }

    private static List<FormulaJsonProblem> Shape(ReadOnlySpan<byte> utf8, JsonException cause)
    {
        var reader = new Utf8JsonReader(utf8, Strict);
        using JsonDocument document = JsonDocument.ParseValue(ref reader);
        var problems = new List<FormulaJsonProblem>();
        DocumentShape.Document.Check(document.RootElement, "", problems);
        if (problems.Count == 0)
        {
            problems.Add(new FormulaJsonProblem("value-type", "", cause.Message)); // a fault that the table does not know; the tests know of none
        }

        return problems;
    }
}
