using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>
/// Reads catalogue documents (docs/catalogue-format.md): ingredients of a kitchen's own, which are added to a catalogue or take the
/// place of its entries. Every figure needs a source, of the document or of the catalogue it adds to.
/// </summary>
public static class CatalogueJson
{
    private const string Format = "hydrocolloid-catalogue";
    private const int Version = 1;

    /// <summary>Reads a document and adds it to the built-in catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The catalogue with the document's ingredients.</returns>
    /// <exception cref="FormulaJsonException">The text is not a catalogue document; the exception lists the problems with their places.</exception>
    public static Catalogue Read(string json) => Read(json, Catalogue.BuiltIn);

    /// <summary>Reads a document and adds it to a catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <param name="catalogue">The catalogue to add to.</param>
    /// <returns>The catalogue with the document's ingredients.</returns>
    /// <exception cref="FormulaJsonException">The text is not a catalogue document; the exception lists the problems with their places.</exception>
    public static Catalogue Read(string json, Catalogue catalogue)
        => Read(Encoding.UTF8.GetBytes(Guard.NotNull(json)).AsSpan(), catalogue);

    /// <summary>Reads a document and adds it to a catalogue.</summary>
    /// <param name="stream">The document in UTF-8.</param>
    /// <param name="catalogue">The catalogue to add to.</param>
    /// <returns>The catalogue with the document's ingredients.</returns>
    /// <exception cref="FormulaJsonException">The text is not a catalogue document; the exception lists the problems with their places.</exception>
    public static Catalogue Read(Stream stream, Catalogue catalogue)
    {
        using var bytes = new MemoryStream();
        Guard.NotNull(stream).CopyTo(bytes);
        return Read(bytes.ToArray().AsSpan(), catalogue);
    }

    /// <summary>Reads a document and adds it to a catalogue.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <param name="catalogue">The catalogue to add to.</param>
    /// <returns>The catalogue with the document's ingredients.</returns>
    /// <exception cref="FormulaJsonException">The text is not a catalogue document; the exception lists the problems with their places.</exception>
    public static Catalogue Read(ReadOnlySpan<byte> utf8, Catalogue catalogue)
    {
        Guard.NotNull(catalogue);
        int start = utf8.StartsWith("\uFEFF"u8) ? 3 : 0;
        ReadOnlySpan<byte> text = utf8.Slice(start);
        JsonElement root = Parse(text, utf8, start);
        var problems = new List<FormulaJsonProblem>();
        CheckHead(root, problems);
        CheckNoNull(root, "", problems);
        if (problems.Count == 0)
        {
            SourceList sources = ReadSources(root, catalogue.SourceList, problems);
            Ingredient[] ingredients = ReadIngredients(root, catalogue, sources, problems);
            if (problems.Count == 0)
            {
                return catalogue.With(ingredients, new Lazy<SourceList>(() => sources));
            }
        }

        throw FormulaJsonException.NoCatalogue(DocumentPlaces.Place(problems, utf8, start));
    }

    private static JsonElement Parse(ReadOnlySpan<byte> text, ReadOnlySpan<byte> utf8, int start)
    {
        int invalid = UnicodeText.InvalidByte(text);
        invalid = invalid >= 0 ? invalid : UnicodeText.LoneSurrogateEscape(text);
        if (invalid >= 0)
        {
            throw FormulaJsonException.NoCatalogue(ValueList<FormulaJsonProblem>.Own(
                [DocumentPlaces.At(start + invalid, utf8, new FormulaJsonProblem("text-invalid", "", "The text is not whole UTF-8."))]));
        }

        try
        {
            return JsonDocument.Parse(text.ToArray(), ExtensionData.Strict).RootElement;
        }
        catch (JsonException e)
        {
            int offset = Math.Min(utf8.Length, start + DocumentPlaces.OffsetOf(text, e.LineNumber ?? 0, e.BytePositionInLine ?? 0));
            throw FormulaJsonException.NoCatalogue(ValueList<FormulaJsonProblem>.Own(
                [DocumentPlaces.At(offset, utf8, new FormulaJsonProblem("syntax", "", "Not JSON of at most 16 levels with each member once: " + e.Message))]));
        }
    }

    private static void CheckHead(JsonElement root, List<FormulaJsonProblem> problems)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            problems.Add(new FormulaJsonProblem("value-type", "", "A catalogue document is an object."));
            return;
        }

        if (!(root.TryGetProperty("format"u8, out JsonElement format) && format.ValueKind == JsonValueKind.String && format.ValueEquals(Format)))
        {
            problems.Add(new FormulaJsonProblem("format-unknown", "/format", $"\"format\" must be \"{Format}\"."));
        }

        if (!(root.TryGetProperty("version"u8, out JsonElement version) && version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out int number)))
        {
            problems.Add(new FormulaJsonProblem("version-unknown", "/version", "\"version\" must be the number 1."));
        }
        else if (number != Version)
        {
            problems.Add(new FormulaJsonProblem(number > Version ? "version-newer" : "version-unknown", "/version",
                $"Version {Numbers.Exact(number)} {(number > Version ? "is newer than this library reads" : "is not a version")} ({Numbers.Exact(Version)})."));
        }

        foreach (JsonProperty member in root.EnumerateObject())
        {
            bool isList = member.Name is "sources" or "ingredients";
            if (!isList && member.Name is not ("format" or "version"))
            {
                problems.Add(new FormulaJsonProblem("member-unknown", DocumentPlaces.Member("", member.Name), $"'{member.Name}' is not a member of the format."));
            }
            else if (isList && member.Value.ValueKind != JsonValueKind.Array)
            {
                problems.Add(new FormulaJsonProblem("value-type", "/" + member.Name, "Must be a list."));
            }
        }
    }

    private static void CheckNoNull(JsonElement json, string pointer, List<FormulaJsonProblem> problems)
    {
        if (json.ValueKind == JsonValueKind.Null)
        {
            problems.Add(new FormulaJsonProblem("value-type", pointer, "Must not be null: leave the member out."));
        }
        else if (json.ValueKind == JsonValueKind.Object)
        {
            foreach (JsonProperty member in json.EnumerateObject())
            {
                CheckNoNull(member.Value, DocumentPlaces.Member(pointer, member.Name), problems);
            }
        }
        else if (json.ValueKind == JsonValueKind.Array)
        {
            int i = 0;
            foreach (JsonElement item in json.EnumerateArray())
            {
                CheckNoNull(item, pointer + "/" + Numbers.Exact(i), problems);
                i++;
            }
        }
    }

    private static SourceList ReadSources(JsonElement root, SourceList beside, List<FormulaJsonProblem> problems)
    {
        byte[] list = root.TryGetProperty("sources"u8, out JsonElement given) ? JsonMarshal.GetRawUtf8Value(given).ToArray() : "[]"u8.ToArray();
        SourceList? sources = null;
        Try("/sources", problems, () =>
        {
            sources = new SourceList(list, "/sources", beside);
            foreach (Source source in sources.All)
            {
                _ = source.Title; // it is read now, so that a broken one is reported
            }
        });
        return sources ?? beside;
    }

    private static Ingredient[] ReadIngredients(JsonElement root, Catalogue catalogue, SourceList sources, List<FormulaJsonProblem> problems)
    {
        if (!root.TryGetProperty("ingredients"u8, out JsonElement list))
        {
            return [];
        }

        var ingredients = new List<Ingredient>();
        // An entry may be like one before it in the document, or like one of the catalogue, its own former self among them.
        Ingredient? Entry(string id) => ingredients.Find(i => i.Id == id) ?? (catalogue.TryGet(id, out Ingredient? known) ? known : null);
        var reader = new IngredientReader(new FigureReader(sources), id => Entry(id)?.Facts);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        int index = 0;
        foreach (JsonElement json in list.EnumerateArray())
        {
            string pointer = "/ingredients/" + Numbers.Exact(index);
            index++;
            Try(pointer, problems, () =>
            {
                if (json.ValueKind != JsonValueKind.Object)
                {
                    throw FigureReader.Broken(pointer, "must be an object");
                }

                string? id = TextOf(json, "id", pointer), name = TextOf(json, "name", pointer);
                if (!Ids.IsValid(id) || string.IsNullOrWhiteSpace(name))
                {
                    throw FigureReader.Broken(pointer, "needs a kebab-case id and a name");
                }

                if (!ids.Add(id!))
                {
                    throw FigureReader.Broken(pointer + "/id", $"'{id}' is described twice");
                }

                var cursor = new JsonCursor(JsonMarshal.GetRawUtf8Value(json));
                IngredientFacts facts = reader.Read(ref cursor, id!, pointer);
                Ingredient? like = json.TryGetProperty("like"u8, out JsonElement other) ? Entry(other.GetString()!) : null;
                Ingredient made = like is null || like.Id == id ? new Ingredient(id!, name!, new Lazy<IngredientFacts>(() => facts)) : like.AsDescribed(id!, name!, facts);
                ingredients.Add(json.TryGetProperty("grade"u8, out JsonElement grade) ? made.WithGrade(ReadGrade(grade, pointer + "/grade")) : made);
            });
        }

        return [.. ingredients];
    }

    private static string? TextOf(JsonElement json, string member, string pointer)
        => !json.TryGetProperty(member, out JsonElement text) ? null
            : text.ValueKind == JsonValueKind.String ? text.GetString() : throw FigureReader.Broken(pointer + "/" + member, "must be a text");

    /// <summary>The grade of a lot, as formula documents state it.</summary>
    private static Grade ReadGrade(JsonElement json, string pointer)
    {
        var cursor = new JsonCursor(JsonMarshal.GetRawUtf8Value(json));
        GradeScale? scale = null;
        double? value = null;
        cursor.OpenObject(pointer);
        while (cursor.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "scale": scale = Words.TryScale(cursor.Text(at), out GradeScale known) ? known : throw FigureReader.Broken(at, $"'{cursor.Text(at)}' is not a scale of strength; there are {Words.ScaleList}"); break;
                case "value": value = cursor.Number(at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        if (scale is null || value is null)
        {
            throw FigureReader.Broken(pointer, "needs a scale and a value");
        }

        return value > 0 && value <= Grade.MaxValue ? new Grade(scale.Value, value.Value)
            : throw FigureReader.Broken(FigureReader.Under(pointer, "value"), $"must be above 0 and up to {Numbers.Exact(Grade.MaxValue)}, but is {Numbers.Exact(value.Value)}");
    }

    // The readers stop at the first fault of an entry; the other entries are still looked at.
    private static void Try(string pointer, List<FormulaJsonProblem> problems, Action read)
    {
        try
        {
            read();
        }
        catch (CatalogueDocumentException e)
        {
            problems.Add(new FormulaJsonProblem("entry-invalid", e.Pointer.Length > 0 && e.Pointer[0] == '/' ? e.Pointer : pointer, $"{e.Pointer} {e.Reason}."));
        }
        catch (Exception e) when (e is InvalidOperationException or FormatException or ArgumentException or KeyNotFoundException)
        {
            problems.Add(new FormulaJsonProblem("entry-invalid", pointer, "A value is of the wrong type, missing or out of range: " + e.Message));
        }
    }
}
