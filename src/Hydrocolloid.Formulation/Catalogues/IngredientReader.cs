using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads an ingredient of a catalogue document (docs/catalogue-format.md).</summary>
/// <param name="figures">Reads the figures.</param>
/// <param name="entry">The facts of the entry that another one is like; null if there is none.</param>
internal sealed class IngredientReader(FigureReader figures, Func<string, IngredientFacts?> entry)
{
    private readonly ProfileReader _profiles = new(figures);

    /// <summary>Reads an entry.</summary>
    /// <param name="json">The entry.</param>
    /// <param name="id">The id that it must have.</param>
    /// <param name="pointer">Where it stands.</param>
    public IngredientFacts Read(JsonElement json, string id, string pointer) => Read(json, id, pointer, null);

    private IngredientFacts Read(JsonElement json, string id, string pointer, IngredientFacts? like)
    {
        // What stands for an entry is what it is like, until it states its own; names and provenance are each entry's own.
        IngredientFacts from = like ?? IngredientFacts.None;
        string? name = null, category = from.Category, provenance = null;
        ValueList<string> synonyms = default;
        AdditiveNumbers? additive = from.Additive;
        Origin? origin = from.Origin;
        DietaryFacts? diet = from.Diet;
        Citation? dietCitation = from.DietCitation;
        Cited<ValueList<Allergen>>? allergens = from.Allergens;
        Cited<Composition>? composition = from.Composition;
        Cited<double>? ph = from.Ph, brix = from.Brix, density = from.DensityKgPerM3;
        Cited<NumberRange>? phRange = from.PhRange;
        ValueList<Cited<string>> cautions = from.Cautions;
        HydrocolloidProfile? profile = from.Profile;
        Cited<TanninLevel>? tannin = from.Tannin;
        Cited<Protease>? protease = from.Protease;
        Cited<MilkProtein>? milkProtein = from.MilkProtein;
        Cited<TitratableAcidity>? acidity = from.TitratableAcidity;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id" when !member.Value.ValueEquals(id): throw FigureReader.Broken(pointer, $"needs the id '{id}'");
                case "id": break;
                case "like" when like is null: return Read(json, id, pointer, Like(member.Value, pointer));
                case "like": break;
                case "name": name = member.Value.GetString(); break;
                case "synonyms": synonyms = Strings(member.Value, at); break;
                case "category": category = WordMemo.Value(member.Value); break;
                case "provenance": provenance = member.Value.GetString(); break;
                case "additive": additive = ReadAdditive(member.Value, at); break;
                case "origin": origin = ReadOrigin(member.Value, at); break;
                case "diet": (diet, dietCitation) = ReadDiet(member.Value, at); break;
                case "allergens": allergens = ReadAllergens(member.Value, at); break;
                case "composition": composition = ReadComposition(member.Value, at); break;
                case "ph": (ph, phRange) = ReadPh(member.Value, at); break;
                case "brix": brix = figures.Number(member.Value, at); break;
                case "densityKgPerM3": density = figures.Number(member.Value, at); break;
                case "titratableAcidity": acidity = ReadAcidity(member.Value, at); break;
                case "tannin": tannin = ReadTannin(member.Value, at); break;
                case "protease": protease = ReadProtease(member.Value, at); break;
                case "milkProtein": milkProtein = ReadMilkProtein(member.Value, at); break;
                case "cautions": cautions = figures.Facts(member.Value, at); break;
                case "hydrocolloid": profile = _profiles.Read(member.Value, at, from.Profile); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new IngredientFacts(
            string.IsNullOrWhiteSpace(name) ? throw FigureReader.Broken(pointer, "needs a name") : name, synonyms, category, provenance, additive, origin, diet, dietCitation, allergens, composition,
            ph, phRange, brix, density, cautions, profile, tannin, protease, milkProtein, acidity);
    }

    private IngredientFacts Like(JsonElement id, string pointer)
        => entry(id.GetString()!) ?? throw FigureReader.Broken(FigureReader.Under(pointer, "like"), $"'{id.GetString()}' is no entry that it could be like");

    private static ValueList<string> Strings(JsonElement json, string pointer) => FigureReader.List(json, pointer, (s, _) => s.GetString()!);

    private AdditiveNumbers ReadAdditive(JsonElement json, string pointer)
    {
        ValueList<string> e = default, ins = default;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "e": e = Strings(member.Value, FigureReader.Under(pointer, "e")); break;
                case "ins": ins = Strings(member.Value, FigureReader.Under(pointer, "ins")); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        return new AdditiveNumbers(e, ins, figures.CitationOf(parts, pointer));
    }

    private Origin ReadOrigin(JsonElement json, string pointer)
    {
        OriginClass? origin = null;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "class")
            {
                origin = member.Value.GetString() switch
                {
                    "mineral" => OriginClass.Mineral,
                    "plant" => OriginClass.Plant,
                    "seaweed" => OriginClass.Seaweed,
                    "animal" => OriginClass.Animal,
                    "microbial" => OriginClass.Microbial,
                    "synthetic" => OriginClass.Synthetic,
                    _ => throw FigureReader.Broken(pointer, "is of no known class"),
                };
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return new Origin(origin ?? throw FigureReader.Broken(pointer, "needs a class"), figures.Fact(parts, pointer));
    }

    private (DietaryFacts Facts, Citation Citation) ReadDiet(JsonElement json, string pointer)
    {
        bool? vegan = null, vegetarian = null;
        string? animal = null;
        ValueList<Cited<string>> notes = default;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "vegan": vegan = member.Value.GetBoolean(); break;
                case "vegetarian": vegetarian = member.Value.GetBoolean(); break;
                case "animalSource": animal = member.Value.GetString(); break;
                case "notes": notes = figures.Facts(member.Value, FigureReader.Under(pointer, "notes")); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        return (new DietaryFacts(vegan, vegetarian, animal, notes), figures.CitationOf(parts, pointer));
    }

    private Cited<ValueList<Allergen>> ReadAllergens(JsonElement json, string pointer)
    {
        ValueList<Allergen> contains = default;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "contains")
            {
                contains = FigureReader.List(member.Value, FigureReader.Under(pointer, "contains"), (a, at)
                    => Words.TryAllergen(a.GetString(), out Allergen allergen) ? allergen : throw FigureReader.Broken(at, "is not an allergen"));
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return new Cited<ValueList<Allergen>>(contains, figures.CitationOf(parts, pointer), parts.Note);
    }

    private Cited<Composition> ReadComposition(JsonElement json, string pointer)
    {
        double? water = null, sugars = null, other = null, fibre = null, protein = null, fat = null, ash = null, ethanol = null, acids = null;
        double? calcium = null, potassium = null, sodium = null, magnesium = null;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "water": water = member.Value.GetDouble(); break;
                case "sugars": sugars = member.Value.GetDouble(); break;
                case "otherCarbohydrate": other = member.Value.GetDouble(); break;
                case "fibre": fibre = member.Value.GetDouble(); break;
                case "protein": protein = member.Value.GetDouble(); break;
                case "fat": fat = member.Value.GetDouble(); break;
                case "ash": ash = member.Value.GetDouble(); break;
                case "ethanol": ethanol = member.Value.GetDouble(); break;
                case "organicAcids": acids = member.Value.GetDouble(); break;
                case "calcium": calcium = member.Value.GetDouble(); break;
                case "potassium": potassium = member.Value.GetDouble(); break;
                case "sodium": sodium = member.Value.GetDouble(); break;
                case "magnesium": magnesium = member.Value.GetDouble(); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        var composition = Composition.Per100Grams(water, sugars, other, fibre, protein, fat, ash, ethanol, acids, calcium, potassium, sodium, magnesium);
        return new Cited<Composition>(composition, figures.CitationOf(parts, pointer), parts.Note);
    }

    private Cited<TanninLevel> ReadTannin(JsonElement json, string pointer)
    {
        TanninLevel? level = null;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "level")
            {
                level = Words.TryTanninLevel(member.Value.GetString(), out TanninLevel known) ? known : throw FigureReader.Broken(pointer, "level must be none, low, moderate or high");
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return figures.Cite(level ?? throw FigureReader.Broken(pointer, "needs a level"), parts, pointer);
    }

    private Cited<Protease> ReadProtease(JsonElement json, string pointer)
    {
        string? enzyme = null;
        bool? active = null;
        bool disputed = false;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "enzyme": enzyme = member.Value.GetString(); break;
                case "active": active = member.Value.GetBoolean(); break;
                case "disputed": disputed = member.Value.GetBoolean(); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        return enzyme is not null && active is { } isActive ? figures.Cite(new Protease(enzyme, isActive, disputed), parts, pointer)
            : throw FigureReader.Broken(pointer, "needs an enzyme and whether it is active");
    }

    private Cited<MilkProtein> ReadMilkProtein(JsonElement json, string pointer)
    {
        bool? casein = null, whey = null;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "casein": casein = member.Value.GetBoolean(); break;
                case "whey": whey = member.Value.GetBoolean(); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        return casein is { } hasCasein && whey is { } hasWhey ? figures.Cite(new MilkProtein(hasCasein, hasWhey), parts, pointer)
            : throw FigureReader.Broken(pointer, "needs casein and whey");
    }

    private Cited<TitratableAcidity> ReadAcidity(JsonElement json, string pointer)
    {
        string? acid = null;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "as")
            {
                acid = WordMemo.Value(member.Value);
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        double percent = Guard.InRange(parts.Value ?? throw FigureReader.Broken(pointer, "needs a value"), 0, 100, "g per 100 g");
        return figures.Cite(new TitratableAcidity(percent, acid ?? throw FigureReader.Broken(pointer, "needs the acid it is expressed as")), parts, pointer);
    }

    private (Cited<double>? Typical, Cited<NumberRange>? Range) ReadPh(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return (
            parts.Value is { } typical ? new Cited<double>(Guard.InRange(typical, 0, 14, "pH"), figures.CitationOf(parts, pointer), parts.Note) : null,
            figures.Range(parts, pointer));
    }
}
