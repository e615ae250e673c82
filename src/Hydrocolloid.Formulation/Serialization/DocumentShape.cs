using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>
/// What a part of a document may look like. The generated reader refuses at the first fault, in words about types; once it has, this
/// table finds every fault of shape and says it in words about the document.
/// </summary>
internal sealed class DocumentShape
{
    internal static readonly DocumentShape Text = new("text", JsonValueKind.String);
    internal static readonly DocumentShape Number = new("a number", JsonValueKind.Number);
    internal static readonly DocumentShape Flag = new("true or false", JsonValueKind.True);
    internal static readonly DocumentShape Any = new("an object", JsonValueKind.Object);
    private static readonly DocumentShape Reference = new("a reference", JsonValueKind.Undefined);

    private readonly string _noun;
    private readonly JsonValueKind _kind;
    private (string Name, DocumentShape Shape, bool IsRequired)[]? _members;
    private DocumentShape? _item;

    private DocumentShape(string noun, JsonValueKind kind)
    {
        _noun = noun;
        _kind = kind;
    }

    public static DocumentShape Document { get; } = MakeDocument();

    internal IEnumerable<(string Name, DocumentShape Shape, bool IsRequired)> Members => _members ?? [];

    internal DocumentShape? Item => _item;

    /// <summary>Adds every fault of shape.</summary>
    public void Check(JsonElement json, string pointer, List<FormulaJsonProblem> problems)
    {
        JsonValueKind kind = json.ValueKind == JsonValueKind.False ? JsonValueKind.True : json.ValueKind;
        if (this == Reference)
        {
            CheckReference(json, pointer, problems);
        }
        else if (kind != _kind)
        {
            problems.Add(new FormulaJsonProblem("value-type", pointer, $"Must be {_noun}, but is {NounOf(json)}."));
        }
        else if (_item is not null)
        {
            int i = 0;
            foreach (JsonElement item in json.EnumerateArray())
            {
                _item.Check(item, pointer + "/" + Numbers.Exact(i), problems);
                i++;
            }
        }
        else if (kind == JsonValueKind.Object)
        {
            CheckMembers(json, pointer, problems);
        }
    }

    internal static DocumentShape List(DocumentShape item) => new("a list", JsonValueKind.Array) { _item = item };

    internal static DocumentShape Object(params (string Name, DocumentShape Shape, bool IsRequired)[] members)
        => new("an object", JsonValueKind.Object) { _members = members };

    private static DocumentShape MakeDocument()
    {
        DocumentShape quantity = Object(("value", Number, true), ("unit", Text, true));
        DocumentShape measured = Object(("ph", Number, false), ("brix", Number, false), ("density", quantity, false));
        (string, DocumentShape, bool)[] details =
        [
            ("label", Text, false), ("form", Text, false), ("temperature", quantity, false), ("measured", measured, false), ("extensions", Any, false),
        ];
        DocumentShape part = Object([("ingredient", Text, true), ("percent", Number, true), .. details]);
        DocumentShape addition = Object([("ingredient", Text, true), ("percent", Number, true), ("of", Reference, true), .. details]);
        DocumentShape loss = Object(("percent", Number, false), ("value", Number, false), ("unit", Text, false));
        DocumentShape losses = Object(
            ("evaporation", loss, false), ("toppedUp", Flag, false), ("straining", loss, false), ("transfer", loss, false), ("trimming", loss, false));
        DocumentShape shape = Object(
            ("form", Text, true), ("diameter", quantity, false), ("bottomDiameter", quantity, false), ("length", quantity, false), ("width", quantity, false),
            ("bottomLength", quantity, false), ("bottomWidth", quantity, false), ("height", quantity, false));
        DocumentShape mould = Object(
            ("name", Text, true), ("volume", quantity, false), ("shape", shape, false), ("cavities", Number, false), ("headspace", quantity, false));
        DocumentShape process = Object(
            ("carriers", List(Text), false), ("altitude", quantity, false), ("soakAt", quantity, false), ("hydrateAt", quantity, false),
            ("hydrateFor", quantity, false), ("losses", losses, false),
            ("mould", mould, false), ("castAt", quantity, false),
            ("cooling", List(Object(("name", Text, true), ("temperature", quantity, true), ("duration", quantity, false), ("medium", Text, false))), false));
        DocumentShape service = Object(
            ("texture", Text, false), ("servedAt", quantity, false), ("heldFor", quantity, false), ("storedFor", quantity, false),
            ("covered", Flag, false), ("frozen", Flag, false), ("portion", quantity, false), ("shape", Text, false), ("clear", Flag, false),
            ("packaged", Flag, false), ("audience", Text, false), ("market", Text, false), ("foodCategory", Text, false), ("diets", List(Text), false),
            ("freeFrom", List(Text), false));
        string[] parts =
        [
            "water", "sugars", "otherCarbohydrate", "fibre", "protein", "fat", "ash", "ethanol", "organicAcids", "calcium", "potassium", "sodium", "magnesium",
        ];
        DocumentShape own = Object(
            ("id", Text, true), ("name", Text, false), ("like", Text, false), ("synonyms", List(Text), false),
            ("compositionPer100g", Object([.. parts.Select(p => (p, Number, false))]), false),
            ("ph", Number, false), ("brix", Number, false), ("density", quantity, false), ("category", Text, false),
            ("titratableAcidity", Object(("percent", Number, true), ("as", Text, true)), false), ("tannin", Text, false),
            ("protease", Object(("enzyme", Text, true), ("active", Flag, true), ("disputed", Flag, false)), false), ("milkProtein", Object(("casein", Flag, true), ("whey", Flag, true)), false), ("allergens", List(Text), false),
            ("enzymes", Text, false), ("vegan", Flag, false), ("vegetarian", Flag, false), ("grade", Object(("scale", Text, true), ("value", Number, true)), false), ("extensions", Any, false));
        return Object(
            ("format", Text, true), ("version", Number, true), ("name", Text, true), ("base", List(part), true),
            ("phases", List(Object(("name", Text, true), ("add", List(addition), true))), false),
            ("process", process, false), ("service", service, false), ("ingredients", List(own), false), ("extensions", Any, false));
    }

    /// <summary>In free data everything but a repeated member goes.</summary>
    private static void CheckAny(JsonElement json, string pointer, List<FormulaJsonProblem> problems)
    {
        if (json.ValueKind == JsonValueKind.Array)
        {
            int i = 0;
            foreach (JsonElement item in json.EnumerateArray())
            {
                CheckAny(item, pointer + "/" + Numbers.Exact(i), problems);
                i++;
            }
        }
        else if (json.ValueKind == JsonValueKind.Object)
        {
            Any.CheckMembers(json, pointer, problems);
        }
    }

    private static void CheckReference(JsonElement json, string pointer, List<FormulaJsonProblem> problems)
    {
        const string Choices = "\"base\", \"preceding\", \"total\", \"water\", { \"ingredient\": id } or { \"line\": label }";
        if (json.ValueKind == JsonValueKind.String)
        {
            string word = json.GetString()!;
            if (word is not ("base" or "preceding" or "total" or "water"))
            {
                problems.Add(new FormulaJsonProblem("word-unknown", pointer, $"Must be {Choices}, but is {UnitTable.Quote(word)}."));
            }

            return;
        }

        JsonProperty[] members = json.ValueKind == JsonValueKind.Object ? [.. json.EnumerateObject()] : [];
        if (members.Length != 1 || members[0].Name is not ("ingredient" or "line"))
        {
            problems.Add(new FormulaJsonProblem("value-type", pointer, $"Must be {Choices}."));
        }
        else if (members[0].Value.ValueKind != JsonValueKind.String)
        {
            Text.Check(members[0].Value, DocumentPlaces.Member(pointer, members[0].Name), problems);
        }
        else if (string.IsNullOrWhiteSpace(members[0].Value.GetString()))
        {
            problems.Add(new FormulaJsonProblem("text-blank", DocumentPlaces.Member(pointer, members[0].Name), "Must not be empty or blank."));
        }
    }

    private static string NounOf(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null; leave out what is not stated",
    };

    private void CheckMembers(JsonElement json, string pointer, List<FormulaJsonProblem> problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = DocumentPlaces.Member(pointer, member.Name);
            if (!seen.Add(member.Name))
            {
                problems.Add(new FormulaJsonProblem("member-repeated", at, $"{UnitTable.Quote(member.Name)} is stated twice in one object."));
            }

            if (_members is null)
            {
                CheckAny(member.Value, at, problems);
                continue;
            }

            int found = Array.FindIndex(_members, m => m.Name == member.Name);
            if (found < 0)
            {
                problems.Add(new FormulaJsonProblem("member-unknown", at,
                    $"{UnitTable.Quote(member.Name)} is not a member here; the members are {string.Join(", ", _members.Select(m => m.Name))}."));
                continue;
            }

            _members[found].Shape.Check(member.Value, at, problems);
        }

        foreach ((string name, _, bool isRequired) in Members)
        {
            if (isRequired && !seen.Contains(name))
            {
                problems.Add(new FormulaJsonProblem("member-missing", DocumentPlaces.Member(pointer, name), $"\"{name}\" is missing."));
            }
        }
    }
}
