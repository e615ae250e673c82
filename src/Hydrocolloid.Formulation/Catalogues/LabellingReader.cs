using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the document on labels (docs/catalogue-format.md).</summary>
internal sealed class LabellingReader(FigureReader figures)
{
    public LabellingFacts Read(JsonElement json, string pointer)
    {
        Cited<ValueList<string>>? classes = null;
        ValueList<AllergenFacts> allergens = default;
        ValueList<DryMatter> dryAs = default;
        ValueList<Named> eu = default, us = default, polyols = default;
        var notes = new Dictionary<string, Cited<string>>(StringComparer.Ordinal);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = FigureReader.Under(pointer, member.Name);
            switch (member.Name)
            {
                case "format" or "version": break;
                case "classes": classes = ReadClasses(member.Value, at); break;
                case "allergens": allergens = FigureReader.List(member.Value, at, ReadAllergen); break;
                case "energy": eu = FigureReader.List(member.Value, at, ReadEnergy); break;
                case "usEnergy": us = FigureReader.List(member.Value, at, ReadEnergy); break;
                case "polyols": polyols = FigureReader.List(member.Value, at, ReadEnergy); break;
                case "dryAs": dryAs = FigureReader.List(member.Value, at, ReadDryMatter); break;
                case "notes":
                    foreach (JsonElement note in member.Value.EnumerateArray())
                    {
                        string id = note.GetProperty("id"u8).GetString()!;
                        notes.Add(id, ReadNote(note, FigureReader.Under(at, id)));
                    }

                    break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new LabellingFacts(classes ?? throw FigureReader.Broken(pointer, "needs classes"), allergens, ByName(eu), ByName(us), ByName(polyols), dryAs, notes);
    }

    private static Dictionary<string, Cited<EnergyFactor>> ByName(ValueList<Named> factors) => factors.ToDictionary(f => f.Name, f => f.Factor, StringComparer.Ordinal);

    private static ValueList<string> Strings(JsonElement json, string pointer) => FigureReader.List(json, pointer, (s, _) => s.GetString()!);

    private Cited<ValueList<string>> ReadClasses(JsonElement json, string pointer)
    {
        ValueList<string> are = default;
        FigureReader.Parts parts = Take(json, pointer, m => m.Name == "are" && Set(out are, Strings(m.Value, pointer)));
        return figures.Cite(are, parts, pointer);
    }

    private AllergenFacts ReadAllergen(JsonElement json, string pointer)
    {
        Allergen allergen = default;
        string? name = null;
        ValueList<string> words = default, specify = default, usWords = default;
        Cited<string>? us = null, codex = null, gs1 = null;
        ValueList<Cited<string>> exempt = default;
        FigureReader.Parts parts = Take(json, pointer, m => m.Name switch
        {
            "allergen" => Words.TryAllergen(m.Value.GetString(), out allergen),
            "name" => Set(out name, m.Value.GetString()),
            "words" => Set(out words, Strings(m.Value, pointer)),
            "specify" => Set(out specify, Strings(m.Value, pointer)),
            "us" => Set(out us, figures.Fact(m.Value, pointer)),
            "usWords" => Set(out usWords, Strings(m.Value, pointer)),
            "codex" => Set(out codex, figures.Fact(m.Value, pointer)),
            "gs1" => Set(out gs1, figures.Fact(m.Value, pointer)),
            "exempt" => Set(out exempt, figures.Facts(m.Value, pointer)),
            _ => false,
        });
        return new AllergenFacts(
            allergen, figures.Cite(name ?? throw FigureReader.Broken(pointer, "needs a name"), parts, pointer), words, specify, us, usWords,
            codex ?? throw FigureReader.Broken(pointer, "needs codex"), gs1 ?? throw FigureReader.Broken(pointer, "needs gs1"), exempt);
    }

    private Named ReadEnergy(JsonElement json, string pointer)
    {
        string? name = null;
        double kilojoules = double.NaN, kilocalories = double.NaN;
        FigureReader.Parts parts = Take(json, pointer, m => m.Name switch
        {
            "part" or "entry" => Set(out name, m.Value.GetString()),
            "kJ" => Set(out kilojoules, m.Value.GetDouble()),
            "kcal" => Set(out kilocalories, m.Value.GetDouble()),
            _ => false,
        });
        return new Named(name ?? throw FigureReader.Broken(pointer, "needs a name"), figures.Cite(new EnergyFactor(kilojoules, kilocalories), parts, pointer));
    }

    private DryMatter ReadDryMatter(JsonElement json, string pointer)
    {
        string? part = null;
        ValueList<string> entries = default;
        FigureReader.Parts parts = Take(json, pointer, m => m.Name switch
        {
            "part" => Set(out part, m.Value.GetString()),
            "entries" => Set(out entries, Strings(m.Value, pointer)),
            _ => false,
        });
        return new DryMatter(figures.Cite(part ?? throw FigureReader.Broken(pointer, "needs a part"), parts, pointer), entries);
    }

    private Cited<string> ReadNote(JsonElement json, string pointer)
    {
        FigureReader.Parts parts = Take(json, pointer, m => m.Name == "id");
        return figures.Fact(parts, pointer);
    }

    private static FigureReader.Parts Take(JsonElement json, string pointer, Func<JsonProperty, bool> own)
    {
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            if (!own(member) && !parts.Take(member.Name, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return parts;
    }

    private static bool Set<T>(out T target, T value)
    {
        target = value;
        return true;
    }

    private sealed record Named(string Name, Cited<EnergyFactor> Factor);
}
