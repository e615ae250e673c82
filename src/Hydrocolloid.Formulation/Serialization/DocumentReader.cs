using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Makes a formula of a parsed document. Every problem is found, none throws.</summary>
internal sealed class DocumentReader
{
    private static readonly Dictionary<string, (Ingredient Ingredient, int Index)> NoOwn = [];
    private static readonly HashSet<string> NoneUsed = [];

    private readonly FormulaDto _document;
    private readonly Catalogue _catalogue;
    private readonly DocumentChecks _checks = new();
    private readonly Dictionary<string, (Ingredient Ingredient, int Index)> _own;
    private readonly HashSet<string> _used;
    private HashSet<string>? _ownLabels;
    private List<(string Id, DocumentPlace At)>? _ingredientReferences;

    private DocumentReader(FormulaDto document, Catalogue catalogue)
    {
        _document = document;
        _catalogue = catalogue;
        bool hasOwn = document.Ingredients is { Count: > 0 };
        _own = hasOwn ? new Dictionary<string, (Ingredient Ingredient, int Index)>(StringComparer.Ordinal) : NoOwn;
        _used = hasOwn ? new HashSet<string>(StringComparer.Ordinal) : NoneUsed;
    }

    /// <summary>The formula, or null and every problem.</summary>
    /// <exception cref="JsonException">A list holds null.</exception>
    public static Formula? Read(FormulaDto document, Catalogue catalogue, out List<FormulaJsonProblem> problems)
    {
        var reader = new DocumentReader(document, catalogue);
        Formula? formula = reader.Read();
        problems = reader._checks.Problems;
        return problems.Count == 0 ? formula : null;
    }

    private static T NotNull<T>(T? item)
        where T : class
        => item ?? throw new JsonException();

    private Formula? Read()
    {
        if (_document.Ingredients is { Count: > 0 } own)
        {
            ReadOwn(own);
        }

        var builder = new FormulaBuilder(_document.Name);
        List<FormulaDto.Part> parts = _document.Base;
        builder.BaseLines.Capacity = parts.Count;
        for (int i = 0; i < parts.Count; i++)
        {
            builder.BaseLines.Add(Line(NotNull(parts[i]), DoseReference.Base, DocumentPlace.Part(i)));
        }

        List<FormulaDto.Phase>? phases = _document.Phases;
        for (int p = 0; p < phases?.Count; p++)
        {
            FormulaDto.Phase phase = NotNull(phases[p]);
            var draft = new DraftPhase(phase.Name);
            draft.Lines.Capacity = phase.Add.Count;
            for (int i = 0; i < phase.Add.Count; i++)
            {
                FormulaDto.Addition addition = NotNull(phase.Add[i]);
                DocumentPlace at = DocumentPlace.Addition(p, i);
                draft.Lines.Add(Line(addition, addition.Of.Value, at));
                if (addition.Of.IsIngredient)
                {
                    (_ingredientReferences ??= []).Add((addition.Of.Value.Label!, at));
                }
            }

            builder.PhaseDrafts.Add(draft);
        }

        CheckReferences();
        if (_document.Process is { } process)
        {
            builder.Process(Process(process));
        }

        if (_document.Service is { } service)
        {
            builder.Serve(Service(service));
        }

        builder.WithExtensions(_checks.Extensions(_document.Extensions, DocumentPlace.Whole, "/extensions"));
        foreach (KeyValuePair<string, (Ingredient Ingredient, int Index)> described in _own)
        {
            if (!_used.Contains(described.Key))
            {
                _checks.Report("ingredient-unused", DocumentPlace.Item("/ingredients", described.Value.Index), "", $"No line uses '{described.Key}'; a formula keeps only what it uses.");
            }
        }

        if (!builder.TryBuild(out Formula? formula, out ValueList<FormulaProblem> problems))
        {
            foreach (FormulaProblem problem in problems)
            {
                _checks.Problems.Add(new FormulaJsonProblem(problem.Id, problem.Pointer, problem.Message, problem));
            }
        }

        return formula;
    }

    private DraftLine Line(FormulaDto.Part line, DoseReference reference, in DocumentPlace at)
    {
        if (line.Label is { } own)
        {
            (_ownLabels ??= new HashSet<string>(StringComparer.Ordinal)).Add(own);
        }

        return new DraftLine(Ingredient(line.Ingredient, at), line.Percent, null, reference, Details(line, at));
    }

    private Ingredient Ingredient(string id, in DocumentPlace at)
    {
        if (_own.Count > 0 && _own.TryGetValue(id, out (Ingredient Ingredient, int Index) own))
        {
            _used.Add(id);
            return own.Ingredient;
        }

        if (_catalogue.TryGet(id, out Ingredient? known))
        {
            return known;
        }

        _checks.Id(id, at, "/ingredient");
        return Formulation.Ingredient.Unknown(id);
    }

    private LineDetails Details(FormulaDto.Part line, in DocumentPlace at)
    {
        if (line.Label is null && line.Form is null && line.Temperature is null && line.Measured is null && line.Extensions.ValueKind == JsonValueKind.Undefined)
        {
            return LineDetails.None;
        }

        LineForm form = default;
        if (line.Form is not null && !Words.TryForm(line.Form, out form))
        {
            _checks.Unknown(line.Form, Words.FormList, at, "/form");
        }

        return new LineDetails
        {
            Label = _checks.Words(line.Label, at, "/label"),
            Form = form,
            Temperature = Temperature(line.Temperature, at, "/temperature"),
            Measured = line.Measured is { } measured ? Measured(measured, at) : null,
            Extensions = _checks.Extensions(line.Extensions, at, "/extensions"),
        };
    }

    private Measurements Measured(FormulaDto.Measured measured, in DocumentPlace at) => new()
    {
        Ph = _checks.Number(measured.Ph, 0, 14, "pH", at, "/measured/ph"),
        Brix = _checks.Number(measured.Brix, 0, 100, "°Brix", at, "/measured/brix"),
        Density = _checks.Quantity(measured.Density, QuantityKind.Density, 100, 30_000, at, "/measured/density") is { } density
            ? Density.FromKilogramsPerCubicMeter(density) : null,
    };

    /// <summary>A reference to an ingredient means its line without a label of its own, never another line that carries the id as its label.</summary>
    private void CheckReferences()
    {
        if (_ownLabels is null || _ingredientReferences is null)
        {
            return;
        }

        foreach ((string id, DocumentPlace at) in _ingredientReferences)
        {
            if (_ownLabels.Contains(id))
            {
                _checks.Report("reference-unclear", at, "/of",
                    $"'{id}' is the label of a line; refer to that line with {{ \"line\": \"{id}\" }}, or to the line of the ingredient by a label of its own.");
            }
        }
    }

    private ProcessPlan Process(FormulaDto.ProcessPart process)
    {
        DocumentPlace at = DocumentPlace.Whole;
        foreach (string carrier in process.Carriers ?? [])
        {
            NotNull(carrier);
        }

        return new ProcessPlan
        {
            Carriers = process.Carriers is { } carriers ? ValueList<string>.From(carriers) : default,
            Altitude = _checks.Quantity(process.Altitude, QuantityKind.Length, -500, 9000, at, "/process/altitude") is { } metres ? Length.FromMeters(metres) : null,
            SoakAt = Temperature(process.SoakAt, at, "/process/soakAt"),
            HydrateAt = Temperature(process.HydrateAt, at, "/process/hydrateAt"),
            HydrateFor = Duration(process.HydrateFor, at, "/process/hydrateFor"),
            Losses = process.Losses is { } losses ? Losses(losses) : Formulation.Losses.None,
            Mould = process.Mould is { } mould ? Mould(mould) : null,
            CastAt = Temperature(process.CastAt, at, "/process/castAt"),
            Cooling = process.Cooling is { } cooling ? Cooling(cooling) : default,
        };
    }

    private MouldPlan? Mould(FormulaDto.MouldPart mould)
    {
        const string path = "/process/mould";
        DocumentPlace at = DocumentPlace.Whole;
        string? name = _checks.Words(mould.Name, at, path + "/name");
        double? millilitres = _checks.Quantity(mould.Volume, QuantityKind.Volume, 0, 1e9, at, path + "/volume");
        double? cavities = _checks.Number(mould.Cavities, 1, 10_000, "cavities", at, path + "/cavities");
        double? headspace = _checks.Quantity(mould.Headspace, QuantityKind.Length, 0, 10, at, path + "/headspace");
        MouldShape? shape = mould.Shape is { } part ? MouldShapeReader.Read(part, _checks, path + "/shape") : null;
        if (cavities is { } count && count % 1 != 0)
        {
            _checks.Report("number-range", at, path + "/cavities", $"Must be a whole number, but is {Numbers.Exact(count)}.");
            cavities = null;
        }

        if (headspace >= shape?.HeightMetres)
        {
            _checks.Report("number-range", at, path + "/headspace", $"Must be less than the depth of the shape, {Numbers.Exact(shape!.HeightMetres)} m, but is {Numbers.Exact(headspace!.Value)} m.");
            headspace = null;
        }

        return name is null ? null : new MouldPlan(name, millilitres is { } ml ? Volume.FromMilliliters(ml) : null)
        {
            Shape = shape,
            Cavities = (int)(cavities ?? 1),
            Headspace = Length.FromMeters(headspace ?? 0),
        };
    }

    private Losses Losses(FormulaDto.LossesPart losses) => new()
    {
        Evaporation = Loss(losses.Evaporation, "/process/losses/evaporation"),
        ToppedUp = losses.ToppedUp,
        Straining = Loss(losses.Straining, "/process/losses/straining"),
        Transfer = Loss(losses.Transfer, "/process/losses/transfer"),
        Trimming = Loss(losses.Trimming, "/process/losses/trimming"),
    };

    private Loss Loss(FormulaDto.LossPart? loss, string path)
    {
        bool hasPercent = loss is not null && !double.IsNaN(loss.Percent), hasValue = loss is not null && !double.IsNaN(loss.Value), hasUnit = loss?.Unit is not null;
        if (loss is null)
        {
            return Formulation.Loss.None;
        }

        if (hasPercent == hasValue || hasValue != hasUnit)
        {
            _checks.Report("loss-unclear", DocumentPlace.Whole, path, "State either percent, or value and unit of a mass.");
            return Formulation.Loss.None;
        }

        if (hasValue)
        {
            return _checks.Quantity(loss.Value, loss.Unit, QuantityKind.Mass, 0, Guard.MaxMassGrams, DocumentPlace.Whole, path) is { } grams
                ? Formulation.Loss.Of(Mass.FromGrams(grams)) : Formulation.Loss.None;
        }

        if (loss.Percent is >= 0 and < 100)
        {
            return Formulation.Loss.Percent(loss.Percent);
        }

        _checks.Report("number-range", DocumentPlace.Whole, path + "/percent", $"Must be at least 0 % and below 100 %, but is {Numbers.Exact(loss.Percent)} %.");
        return Formulation.Loss.None;
    }

    private ValueList<CoolingStage> Cooling(List<FormulaDto.CoolingPart> cooling)
    {
        var stages = new List<CoolingStage>(cooling.Count);
        for (int i = 0; i < cooling.Count; i++)
        {
            FormulaDto.CoolingPart stage = NotNull(cooling[i]);
            DocumentPlace at = DocumentPlace.Item("/process/cooling", i);
            string? name = _checks.Words(stage.Name, at, "/name");
            Temperature? temperature = Temperature(stage.Temperature, at, "/temperature");
            Duration? duration = Duration(stage.Duration, at, "/duration");
            CoolingMedium? medium = null;
            if (stage.Medium is not null && !CoolingMedium.TryGet(stage.Medium, out medium))
            {
                _checks.Unknown(stage.Medium, string.Join(", ", CoolingMedium.All.Select(m => m.Id)), at, "/medium");
            }

            if (name is not null && temperature is { } t)
            {
                stages.Add(new CoolingStage(name, t, duration) { Medium = medium });
            }
        }

        return ValueList<CoolingStage>.Own([.. stages]);
    }

    private ServicePlan Service(FormulaDto.ServicePart service)
    {
        DocumentPlace at = DocumentPlace.Whole;
        return new ServicePlan
        {
            Texture = Word<Texture>(service.Texture, Words.TryTexture, Words.TextureList, "/service/texture"),
            ServedAt = Temperature(service.ServedAt, at, "/service/servedAt"),
            HeldFor = Duration(service.HeldFor, at, "/service/heldFor"),
            StoredFor = Duration(service.StoredFor, at, "/service/storedFor"),
            Covered = service.Covered,
            Frozen = service.Frozen,
            Portion = _checks.Quantity(service.Portion, QuantityKind.Mass, double.Epsilon, Guard.MaxMassGrams, at, "/service/portion") is { } grams
                ? Mass.FromGrams(grams) : null,
            Shape = Word<PortionShape>(service.Shape, Words.TryPortionShape, Words.ShapeList, "/service/shape"),
            Clear = service.Clear,
            Packaged = service.Packaged,
            Audience = Word<Audience>(service.Audience, Words.TryAudience, Words.AudienceList, "/service/audience"),
            Market = Word<Market>(service.Market, Words.TryMarket, Words.MarketList, "/service/market"),
            FoodCategory = service.FoodCategory is { } category && _checks.Id(category, at, "/service/foodCategory") ? category : null,
            Diets = WordList<Diet>(service.Diets, Words.TryDiet, Words.DietList, "/service/diets"),
            FreeFrom = WordList<Allergen>(service.FreeFrom, Words.TryAllergen, Words.AllergenList, "/service/freeFrom"),
        };
    }

    private delegate bool TryWord<T>(string? word, out T value);

    private T? Word<T>(string? word, TryWord<T> find, string known, string path)
        where T : struct
    {
        T value = default;
        bool isKnown = word is not null && find(word, out value);
        if (word is not null && !isKnown)
        {
            _checks.Unknown(word, known, DocumentPlace.Whole, path);
        }

        return isKnown ? value : null;
    }

    private ValueList<T> WordList<T>(List<string>? words, TryWord<T> find, string known, string path)
        where T : struct
    {
        var values = new List<T>();
        for (int i = 0; i < words?.Count; i++)
        {
            string at = path + "/" + Numbers.Exact(i);
            if (Word(NotNull(words[i]), find, known, at) is { } value)
            {
                if (values.Contains(value))
                {
                    _checks.Report("word-repeated", DocumentPlace.Whole, at, $"\"{words[i]}\" is stated twice.");
                }

                values.Add(value);
            }
        }

        return ValueList<T>.Own([.. values]);
    }

    private Temperature? Temperature(FormulaDto.Quantity? quantity, in DocumentPlace at, string path)
        => _checks.Quantity(quantity, QuantityKind.Temperature, Guard.AbsoluteZeroCelsius, 1000, at, path) is { } celsius
            ? UnitsNet.Temperature.FromDegreesCelsius(celsius) : null;

    private Duration? Duration(FormulaDto.Quantity? quantity, in DocumentPlace at, string path)
        => _checks.Quantity(quantity, QuantityKind.Duration, 0, 1e9, at, path) is { } seconds ? UnitsNet.Duration.FromSeconds(seconds) : null;

    /// <summary>First those that stand alone or change the catalogue's own, then those that are like another one.</summary>
    private void ReadOwn(List<FormulaDto.Own> own)
    {
        for (int i = 0; i < own.Count; i++)
        {
            FormulaDto.Own dto = NotNull(own[i]);
            foreach (string word in (dto.Allergens ?? []).Concat(dto.Synonyms ?? []))
            {
                NotNull(word);
            }

            if (dto.Like is null || dto.Like == dto.Id)
            {
                AddOwn(dto, i, catalogueOnly: true);
            }
        }

        int alone = _own.Count;
        var like = new List<(FormulaDto.Own Dto, int Index)>();
        for (int i = 0; i < own.Count; i++)
        {
            if (own[i].Like is { } id && id != own[i].Id)
            {
                like.Add((own[i], i));
            }
        }

        var standing = alone == 0 ? null : new Dictionary<string, (Ingredient Ingredient, int Index)>(_own, StringComparer.Ordinal);
        foreach ((FormulaDto.Own dto, int index) in like)
        {
            if (standing is not null && standing.ContainsKey(dto.Like))
            {
                _used.Add(dto.Like);
            }

            AddOwn(dto, index, catalogueOnly: false, standing);
        }
    }

    private void AddOwn(FormulaDto.Own dto, int index, bool catalogueOnly, Dictionary<string, (Ingredient Ingredient, int Index)>? standing = null)
    {
        DocumentPlace at = DocumentPlace.Item("/ingredients", index);
        bool isValid = _checks.Id(dto.Id, at, "/id");
        string? name = _checks.Words(dto.Name, at, "/name");
        Ingredient? start = null;
        if (dto.Like is null)
        {
            if (dto.Name is null)
            {
                _checks.Report("member-missing", at, "/name", "\"name\" is missing.");
            }

            start = isValid && name is not null ? Formulation.Ingredient.Own(dto.Id, name) : null;
        }
        else
        {
            Ingredient? like = !catalogueOnly && standing is not null && standing.TryGetValue(dto.Like, out (Ingredient Ingredient, int Index) own) ? own.Ingredient
                : _catalogue.TryGet(dto.Like, out Ingredient? known) ? known : null;
            if (like is null)
            {
                _checks.Report("like-unknown", at, "/like",
                    $"{UnitTable.Quote(dto.Like)} is neither in the catalogue nor an ingredient of this document that stands alone.");
            }
            else if (dto.Name is null && dto.Like != dto.Id)
            {
                _checks.Report("member-missing", at, "/name", "\"name\" is missing.");
            }
            else if (isValid)
            {
                start = dto.Name is null ? like : name is null ? null : like.As(dto.Id, name);
            }
        }

        Ingredient made = OwnIngredients.Describe(start ?? Formulation.Ingredient.Unknown(dto.Id), dto, at, _checks);
        if (_own.ContainsKey(dto.Id))
        {
            _checks.Report("ingredient-repeated", at, "/id", $"'{dto.Id}' is described twice.");
            return;
        }

        _own.Add(dto.Id, (made, index));
    }
}
