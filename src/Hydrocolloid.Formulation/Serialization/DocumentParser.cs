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
        int start = StartOf(utf8);
        ReadOnlySpan<byte> text = utf8.Slice(start);
        if (TextProblem(text) is { } unreadable)
        {
            problems = One(start + unreadable.Offset, utf8, unreadable.Problem);
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
            if ((VersionProblem(text, DocumentLimits.Format, DocumentLimits.Version, "A formula") ?? Syntax(text)) is { } first)
            {
                problems = One(start + first.Offset, utf8, first.Problem);
                return null;
            }

            found = Shape(text, e);
        }

        problems = DocumentPlaces.Place(found, utf8, start);
        return null;
    }

    /// <summary>Reads a document of another kind: its text, format, version, syntax and shape are sound if there are no problems.</summary>
    public static T? Parse<T>(
        ReadOnlySpan<byte> utf8, string format, int version, string noun, DocumentShape shape,
        Func<JsonElement, List<FormulaJsonProblem>, T?> read, out ValueList<FormulaJsonProblem> problems)
        where T : class
    {
        int start = StartOf(utf8);
        ReadOnlySpan<byte> text = utf8.Slice(start);
        if ((TextProblem(text) ?? VersionProblem(text, format, version, noun) ?? Syntax(text)) is { } first)
        {
            problems = One(start + first.Offset, utf8, first.Problem);
            return null;
        }

        var reader = new Utf8JsonReader(text, Strict);
        using JsonDocument document = JsonDocument.ParseValue(ref reader);
        var found = new List<FormulaJsonProblem>();
        shape.Check(document.RootElement, "", found);
        T? result = found.Count == 0 ? read(document.RootElement, found) : null;
        problems = DocumentPlaces.Place(found, utf8, start);
        return found.Count == 0 ? result : null;
    }

    private static int StartOf(ReadOnlySpan<byte> utf8) => utf8.StartsWith(ByteOrderMark) ? ByteOrderMark.Length : 0;

    private static (int Offset, FormulaJsonProblem Problem)? TextProblem(ReadOnlySpan<byte> utf8)
    {
        int invalid = UnicodeText.InvalidByte(utf8);
        if (invalid >= 0)
        {
            return (invalid, new FormulaJsonProblem("text-invalid", "", "The byte is not UTF-8."));
        }

        int lone = UnicodeText.LoneSurrogateEscape(utf8);
        return lone < 0 ? null : (lone, new FormulaJsonProblem("text-invalid", "", "The text holds half of a surrogate pair, which is not text."));
    }

    private static ValueList<FormulaJsonProblem> One(int offset, ReadOnlySpan<byte> utf8, FormulaJsonProblem problem)
        => ValueList<FormulaJsonProblem>.Own([DocumentPlaces.At(offset, utf8, problem)]);

    /// <summary>
    /// What is wrong with the format and the version, which goes before anything else, so that a document of a later version is told
    /// so whatever else it holds; null if nothing is or the text is not JSON as far as they stand.
    /// </summary>
    private static (int Offset, FormulaJsonProblem Problem)? VersionProblem(ReadOnlySpan<byte> utf8, string format, int version, string noun)
    {
        try
        {
            return FindVersionProblem(utf8, format, version, noun);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static (int Offset, FormulaJsonProblem Problem)? FindVersionProblem(ReadOnlySpan<byte> utf8, string format, int known, string noun)
    {
        var reader = new Utf8JsonReader(utf8, Strict);
        reader.Read();
        int root = (int)reader.TokenStartIndex;
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            return (root, new FormulaJsonProblem("value-type", "", noun + " is an object."));
        }

        bool hasFormat = false, hasVersion = false;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            bool isFormat = reader.ValueTextEquals("format"u8), isVersion = reader.ValueTextEquals("version"u8);
            reader.Read();
            if (isFormat)
            {
                hasFormat = true;
                if (reader.TokenType != JsonTokenType.String || !reader.ValueTextEquals(format))
                {
                    return ((int)reader.TokenStartIndex,
                        new FormulaJsonProblem("format-unknown", "/format", $"Must be \"{format}\": this is a document of another kind."));
                }
            }
            else if (isVersion)
            {
                hasVersion = true;
                bool isNumber = reader.TokenType == JsonTokenType.Number;
                int version = isNumber && reader.TryGetInt32(out int read) ? read : 0;
                if (version != known)
                {
                    return ((int)reader.TokenStartIndex, version > known
                        ? new FormulaJsonProblem("version-newer", "/version",
                            $"Version {Numbers.Exact(version)} is newer than this library reads ({Numbers.Exact(known)}).")
                        : new FormulaJsonProblem("version-unknown", "/version", $"Must be the number {Numbers.Exact(known)}: there is no other version."));
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
            ? new FormulaJsonProblem("format-unknown", "/format", $"\"format\" is missing: {char.ToLowerInvariant(noun[0])}{noun.Substring(1)} has \"format\": \"{format}\".")
            : new FormulaJsonProblem("version-unknown", "/version", $"\"version\" is missing: this library reads version {Numbers.Exact(known)}."));
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
