using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Writes a formula as a document, in the one order of members and with the units of the library. Nothing is dropped: what no document can hold throws before anything is written.</summary>
internal sealed class DocumentWriter
{
    private static readonly JsonEncodedText Format = JsonEncodedText.Encode("format");
    private static readonly JsonEncodedText FormatName = JsonEncodedText.Encode(DocumentLimits.Format);
    private static readonly JsonEncodedText Version = JsonEncodedText.Encode("version");
    private static readonly JsonEncodedText Name = JsonEncodedText.Encode("name");
    private static readonly JsonEncodedText Base = JsonEncodedText.Encode("base");
    private static readonly JsonEncodedText Phases = JsonEncodedText.Encode("phases");
    private static readonly JsonEncodedText Add = JsonEncodedText.Encode("add");
    private static readonly JsonEncodedText IngredientId = JsonEncodedText.Encode("ingredient");
    private static readonly JsonEncodedText Percent = JsonEncodedText.Encode("percent");
    private static readonly JsonEncodedText Of = JsonEncodedText.Encode("of");
    private static readonly JsonEncodedText Line = JsonEncodedText.Encode("line");
    private static readonly JsonEncodedText Preceding = JsonEncodedText.Encode("preceding");
    private static readonly JsonEncodedText Total = JsonEncodedText.Encode("total");
    private static readonly JsonEncodedText Water = JsonEncodedText.Encode("water");
    private static readonly JsonEncodedText Value = JsonEncodedText.Encode("value");
    private static readonly JsonEncodedText Unit = JsonEncodedText.Encode("unit");

    private readonly Formula _formula;
    private readonly Catalogue _catalogue;
    private Dictionary<string, Ingredient>? _own;
    private List<FormulaDto.Own>? _described;
    private HashSet<string>? _ownLabels;

    /// <summary>Gets everything ready, so that writing itself cannot fail.</summary>
    /// <exception cref="FormulaJsonException">No document can hold the formula.</exception>
    public DocumentWriter(Formula formula, Catalogue catalogue)
    {
        _formula = formula;
        _catalogue = catalogue;
        CheckLines();
        CheckTexts();
        DescribeOwn();
    }

    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString(Format, FormatName);
        json.WriteNumber(Version, DocumentLimits.Version);
        json.WriteString(Name, _formula.Name);
        json.WriteStartArray(Base);
        foreach (BasePart part in _formula.Base.Parts.Span)
        {
            json.WriteStartObject();
            json.WriteString(IngredientId, part.Ingredient.Id);
            json.WriteNumber(Percent, part.PercentOfBase);
            WriteDetails(json, part.Details);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (!_formula.Phases.IsEmpty)
        {
            WritePhases(json);
        }

        if (!_formula.Process.IsEmpty)
        {
            WriteProcess(json, _formula.Process);
        }

        if (!_formula.Service.IsEmpty)
        {
            WriteService(json, _formula.Service);
        }

        if (_described is not null)
        {
            json.WriteStartArray("ingredients"u8);
            foreach (FormulaDto.Own own in _described)
            {
                WriteOwn(json, own);
            }

            json.WriteEndArray();
        }

        WriteExtensions(json, _formula.Extensions?.Json);
        json.WriteEndObject();
    }

    internal static void WriteQuantity(Utf8JsonWriter json, string name, double? value, QuantityKind kind)
    {
        if (value is { } v)
        {
            json.WriteStartObject(name);
            json.WriteNumber(Value, v);
            json.WriteString(Unit, DocumentChecks.BaseCode(kind));
            json.WriteEndObject();
        }
    }

    internal static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v && !double.IsNaN(v))
        {
            json.WriteNumber(name, v);
        }
    }

    internal static void WriteFlag(Utf8JsonWriter json, string name, bool? value)
    {
        if (value is { } v)
        {
            json.WriteBoolean(name, v);
        }
    }

    private static void WriteText(Utf8JsonWriter json, string name, string? value)
    {
        if (value is not null)
        {
            json.WriteString(name, value);
        }
    }

    private static void WriteList(Utf8JsonWriter json, string name, List<string>? words)
    {
        if (words is not null)
        {
            json.WriteStartArray(name);
            foreach (string word in words)
            {
                json.WriteStringValue(word);
            }

            json.WriteEndArray();
        }
    }

    private static void WriteExtensions(Utf8JsonWriter json, JsonElement? extensions)
    {
        if (extensions is { ValueKind: JsonValueKind.Object } e)
        {
            json.WritePropertyName("extensions"u8);
            e.WriteTo(json);
        }
    }

    private static void WriteDetails(Utf8JsonWriter json, LineDetails details)
    {
        if (ReferenceEquals(details, LineDetails.None))
        {
            return;
        }

        WriteText(json, "label", details.Label);
        if (details.Form != LineForm.Mix)
        {
            json.WriteString("form"u8, Words.Of(details.Form));
        }

        WriteQuantity(json, "temperature", details.Celsius, QuantityKind.Temperature);
        if (details.Measured is { } measured)
        {
            json.WriteStartObject("measured"u8);
            WriteNumber(json, "ph", measured.Ph);
            WriteNumber(json, "brix", measured.Brix);
            WriteQuantity(json, "density", measured.DensityKgPerM3, QuantityKind.Density);
            json.WriteEndObject();
        }

        WriteExtensions(json, details.Extensions?.Json);
    }

    private static void WriteProcess(Utf8JsonWriter json, ProcessPlan process)
    {
        json.WriteStartObject("process"u8);
        WriteWords(json, "carriers", process.Carriers);
        WriteQuantity(json, "altitude", process.AltitudeMetres, QuantityKind.Length);
        WriteQuantity(json, "soakAt", process.SoakAtCelsius, QuantityKind.Temperature);
        WriteQuantity(json, "hydrateAt", process.HydrateAtCelsius, QuantityKind.Temperature);
        WriteQuantity(json, "hydrateFor", process.HydrateSeconds, QuantityKind.Duration);
        if (process.Losses != Losses.None)
        {
            json.WriteStartObject("losses"u8);
            WriteLoss(json, "evaporation", process.Losses.Evaporation);
            WriteFlag(json, "toppedUp", process.Losses.ToppedUp ? true : null);
            WriteLoss(json, "straining", process.Losses.Straining);
            WriteLoss(json, "transfer", process.Losses.Transfer);
            WriteLoss(json, "trimming", process.Losses.Trimming);
            json.WriteEndObject();
        }

        if (process.Mould is { } mould)
        {
            json.WriteStartObject("mould"u8);
            json.WriteString(Name, mould.Name);
            WriteQuantity(json, "volume", mould.Millilitres, QuantityKind.Volume);
            if (mould.Shape is { } shape)
            {
                json.WriteStartObject("shape"u8);
                json.WriteString("form"u8, Words.Of(shape.Form));
                string[] measures = MouldShapeReader.Measures(shape.Form);
                double[] metres = MouldShapeReader.MetresOf(shape);
                for (int i = 0; i < measures.Length; i++)
                {
                    WriteQuantity(json, measures[i], metres[i], QuantityKind.Length);
                }

                json.WriteEndObject();
            }

            WriteNumber(json, "cavities", mould.Cavities > 1 ? mould.Cavities : null);
            WriteQuantity(json, "headspace", mould.HeadspaceMetres > 0 ? mould.HeadspaceMetres : null, QuantityKind.Length);
            json.WriteEndObject();
        }

        WriteQuantity(json, "castAt", process.CastAtCelsius, QuantityKind.Temperature);
        if (!process.Cooling.IsEmpty)
        {
            json.WriteStartArray("cooling"u8);
            foreach (CoolingStage stage in process.Cooling.Span)
            {
                json.WriteStartObject();
                json.WriteString(Name, stage.Name);
                WriteQuantity(json, "temperature", stage.Celsius, QuantityKind.Temperature);
                WriteQuantity(json, "duration", stage.Seconds, QuantityKind.Duration);
                WriteText(json, "medium", stage.Medium?.Id);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void WriteLoss(Utf8JsonWriter json, string name, Loss loss)
    {
        if (loss.IsNone)
        {
            return;
        }

        if (loss.Grams > 0)
        {
            WriteQuantity(json, name, loss.Grams, QuantityKind.Mass);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNumber(Percent, loss.PercentOfStep);
        json.WriteEndObject();
    }

    private static void WriteService(Utf8JsonWriter json, ServicePlan service)
    {
        json.WriteStartObject("service"u8);
        WriteText(json, "texture", service.Texture is { } texture ? Words.Of(texture) : null);
        WriteQuantity(json, "servedAt", service.ServedAtCelsius, QuantityKind.Temperature);
        WriteQuantity(json, "heldFor", service.HeldSeconds, QuantityKind.Duration);
        WriteQuantity(json, "storedFor", service.StoredSeconds, QuantityKind.Duration);
        WriteFlag(json, "covered", service.Covered);
        WriteFlag(json, "frozen", service.Frozen);
        WriteQuantity(json, "portion", service.PortionGrams, QuantityKind.Mass);
        WriteText(json, "shape", service.Shape is { } shape ? Words.Of(shape) : null);
        WriteFlag(json, "clear", service.Clear);
        WriteFlag(json, "packaged", service.Packaged);
        WriteText(json, "audience", service.Audience is { } audience ? Words.Of(audience) : null);
        WriteText(json, "market", service.Market is { } market ? Words.Of(market) : null);
        WriteText(json, "foodCategory", service.FoodCategory);
        WriteWords(json, "diets", service.Diets.Select(Words.Of));
        WriteWords(json, "freeFrom", service.FreeFrom.Select(Words.Of));
        json.WriteEndObject();
    }

    private static void WriteWords(Utf8JsonWriter json, string name, IEnumerable<string> words)
    {
        bool started = false;
        foreach (string word in words)
        {
            if (!started)
            {
                json.WriteStartArray(name);
                started = true;
            }

            json.WriteStringValue(word);
        }

        if (started)
        {
            json.WriteEndArray();
        }
    }

    private static void WriteOwn(Utf8JsonWriter json, FormulaDto.Own own)
    {
        json.WriteStartObject();
        json.WriteString("id"u8, own.Id);
        WriteText(json, "name", own.Name);
        WriteText(json, "like", own.Like);
        WriteList(json, "synonyms", own.Synonyms);
        if (own.Composition is { } parts)
        {
            json.WriteStartObject("compositionPer100g"u8);
            WriteNumber(json, "water", parts.Water);
            WriteNumber(json, "sugars", parts.Sugars);
            WriteNumber(json, "otherCarbohydrate", parts.OtherCarbohydrate);
            WriteNumber(json, "fibre", parts.Fibre);
            WriteNumber(json, "protein", parts.Protein);
            WriteNumber(json, "fat", parts.Fat);
            WriteNumber(json, "ash", parts.Ash);
            WriteNumber(json, "ethanol", parts.Ethanol);
            WriteNumber(json, "organicAcids", parts.OrganicAcids);
            WriteNumber(json, "calcium", parts.Calcium);
            WriteNumber(json, "potassium", parts.Potassium);
            WriteNumber(json, "sodium", parts.Sodium);
            WriteNumber(json, "magnesium", parts.Magnesium);
            json.WriteEndObject();
        }

        WriteNumber(json, "ph", own.Ph);
        WriteNumber(json, "brix", own.Brix);
        WriteQuantity(json, "density", own.Density?.Value, QuantityKind.Density);
        WriteText(json, "category", own.Category);
        if (own.TitratableAcidity is { } acidity)
        {
            json.WriteStartObject("titratableAcidity"u8);
            json.WriteNumber("percent"u8, acidity.Percent);
            json.WriteString("as"u8, acidity.As);
            json.WriteEndObject();
        }

        WriteText(json, "tannin", own.Tannin);
        if (own.Protease is { } protease)
        {
            json.WriteStartObject("protease"u8);
            json.WriteString("enzyme"u8, protease.Enzyme);
            json.WriteBoolean("active"u8, protease.Active);
            if (protease.Disputed)
            {
                json.WriteBoolean("disputed"u8, true);
            }

            json.WriteEndObject();
        }

        if (own.MilkProtein is { } milk)
        {
            json.WriteStartObject("milkProtein"u8);
            json.WriteBoolean("casein"u8, milk.Casein);
            json.WriteBoolean("whey"u8, milk.Whey);
            json.WriteEndObject();
        }

        WriteList(json, "allergens", own.Allergens);
        WriteText(json, "enzymes", own.Enzymes);
        WriteFlag(json, "vegan", own.Vegan);
        WriteFlag(json, "vegetarian", own.Vegetarian);
        if (own.Grade is { } grade)
        {
            json.WriteStartObject("grade"u8);
            json.WriteString("scale"u8, grade.Scale);
            json.WriteNumber(Value, grade.Value);
            json.WriteEndObject();
        }

        WriteExtensions(json, own.Extensions);
        json.WriteEndObject();
    }

    internal static void CheckText(string text, string pointer)
    {
        if (!UnicodeText.IsWhole(text))
        {
            throw FormulaJsonException.Unwritable("text-invalid", pointer, $"{UnitTable.Quote(text)} holds half of a surrogate pair, which is not text.");
        }
    }

    private static void CheckExtensions(ExtensionData? extensions, int levelsAround, string pointer)
    {
        if (extensions is not null && !Fits(extensions.Json, JsonLimits.MaxDepth - levelsAround))
        {
            throw FormulaJsonException.Unwritable("too-deep", pointer + "/extensions",
                $"With the extension data the document is more than {Numbers.Exact(JsonLimits.MaxDepth)} levels deep.");
        }
    }

    private static bool Fits(JsonElement json, int levels)
    {
        if (json.ValueKind == JsonValueKind.Object)
        {
            foreach (JsonProperty member in json.EnumerateObject())
            {
                if (levels < 1 || !Fits(member.Value, levels - 1))
                {
                    return false;
                }
            }
        }
        else if (json.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement item in json.EnumerateArray())
            {
                if (levels < 1 || !Fits(item, levels - 1))
                {
                    return false;
                }
            }
        }

        return levels >= 1 || json.ValueKind is not (JsonValueKind.Object or JsonValueKind.Array);
    }

    private void WritePhases(Utf8JsonWriter json)
    {
        json.WriteStartArray(Phases);
        foreach (Phase phase in _formula.Phases.Span)
        {
            json.WriteStartObject();
            json.WriteString(Name, phase.Name);
            json.WriteStartArray(Add);
            foreach (Addition addition in phase.Additions.Span)
            {
                json.WriteStartObject();
                json.WriteString(IngredientId, addition.Ingredient.Id);
                json.WriteNumber(Percent, addition.Dose.PercentByMass);
                WriteReference(json, addition.Dose.Reference);
                WriteDetails(json, addition.Details);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteReference(Utf8JsonWriter json, DoseReference reference)
    {
        if (reference.Kind == DoseReferenceKind.Line)
        {
            json.WriteStartObject(Of);
            json.WriteString(_ownLabels is not null && _ownLabels.Contains(reference.Label!) ? Line : IngredientId, reference.Label);
            json.WriteEndObject();
            return;
        }

        json.WriteString(Of, reference.Kind switch
        {
            DoseReferenceKind.Base => Base,
            DoseReferenceKind.Preceding => Preceding,
            DoseReferenceKind.Total => Total,
            _ => Water,
        });
    }

    private void CheckLines()
    {
        foreach (FormulaLine line in _formula.Lines.Span)
        {
            Ingredient ingredient = line.Ingredient;
            LineDetails details = line.Details;
            if (!(_catalogue.TryGet(ingredient.Id, out Ingredient? known) && (ReferenceEquals(known, ingredient) || known.Equals(ingredient))))
            {
                AddOwn(ingredient, line);
            }

            if (ReferenceEquals(details, LineDetails.None))
            {
                continue;
            }

            if (details.Label is { } label)
            {
                CheckText(label, _formula.PointerOf(line) + "/label");
                (_ownLabels ??= new HashSet<string>(StringComparer.Ordinal)).Add(label);
            }

            if (details.Extensions is { } extensions)
            {
                CheckExtensions(extensions, line.IsBase ? 3 : 5, _formula.PointerOf(line));
            }
        }

        if (_own is null)
        {
            return;
        }

        foreach (FormulaLine line in _formula.Lines.Span)
        {
            CheckMeaning(line.Ingredient, line);
            if (line.Ingredient.BasedOn is { } root && root.Id != line.Ingredient.Id)
            {
                CheckMeaning(root, line);
            }
        }
    }

    private void CheckMeaning(Ingredient ingredient, FormulaLine line)
    {
        if (_own!.TryGetValue(ingredient.Id, out Ingredient? own) && !own.Equals(ingredient))
        {
            throw FormulaJsonException.Unwritable("ingredient-repeated", _formula.PointerOf(line) + "/ingredient",
                $"Two ingredients that differ have the id '{ingredient.Id}'; give one of them an id of its own.");
        }
    }

    private void AddOwn(Ingredient ingredient, FormulaLine line)
    {
        if (!ingredient.IsKnown)
        {
            if (!ingredient.Equals(Ingredient.Unknown(ingredient.Id)))
            {
                throw Unstatable(ingredient, line, "it is known only by its id, so a document can hold nothing else about it; describe it with Ingredient.Own");
            }

            return;
        }

        _own ??= new Dictionary<string, Ingredient>(StringComparer.Ordinal);
        if (ingredient.BasedOn is { } root && root.Id != ingredient.Id && !_own.ContainsKey(root.Id)
            && !(_catalogue.TryGet(root.Id, out Ingredient? known) && known.Equals(root)))
        {
            _own.Add(root.Id, root);
        }

        if (!_own.TryGetValue(ingredient.Id, out _))
        {
            _own.Add(ingredient.Id, ingredient);
        }
    }

    private FormulaJsonException Unstatable(Ingredient ingredient, FormulaLine? line, string why)
        => FormulaJsonException.Unwritable("ingredient-unstatable", line is null ? "/ingredients" : _formula.PointerOf(line) + "/ingredient",
            $"The ingredient '{ingredient.Id}' cannot be written: {why}.");

    private void DescribeOwn()
    {
        if (_own is null)
        {
            return;
        }

        _described = [];
        foreach (KeyValuePair<string, Ingredient> own in _own)
        {
            string at = "/ingredients/" + Numbers.Exact(_described.Count);
            CheckText(own.Value.Name, at + "/name");
            for (int i = 0; i < own.Value.Synonyms.Count; i++)
            {
                CheckText(own.Value.Synonyms[i], at + "/synonyms/" + Numbers.Exact(i));
            }

            CheckText(own.Value.Protease?.Value.Enzyme ?? "", at + "/protease/enzyme");
            CheckExtensions(own.Value.Extensions, 3, at);
            _described.Add(Describe(own.Value) ?? throw Unstatable(own.Value, null,
                "it holds facts beyond those a document states (such as how it gels) that come neither from the catalogue nor from an ingredient it is based on"));
        }
    }

    /// <summary>The words that read back as this very ingredient; null if there are none.</summary>
    private FormulaDto.Own? Describe(Ingredient ingredient)
    {
        _catalogue.TryGet(ingredient.Id, out Ingredient? same);
        if (ingredient.BasedOn is not { } root)
        {
            FormulaDto.Own alone = OwnIngredients.Differences(ingredient, null);
            if (ReadsBack(alone, Ingredient.Own(ingredient.Id, ingredient.Name), ingredient))
            {
                return alone;
            }

            FormulaDto.Own? changed = same is null ? null : OwnIngredients.Differences(ingredient, same);
            return changed is not null && ReadsBack(changed, same!, ingredient) ? changed : null;
        }

        Ingredient? like = root.Id == ingredient.Id ? same
            : _own!.TryGetValue(root.Id, out Ingredient? own) ? own
            : _catalogue.TryGet(root.Id, out Ingredient? known) ? known : null;
        FormulaDto.Own? differences = like is null ? null : OwnIngredients.Differences(ingredient, like);
        return differences is not null && ReadsBack(differences, like!.As(ingredient.Id, ingredient.Name), ingredient) ? differences : null;
    }

    private static bool ReadsBack(FormulaDto.Own dto, Ingredient start, Ingredient wanted)
    {
        var checks = new DocumentChecks();
        Ingredient read = OwnIngredients.Describe(start, dto, DocumentPlace.Whole, checks);
        return checks.Problems.Count == 0 && read.Equals(wanted);
    }

    private void CheckTexts()
    {
        CheckText(_formula.Name, "/name");
        for (int p = 0; p < _formula.Phases.Count; p++)
        {
            if (!UnicodeText.IsWhole(_formula.Phases[p].Name))
            {
                CheckText(_formula.Phases[p].Name, "/phases/" + Numbers.Exact(p) + "/name");
            }
        }

        ProcessPlan process = _formula.Process;
        CheckText(process.Mould?.Name ?? "", "/process/mould/name");
        for (int i = 0; i < process.Cooling.Count; i++)
        {
            CheckText(process.Cooling[i].Name, "/process/cooling/" + Numbers.Exact(i) + "/name");
        }

        if (_formula.Service.Texture is { } texture and not (>= Texture.FluidGel and <= Texture.Modifier))
        {
            throw FormulaJsonException.Unwritable("word-unknown", "/service/texture", $"{Numbers.Exact((int)texture)} is not a defined texture.");
        }

        CheckExtensions(_formula.Extensions, 1, "");
    }
}
