using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads an ingredient of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class IngredientReader
{
    private static readonly ItemReader<string> s_name = NameOf;

    private readonly FigureReader _figures;
    private readonly Func<string, IngredientFacts?> _entry;
    private readonly ProfileReader _profiles;
    private readonly FigureReader.Shape _acidities;

    /// <summary>Makes a reader.</summary>
    /// <param name="figures">Reads the figures.</param>
    /// <param name="entry">The facts of the entry that another one is like; null if there is none.</param>
    public IngredientReader(FigureReader figures, Func<string, IngredientFacts?> entry)
    {
        _figures = figures;
        _entry = entry;
        _profiles = new ProfileReader(figures);
        _acidities = FigureReader.Figures<Cited<TitratableAcidity>>(ReadAcidity);
    }

    /// <summary>Reads an entry.</summary>
    /// <param name="json">The entry.</param>
    /// <param name="id">The id that it must have.</param>
    /// <param name="pointer">Where it stands.</param>
    public IngredientFacts Read(ref JsonCursor json, string id, string pointer) => Read(ref json, id, pointer, null);

    private IngredientFacts Read(ref JsonCursor json, string id, string pointer, IngredientFacts? like)
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
        JsonCursor start = json; // read again from here, once it is known what the entry is like
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id" when !json.Is(id): throw FigureReader.Broken(pointer, $"needs the id '{id}'");
                case "id": break;
                case "like" when like is null:
                    like = Like(json.Text(at), pointer);
                    json = start;
                    return Read(ref json, id, pointer, like);
                case "like": break;
                case "name": name = json.Text(at); break;
                case "synonyms": synonyms = FigureReader.List(ref json, at, s_name); break;
                case "category": category = CategoryOf(json.Word(at), at); break;
                case "provenance": provenance = json.Text(at); break;
                case "additive": additive = ReadAdditive(ref json, at); break;
                case "origin": origin = ReadOrigin(ref json, at); break;
                case "diet": (diet, dietCitation) = ReadDiet(ref json, at); break;
                case "allergens": allergens = ReadAllergens(ref json, at); break;
                case "composition": composition = ReadComposition(ref json, at); break;
                case "ph": (ph, phRange) = ReadPh(ref json, at); break;
                case "brix": brix = _figures.NumberWithin(ref json, 0, 100, "°Brix", at); break;
                case "densityKgPerM3": density = _figures.NumberWithin(ref json, 100, 30_000, "kg/m³", at); break;
                case "grade": json.Skip(); break; // that of a lot is no fact of its kind: it is read with the ingredient
                case "titratableAcidity": acidity = ReadAcidity(ref json, at); break;
                case "tannin": tannin = ReadTannin(ref json, at); break;
                case "protease": protease = ReadProtease(ref json, at); break;
                case "milkProtein": milkProtein = ReadMilkProtein(ref json, at); break;
                case "cautions": cautions = _figures.Facts(ref json, at); break;
                case "hydrocolloid": profile = _profiles.Read(ref json, at, from.Profile); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new IngredientFacts(
            string.IsNullOrWhiteSpace(name) ? throw FigureReader.Broken(pointer, "needs a name") : name, synonyms, category, provenance, additive, origin, diet, dietCitation, allergens, composition,
            ph, phRange, brix, density, cautions, profile, tannin, protease, milkProtein, acidity);
    }

    private static string NameOf(ref JsonCursor json, string pointer)
    {
        string name = json.Text(pointer);
        return string.IsNullOrWhiteSpace(name) ? throw FigureReader.Broken(pointer, "must not be empty or blank") : name;
    }

    private static string CategoryOf(string word, string pointer)
        => Words.IsCategory(word) ? word : throw FigureReader.Broken(pointer, $"'{word}' is not a category; there are {Words.CategoryList}");

    private IngredientFacts Like(string id, string pointer)
        => _entry(id) ?? throw FigureReader.Broken(FigureReader.Under(pointer, "like"), $"'{id}' is no entry that it could be like");

    private AdditiveNumbers ReadAdditive(ref JsonCursor json, string pointer)
    {
        ValueList<string> e = default, ins = default;
        Citation? insCitation = null;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "e": e = FigureReader.Strings(ref json, FigureReader.Under(pointer, "e")); break;
                case "ins": ins = FigureReader.Strings(ref json, FigureReader.Under(pointer, "ins")); break;
                case "insRecalled": insCitation = _figures.Recalled(ref json, FigureReader.Under(pointer, "insRecalled")); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        return new AdditiveNumbers(e, ins, _figures.CitationOf(parts, pointer), insCitation);
    }

    private Origin ReadOrigin(ref JsonCursor json, string pointer)
    {
        OriginClass? origin = null;
        var parts = new FigureReader.Parts(FigureReader.OfText);
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "class")
            {
                string at = FigureReader.Under(pointer, word), kind = json.Text(at);
                origin = kind switch
                {
                    "mineral" => OriginClass.Mineral,
                    "plant" => OriginClass.Plant,
                    "seaweed" => OriginClass.Seaweed,
                    "animal" => OriginClass.Animal,
                    "microbial" => OriginClass.Microbial,
                    "synthetic" => OriginClass.Synthetic,
                    _ => throw FigureReader.Broken(at, $"'{kind}' is not a class of origin; there are mineral, plant, seaweed, animal, microbial, synthetic"),
                };
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return new Origin(origin ?? throw FigureReader.Broken(pointer, "needs a class"), _figures.Fact(parts, pointer));
    }

    private (DietaryFacts Facts, Citation Citation) ReadDiet(ref JsonCursor json, string pointer)
    {
        bool? vegan = null, vegetarian = null;
        string? animal = null;
        ValueList<Cited<string>> notes = default;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "vegan": vegan = json.Flag(FigureReader.Under(pointer, word)); break;
                case "vegetarian": vegetarian = json.Flag(FigureReader.Under(pointer, word)); break;
                case "animalSource": animal = json.Text(FigureReader.Under(pointer, word)); break;
                case "notes": notes = _figures.Facts(ref json, FigureReader.Under(pointer, "notes")); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        return vegan == true && vegetarian == false ? throw FigureReader.Broken(pointer, "is vegan and not vegetarian")
            : (new DietaryFacts(vegan, vegetarian, animal, notes), _figures.CitationOf(parts, pointer));
    }

    private Cited<ValueList<Allergen>> ReadAllergens(ref JsonCursor json, string pointer)
    {
        ValueList<Allergen> contains = default;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "contains")
            {
                contains = FigureReader.List(ref json, FigureReader.Under(pointer, "contains"), (ref item, at)
                    => Words.TryAllergen(item.Text(at), out Allergen allergen) ? allergen : throw FigureReader.Broken(at, $"'{item.Text(at)}' is not an allergen; there are {Words.AllergenList}"));
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        for (int i = 1; i < contains.Count; i++)
        {
            for (int before = 0; before < i; before++)
            {
                if (contains[i] == contains[before])
                {
                    throw FigureReader.Broken(FigureReader.Under(FigureReader.Under(pointer, "contains"), i), "is stated twice");
                }
            }
        }

        return _figures.Cite(contains, parts, pointer);
    }

    private Cited<Composition> ReadComposition(ref JsonCursor json, string pointer)
    {
        double? water = null, sugars = null, other = null, fibre = null, protein = null, fat = null, ash = null, ethanol = null, acids = null;
        double? calcium = null, potassium = null, sodium = null, magnesium = null;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "water": water = Grams(ref json, word, pointer); break;
                case "sugars": sugars = Grams(ref json, word, pointer); break;
                case "otherCarbohydrate": other = Grams(ref json, word, pointer); break;
                case "fibre": fibre = Grams(ref json, word, pointer); break;
                case "protein": protein = Grams(ref json, word, pointer); break;
                case "fat": fat = Grams(ref json, word, pointer); break;
                case "ash": ash = Grams(ref json, word, pointer); break;
                case "ethanol": ethanol = Grams(ref json, word, pointer); break;
                case "organicAcids": acids = Grams(ref json, word, pointer); break;
                case "calcium": calcium = Milligrams(ref json, word, pointer); break;
                case "potassium": potassium = Milligrams(ref json, word, pointer); break;
                case "sodium": sodium = Milligrams(ref json, word, pointer); break;
                case "magnesium": magnesium = Milligrams(ref json, word, pointer); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        if (Composition.SumFault(water, sugars, other, fibre, protein, fat, ash, ethanol, acids, calcium, potassium, sodium, magnesium) is { } fault)
        {
            throw FigureReader.Broken(pointer, fault.TrimEnd('.'));
        }

        var composition = Composition.Per100Grams(water, sugars, other, fibre, protein, fat, ash, ethanol, acids, calcium, potassium, sodium, magnesium);
        return _figures.Cite(composition, parts, pointer);
    }

    private static double Grams(ref JsonCursor json, string word, string pointer)
    {
        string at = FigureReader.Under(pointer, word);
        return FigureReader.Within(json.Number(at), 0, 100, "g per 100 g", at);
    }

    private static double Milligrams(ref JsonCursor json, string word, string pointer)
    {
        string at = FigureReader.Under(pointer, word);
        return FigureReader.Within(json.Number(at), 0, 100_000, "mg per 100 g", at);
    }

    private Cited<TanninLevel> ReadTannin(ref JsonCursor json, string pointer)
    {
        TanninLevel? level = null;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "level")
            {
                string at = FigureReader.Under(pointer, word);
                level = Words.TryTanninLevel(json.Text(at), out TanninLevel known) ? known : throw FigureReader.Broken(at, $"'{json.Text(at)}' is not a level; there are {Words.TanninList}");
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return _figures.Cite(level ?? throw FigureReader.Broken(pointer, "needs a level"), parts, pointer);
    }

    private Cited<Protease> ReadProtease(ref JsonCursor json, string pointer)
    {
        string? enzyme = null;
        bool? active = null;
        bool disputed = false;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "enzyme": enzyme = NameOf(ref json, FigureReader.Under(pointer, word)); break;
                case "active": active = json.Flag(FigureReader.Under(pointer, word)); break;
                case "disputed": disputed = json.Flag(FigureReader.Under(pointer, word)); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        return enzyme is not null && active is { } isActive ? _figures.Cite(new Protease(enzyme, isActive, disputed), parts, pointer)
            : throw FigureReader.Broken(pointer, "needs an enzyme and whether it is active");
    }

    private Cited<MilkProtein> ReadMilkProtein(ref JsonCursor json, string pointer)
    {
        bool? casein = null, whey = null;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "casein": casein = json.Flag(FigureReader.Under(pointer, word)); break;
                case "whey": whey = json.Flag(FigureReader.Under(pointer, word)); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        return casein is { } hasCasein && whey is { } hasWhey ? _figures.Cite(new MilkProtein(hasCasein, hasWhey), parts, pointer)
            : throw FigureReader.Broken(pointer, "needs casein and whey");
    }

    private Cited<TitratableAcidity> ReadAcidity(ref JsonCursor json, string pointer)
    {
        string? acid = null;
        var parts = new FigureReader.Parts(_acidities);
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "as")
            {
                string at = FigureReader.Under(pointer, word);
                acid = json.Word(at);
                if (!Words.IsTitratedAcid(acid))
                {
                    throw FigureReader.Broken(at, $"'{acid}' is no acid that an acidity is expressed as; there are {Words.TitratedAcidList}");
                }
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        double percent = FigureReader.Within(FigureReader.ValueOf(parts, pointer), 0, 100, "g per 100 g", pointer);
        return acid is null ? throw FigureReader.Broken(pointer, "needs the acid it is expressed as") : _figures.Cite(new TitratableAcidity(percent, acid), parts, pointer);
    }

    private (Cited<double>? Typical, Cited<NumberRange>? Range) ReadPh(ref JsonCursor json, string pointer)
    {
        FigureReader.Parts parts = FigureReader.PartsOf(_figures.OfRange, ref json, pointer);
        if (parts.Value < parts.Min || parts.Value > parts.Max)
        {
            throw FigureReader.Broken(pointer, "has a value outside its own range");
        }

        return (
            parts.Value is { } typical ? new Cited<double>(FigureReader.Within(typical, 0, 14, "pH", pointer), _figures.CitationOf(parts, pointer), parts.Note) : null,
            _figures.RangeWithin(parts is { Min: null, Max: null } ? parts : parts with { Value = null }, 0, 14, "pH", pointer));
    }
}
