namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the document on labels (docs/catalogue-format.md).</summary>
internal sealed class LabellingReader(FigureReader figures)
{
    public LabellingFacts Read(ref JsonCursor json, string pointer)
    {
        Cited<ValueList<string>>? classes = null;
        ValueList<AllergenFacts> allergens = default;
        ValueList<DryMatter> dryAs = default;
        ValueList<Named> eu = default, us = default, polyols = default;
        ValueList<(string Id, Cited<string> Fact)> notes = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "format" or "version": break;
                case "classes": classes = ReadClasses(ref json, at); break;
                case "allergens": allergens = FigureReader.List(ref json, at, ReadAllergen); break;
                case "energy": eu = FigureReader.List(ref json, at, ReadEnergy); break;
                case "usEnergy": us = FigureReader.List(ref json, at, ReadEnergy); break;
                case "polyols": polyols = FigureReader.List(ref json, at, ReadEnergy); break;
                case "dryAs": dryAs = FigureReader.List(ref json, at, ReadDryMatter); break;
                case "notes": notes = FigureReader.List(ref json, at, ReadNote); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new LabellingFacts(classes ?? throw FigureReader.Broken(pointer, "needs classes"), allergens, ByName(eu), ByName(us), ByName(polyols), dryAs, notes.ToDictionary(n => n.Id, n => n.Fact, StringComparer.Ordinal));
    }

    private static Dictionary<string, Cited<EnergyFactor>> ByName(ValueList<Named> factors) => factors.ToDictionary(f => f.Name, f => f.Factor, StringComparer.Ordinal);

    private Cited<ValueList<string>> ReadClasses(ref JsonCursor json, string pointer)
    {
        ValueList<string> are = default;
        FigureReader.Parts parts = Take(ref json, pointer, (word, ref value) => word == "are" && Set(out are, FigureReader.Strings(ref value, pointer)));
        return figures.Cite(are, parts, pointer);
    }

    private AllergenFacts ReadAllergen(ref JsonCursor json, string pointer)
    {
        Allergen allergen = default;
        string? name = null;
        ValueList<string> words = default, specify = default, usWords = default;
        Cited<string>? us = null, codex = null, gs1 = null;
        ValueList<Cited<string>> exempt = default;
        FigureReader.Parts parts = Take(ref json, pointer, (word, ref value) => word switch
        {
            "allergen" => Words.TryAllergen(value.Text(pointer), out allergen),
            "name" => Set(out name, value.Text(pointer)),
            "words" => Set(out words, FigureReader.Strings(ref value, pointer)),
            "specify" => Set(out specify, FigureReader.Strings(ref value, pointer)),
            "us" => Set(out us, figures.Fact(ref value, pointer)),
            "usWords" => Set(out usWords, FigureReader.Strings(ref value, pointer)),
            "codex" => Set(out codex, figures.Fact(ref value, pointer)),
            "gs1" => Set(out gs1, figures.Fact(ref value, pointer)),
            "exempt" => Set(out exempt, figures.Facts(ref value, pointer)),
            _ => false,
        });
        return new AllergenFacts(
            allergen, figures.Cite(name ?? throw FigureReader.Broken(pointer, "needs a name"), parts, pointer), words, specify, us, usWords,
            codex ?? throw FigureReader.Broken(pointer, "needs codex"), gs1 ?? throw FigureReader.Broken(pointer, "needs gs1"), exempt);
    }

    private Named ReadEnergy(ref JsonCursor json, string pointer)
    {
        string? name = null;
        double kilojoules = double.NaN, kilocalories = double.NaN;
        FigureReader.Parts parts = Take(ref json, pointer, (word, ref value) => word switch
        {
            "part" or "entry" => Set(out name, value.Text(pointer)),
            "kJ" => Set(out kilojoules, value.Number(pointer)),
            "kcal" => Set(out kilocalories, value.Number(pointer)),
            _ => false,
        });
        return new Named(name ?? throw FigureReader.Broken(pointer, "needs a name"), figures.Cite(new EnergyFactor(kilojoules, kilocalories), parts, pointer));
    }

    private DryMatter ReadDryMatter(ref JsonCursor json, string pointer)
    {
        string? part = null;
        ValueList<string> entries = default;
        FigureReader.Parts parts = Take(ref json, pointer, (word, ref value) => word switch
        {
            "part" => Set(out part, value.Text(pointer)),
            "entries" => Set(out entries, FigureReader.Strings(ref value, pointer)),
            _ => false,
        });
        return new DryMatter(figures.Cite(part ?? throw FigureReader.Broken(pointer, "needs a part"), parts, pointer), entries);
    }

    private (string Id, Cited<string> Fact) ReadNote(ref JsonCursor json, string pointer)
    {
        string? id = null;
        FigureReader.Parts parts = Take(ref json, pointer, (word, ref value) => word == "id" && Set(out id, value.Text(pointer)), FigureReader.OfText);
        return (id ?? throw FigureReader.Broken(pointer, "needs an id"), figures.Fact(parts, pointer));
    }

    private static FigureReader.Parts Take(ref JsonCursor json, string pointer, OwnMember own, FigureReader.Shape? shape = null)
    {
        var parts = new FigureReader.Parts(shape);
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (!own(word, ref json))
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return parts;
    }

    private static bool Set<T>(out T target, T value)
    {
        target = value;
        return true;
    }

    /// <summary>Takes a member that is not of every figure; false if it is none.</summary>
    private delegate bool OwnMember(string word, ref JsonCursor value);

    private sealed record Named(string Name, Cited<EnergyFactor> Factor);
}
