using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the profile of a hydrocolloid (docs/catalogue-format.md).</summary>
internal sealed class ProfileReader(FigureReader figures)
{
    public HydrocolloidProfile Read(JsonElement json, string pointer, HydrocolloidProfile? from)
    {
        HydrocolloidRole? role = from?.Role;
        Dispersal dispersal = from?.Dispersal ?? new Dispersal(default, null, null, null, default, default);
        HydrationProtocol? hydration = from?.Hydration;
        SettingBehaviour setting = from?.Setting ?? new SettingBehaviour(default, null, null, default);
        MeltingBehaviour melting = from?.Melting ?? new MeltingBehaviour(null, null, null, default);
        ValueList<DoseWindow> windows = from?.DoseWindows ?? default;
        ValueList<PublishedDose> published = from?.PublishedDoses ?? default;
        Cited<NumberRange>? minimum = from?.MinimumGellingPercent;
        PhLimits? ph = from?.Ph;
        StrengthScale? strength = from?.Strength;
        ValueList<AgentLimit> limits = from?.Limits ?? default;
        ValueList<AgentSensitivity> sensitivities = from?.Sensitivities ?? default;
        ValueList<AgentFact> facts = from?.Facts ?? default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "role": role = RoleOf(member.Value.GetString(), at); break;
                case "doses": windows = FigureReader.List(member.Value, at, ReadWindow); break;
                case "publishedDoses": published = FigureReader.List(member.Value, at, ReadPublished); break;
                case "minimumGellingPercent": minimum = figures.Range(member.Value, at); break;
                case "dispersal": dispersal = ReadDispersal(member.Value, at); break;
                case "hydration": hydration = ReadHydration(member.Value, at); break;
                case "setting": setting = ReadSetting(member.Value, at); break;
                case "melting": melting = ReadMelting(member.Value, at); break;
                case "ph": ph = ReadPh(member.Value, at); break;
                case "grade": strength = ReadStrength(member.Value, at); break;
                case "limits": limits = FigureReader.List(member.Value, at, ReadLimit); break;
                case "sensitivities": sensitivities = FigureReader.List(member.Value, at, ReadSensitivity); break;
                case "facts": facts = FigureReader.List(member.Value, at, figures.FactOfTopic); break;
                case "moreFacts": facts = ValueList<AgentFact>.Own([.. from?.Facts ?? throw FigureReader.Broken(at, "adds to nothing"), .. FigureReader.List(member.Value, at, figures.FactOfTopic)]); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new HydrocolloidProfile(
            role ?? throw FigureReader.Broken(pointer, "needs a role"), windows, published, minimum, dispersal,
            hydration ?? throw FigureReader.Broken(pointer, "needs hydration"), setting, melting, ph, strength, limits, sensitivities, facts);
    }

    private static HydrocolloidRole RoleOf(string? role, string pointer) => role switch
    {
        "gelling-agent" => HydrocolloidRole.GellingAgent,
        "thickener" => HydrocolloidRole.Thickener,
        _ => throw FigureReader.Broken(pointer, $"'{role}' is not a role"),
    };

    private DoseWindow ReadWindow(JsonElement json, string pointer)
    {
        (FigureReader.Parts parts, string texture) = WithTexture(json, pointer);
        return new DoseWindow(
            Words.TryTexture(texture, out Texture known) ? known : throw FigureReader.Broken(pointer, $"'{texture}' is not a texture"),
            figures.Range(parts, pointer));
    }

    private PublishedDose ReadPublished(JsonElement json, string pointer)
    {
        (FigureReader.Parts parts, string texture) = WithTexture(json, pointer);
        return new PublishedDose(texture, figures.Range(parts, pointer));
    }

    private static (FigureReader.Parts Parts, string Texture) WithTexture(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        string? texture = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "texture")
            {
                texture = WordMemo.Value(member.Value);
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return (parts, texture ?? throw FigureReader.Broken(pointer, "needs a texture"));
    }

    private Dispersal ReadDispersal(JsonElement json, string pointer)
    {
        ValueList<Cited<string>> medium = default, slurry = default, shear = default;
        Cited<NumberRange>? sugar = null, soakWater = null;
        Cited<TemperatureRange>? lumpsAbove = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "medium": medium = figures.Facts(member.Value, at); break;
                case "sugarPartsPerPart": sugar = figures.Range(member.Value, at); break;
                case "lumpsAboveCelsius": lumpsAbove = figures.Celsius(member.Value, at); break;
                case "soakWaterPartsPerPart": soakWater = figures.Range(member.Value, at); break;
                case "slurry": slurry = figures.Facts(member.Value, at); break;
                case "shear": shear = figures.Facts(member.Value, at); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new Dispersal(medium, sugar, lumpsAbove, soakWater, slurry, shear);
    }

    private HydrationProtocol ReadHydration(JsonElement json, string pointer)
    {
        Cited<TemperatureRange>? window = null;
        Cited<DurationRange>? hold = null;
        Cited<TemperatureRange>? notAbove = null;
        bool needsHighShear = false;
        ValueList<Cited<string>> shear = default;
        ValueList<Cited<string>> holdingLimit = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "celsius": window = figures.Celsius(member.Value, at); break;
                case "holdMinutes": hold = figures.Minutes(member.Value, at); break;
                case "notAboveCelsius": notAbove = figures.Celsius(member.Value, at); break;
                case "needsHighShear": needsHighShear = member.Value.GetBoolean(); break;
                case "shear": shear = figures.Facts(member.Value, at); break;
                case "holdingLimit": holdingLimit = figures.Facts(member.Value, at); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new HydrationProtocol(
            window ?? throw FigureReader.Broken(pointer, "needs celsius"),
            hold ?? throw FigureReader.Broken(pointer, "needs holdMinutes"),
            notAbove, needsHighShear, shear, holdingLimit);
    }

    private SettingBehaviour ReadSetting(JsonElement json, string pointer)
    {
        ValueList<SettingTrigger> triggers = default;
        Cited<TemperatureRange>? window = null;
        Cited<DurationRange>? toStable = null;
        ValueList<Cited<string>> dependence = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "triggers": triggers = FigureReader.List(member.Value, at, ReadTrigger); break;
                case "celsius": window = figures.Celsius(member.Value, at); break;
                case "hoursToStable": toStable = figures.Hours(member.Value, at); break;
                case "dependence": dependence = figures.Facts(member.Value, at); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new SettingBehaviour(triggers, window, toStable, dependence);
    }

    private SettingTrigger ReadTrigger(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        string? when = null;
        string? ion = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "when")
            {
                when = WordMemo.Value(member.Value);
            }
            else if (word == "ion")
            {
                ion = member.Value.GetString();
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        SettingCause cause = when switch
        {
            "cooling" => SettingCause.Cooling,
            "calcium" => SettingCause.Calcium,
            "heating" => SettingCause.Heating,
            "acid" => SettingCause.Acid,
            "none" => SettingCause.None,
            _ => throw FigureReader.Broken(pointer, $"'{when}' is not a cause of setting"),
        };
        return new SettingTrigger(cause, ion, figures.Fact(parts, pointer));
    }

    private MeltingBehaviour ReadMelting(JsonElement json, string pointer)
    {
        Cited<TemperatureRange>? window = null;
        Reversibility? reversibility = null;
        Cited<string>? fact = null;
        ValueList<Cited<string>> dependence = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "celsius": window = figures.Celsius(member.Value, at); break;
                case "reversible": (reversibility, fact) = ReadReversible(member.Value, at); break;
                case "dependence": dependence = figures.Facts(member.Value, at); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new MeltingBehaviour(window, reversibility, fact, dependence);
    }

    private (Reversibility Value, Cited<string> Fact) ReadReversible(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        Reversibility? reversibility = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "value")
            {
                reversibility = member.Value.GetString() switch
                {
                    "yes" => Reversibility.Reversible,
                    "no" => Reversibility.Irreversible,
                    "conditional" => Reversibility.Conditional,
                    _ => throw FigureReader.Broken(pointer, "value must be yes, no or conditional"),
                };
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return (reversibility ?? throw FigureReader.Broken(pointer, "needs a value"), figures.Fact(parts, pointer));
    }

    private PhLimits ReadPh(JsonElement json, string pointer)
    {
        Cited<NumberRange>? range = null;
        ValueList<Cited<string>> facts = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "range": range = figures.Range(member.Value, at); break;
                case "facts": facts = figures.Facts(member.Value, at); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new PhLimits(range, facts);
    }

    private StrengthScale ReadStrength(JsonElement json, string pointer)
    {
        string name = "", unit = "";
        ValueList<Cited<string>> definition = default;
        ValueList<Cited<NumberRange>> typical = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "scale": name = member.Value.GetString()!; break;
                case "unit": unit = member.Value.GetString()!; break;
                case "definition": definition = figures.Facts(member.Value, at); break;
                case "typical": typical = FigureReader.List(member.Value, at, figures.Range); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new StrengthScale(name, unit, definition, typical);
    }

    private AgentLimit ReadLimit(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        string? quantity = null, when = null, harm = null, consequence = null;
        double? stood = null, from = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "of": quantity = WordMemo.Value(member.Value); break;
                case "when": when = WordMemo.Value(member.Value); break;
                case "harm": harm = WordMemo.Value(member.Value); break;
                case "consequence": consequence = member.Value.GetString(); break;
                case "stoodMinutes": stood = member.Value.GetDouble(); break;
                case "fromCelsius": from = member.Value.GetDouble(); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        return new AgentLimit(
            Words.TryLimitedQuantity(quantity, out LimitedQuantity of) ? of : throw FigureReader.Broken(pointer, $"'{quantity}' is not a quantity that is limited"),
            Words.TryLimitStage(when, out LimitStage stage) ? stage : throw FigureReader.Broken(pointer, $"'{when}' is not a stage"),
            figures.Range(parts, pointer), HarmOf(harm, pointer), consequence ?? throw FigureReader.Broken(pointer, "needs a consequence"), stood, from);
    }

    private AgentSensitivity ReadSensitivity(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        string? to = null, harm = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "to": to = WordMemo.Value(member.Value); break;
                case "harm": harm = WordMemo.Value(member.Value); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        return new AgentSensitivity(
            Words.TrySensitiveTo(to, out SensitiveTo what) ? what : throw FigureReader.Broken(pointer, $"'{to}' is nothing to be sensitive to"),
            HarmOf(harm, pointer), figures.Fact(parts, pointer));
    }

    private static Harm HarmOf(string? word, string pointer)
        => Words.TryHarm(word, out Harm harm) ? harm : throw FigureReader.Broken(pointer, $"'{word}' is not none, notable, weakens or fails");
}
