using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the profile of a hydrocolloid (docs/catalogue-format.md).</summary>
internal sealed class ProfileReader(FigureReader figures)
{
    public HydrocolloidProfile Read(ref JsonCursor json, string pointer, HydrocolloidProfile? from)
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
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "role": role = RoleOf(json.Text(at), at); break;
                case "doses": windows = FigureReader.List(ref json, at, ReadWindow); break;
                case "publishedDoses": published = FigureReader.List(ref json, at, ReadPublished); break;
                case "minimumGellingPercent": minimum = figures.Percent(ref json, at); break;
                case "dispersal": dispersal = ReadDispersal(ref json, at); break;
                case "hydration": hydration = ReadHydration(ref json, at); break;
                case "setting": setting = ReadSetting(ref json, at); break;
                case "melting": melting = ReadMelting(ref json, at); break;
                case "ph": ph = ReadPh(ref json, at); break;
                case "grade": strength = ReadStrength(ref json, at); break;
                case "limits": limits = FigureReader.List(ref json, at, ReadLimit); break;
                case "sensitivities": sensitivities = FigureReader.List(ref json, at, ReadSensitivity); break;
                case "facts": facts = FigureReader.List(ref json, at, figures.FactOfTopic); break;
                case "moreFacts": facts = ValueList<AgentFact>.Own([.. from?.Facts ?? throw FigureReader.Broken(at, "adds to nothing"), .. FigureReader.List(ref json, at, figures.FactOfTopic)]); break;
                default: throw FigureReader.Unknown(pointer, word);
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

    private DoseWindow ReadWindow(ref JsonCursor json, string pointer)
    {
        (FigureReader.Parts parts, string texture) = WithTexture(ref json, pointer);
        return new DoseWindow(
            Words.TryTexture(texture, out Texture known) ? known : throw FigureReader.Broken(pointer, $"'{texture}' is not a texture"),
            figures.RangeWithin(parts, 0, 100, "%", pointer));
    }

    private PublishedDose ReadPublished(ref JsonCursor json, string pointer)
    {
        (FigureReader.Parts parts, string texture) = WithTexture(ref json, pointer);
        return new PublishedDose(texture, figures.RangeWithin(parts, 0, 100, "%", pointer));
    }

    private (FigureReader.Parts Parts, string Texture) WithTexture(ref JsonCursor json, string pointer)
    {
        var parts = new FigureReader.Parts(figures.OfRange);
        string? texture = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "texture")
            {
                texture = json.Word(pointer);
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return (parts, texture ?? throw FigureReader.Broken(pointer, "needs a texture"));
    }

    private Dispersal ReadDispersal(ref JsonCursor json, string pointer)
    {
        ValueList<Cited<string>> medium = default, slurry = default, shear = default;
        Cited<NumberRange>? sugar = null, soakWater = null;
        Cited<TemperatureRange>? lumpsAbove = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "medium": medium = figures.Facts(ref json, at); break;
                case "sugarPartsPerPart": sugar = figures.Range(ref json, at); break;
                case "lumpsAboveCelsius": lumpsAbove = figures.Celsius(ref json, at); break;
                case "soakWaterPartsPerPart": soakWater = figures.Range(ref json, at); break;
                case "slurry": slurry = figures.Facts(ref json, at); break;
                case "shear": shear = figures.Facts(ref json, at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new Dispersal(medium, sugar, lumpsAbove, soakWater, slurry, shear);
    }

    private HydrationProtocol ReadHydration(ref JsonCursor json, string pointer)
    {
        Cited<TemperatureRange>? window = null;
        Cited<DurationRange>? hold = null;
        Cited<TemperatureRange>? notAbove = null;
        bool needsHighShear = false;
        ValueList<Cited<string>> shear = default;
        ValueList<Cited<string>> holdingLimit = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "celsius": window = figures.Celsius(ref json, at); break;
                case "holdMinutes": hold = figures.Minutes(ref json, at); break;
                case "notAboveCelsius": notAbove = figures.Celsius(ref json, at); break;
                case "needsHighShear": needsHighShear = json.Flag(at); break;
                case "shear": shear = figures.Facts(ref json, at); break;
                case "holdingLimit": holdingLimit = figures.Facts(ref json, at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new HydrationProtocol(
            window ?? throw FigureReader.Broken(pointer, "needs celsius"),
            hold ?? throw FigureReader.Broken(pointer, "needs holdMinutes"),
            notAbove, needsHighShear, shear, holdingLimit);
    }

    private SettingBehaviour ReadSetting(ref JsonCursor json, string pointer)
    {
        ValueList<SettingTrigger> triggers = default;
        Cited<TemperatureRange>? window = null;
        Cited<DurationRange>? toStable = null;
        ValueList<Cited<string>> dependence = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "triggers": triggers = FigureReader.List(ref json, at, ReadTrigger); break;
                case "celsius": window = figures.Celsius(ref json, at); break;
                case "hoursToStable": toStable = figures.Hours(ref json, at); break;
                case "dependence": dependence = figures.Facts(ref json, at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new SettingBehaviour(triggers, window, toStable, dependence);
    }

    private SettingTrigger ReadTrigger(ref JsonCursor json, string pointer)
    {
        var parts = new FigureReader.Parts(FigureReader.OfText);
        string? when = null;
        string? ion = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "when")
            {
                when = json.Word(pointer);
            }
            else if (word == "ion")
            {
                ion = json.Text(pointer);
            }
            else
            {
                parts.Take(word, ref json, pointer);
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

    private MeltingBehaviour ReadMelting(ref JsonCursor json, string pointer)
    {
        Cited<TemperatureRange>? window = null;
        Reversibility? reversibility = null;
        Cited<string>? fact = null;
        ValueList<Cited<string>> dependence = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "celsius": window = figures.Celsius(ref json, at); break;
                case "reversible": (reversibility, fact) = ReadReversible(ref json, at); break;
                case "dependence": dependence = figures.Facts(ref json, at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new MeltingBehaviour(window, reversibility, fact, dependence);
    }

    private (Reversibility Value, Cited<string> Fact) ReadReversible(ref JsonCursor json, string pointer)
    {
        var parts = new FigureReader.Parts(FigureReader.OfText);
        Reversibility? reversibility = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "value")
            {
                reversibility = json.Text(pointer) switch
                {
                    "yes" => Reversibility.Reversible,
                    "no" => Reversibility.Irreversible,
                    "conditional" => Reversibility.Conditional,
                    _ => throw FigureReader.Broken(pointer, "value must be yes, no or conditional"),
                };
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return (reversibility ?? throw FigureReader.Broken(pointer, "needs a value"), figures.Fact(parts, pointer));
    }

    private PhLimits ReadPh(ref JsonCursor json, string pointer)
    {
        Cited<NumberRange>? range = null;
        ValueList<Cited<string>> facts = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "range": range = figures.RangeWithin(FigureReader.PartsOf(figures.OfRange, ref json, at), 0, 14, "pH", at); break;
                case "facts": facts = figures.Facts(ref json, at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new PhLimits(range, facts);
    }

    private StrengthScale ReadStrength(ref JsonCursor json, string pointer)
    {
        string name = "", unit = "";
        ValueList<Cited<string>> definition = default;
        ValueList<Cited<NumberRange>> typical = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "scale": name = json.Text(at); break;
                case "unit": unit = json.Text(at); break;
                case "definition": definition = figures.Facts(ref json, at); break;
                case "typical": typical = FigureReader.List(ref json, at, figures.Range); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new StrengthScale(name, unit, definition, typical);
    }

    private AgentLimit ReadLimit(ref JsonCursor json, string pointer)
    {
        var parts = new FigureReader.Parts(figures.OfRange);
        string? quantity = null, when = null, harm = null, consequence = null;
        double? stood = null, from = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "of": quantity = json.Word(pointer); break;
                case "when": when = json.Word(pointer); break;
                case "harm": harm = json.Word(pointer); break;
                case "consequence": consequence = json.Text(pointer); break;
                case "stoodMinutes": stood = Within(ref json, word, 0, 1e9 / 60, "min", pointer); break;
                case "fromCelsius": from = Within(ref json, word, Guard.AbsoluteZeroCelsius, FigureReader.MaxCelsius, "°C", pointer); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        if (!Words.TryLimitedQuantity(quantity, out LimitedQuantity of))
        {
            throw FigureReader.Broken(pointer, $"'{quantity}' is not a quantity that is limited");
        }

        return new AgentLimit(
            of,
            Words.TryLimitStage(when, out LimitStage stage) ? stage : throw FigureReader.Broken(pointer, $"'{when}' is not a stage"),
            LimitOf(of, parts, pointer), HarmOf(harm, pointer), consequence ?? throw FigureReader.Broken(pointer, "needs a consequence"), stood, from);
    }

    /// <summary>The figure of a limit, which lies where its quantity can.</summary>
    private Cited<NumberRange> LimitOf(LimitedQuantity of, in FigureReader.Parts parts, string pointer) => of switch
    {
        LimitedQuantity.Ph => figures.RangeWithin(parts, 0, 14, "pH", pointer),
        LimitedQuantity.SolubleSolids => figures.RangeWithin(parts, 0, 100, "°Brix", pointer),
        LimitedQuantity.Ethanol or LimitedQuantity.Fat or LimitedQuantity.Concentration or LimitedQuantity.AlcoholByVolume => figures.RangeWithin(parts, 0, 100, "%", pointer),
        LimitedQuantity.Temperature => figures.RangeWithin(parts, 0, FigureReader.MaxCelsius, "°C", pointer),
        _ => figures.Range(parts, pointer),
    };

    private static double Within(ref JsonCursor json, string word, double min, double max, string unit, string pointer)
    {
        string at = FigureReader.Under(pointer, word);
        return FigureReader.Within(json.Number(at), min, max, unit, at);
    }

    private AgentSensitivity ReadSensitivity(ref JsonCursor json, string pointer)
    {
        var parts = new FigureReader.Parts(FigureReader.OfText);
        string? to = null, harm = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "to": to = json.Word(pointer); break;
                case "harm": harm = json.Word(pointer); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        return new AgentSensitivity(
            Words.TrySensitiveTo(to, out SensitiveTo what) ? what : throw FigureReader.Broken(pointer, $"'{to}' is nothing to be sensitive to"),
            HarmOf(harm, pointer), figures.Fact(parts, pointer));
    }

    private static Harm HarmOf(string? word, string pointer)
        => Words.TryHarm(word, out Harm harm) ? harm : throw FigureReader.Broken(pointer, $"'{word}' is not none, notable, weakens or fails");
}
