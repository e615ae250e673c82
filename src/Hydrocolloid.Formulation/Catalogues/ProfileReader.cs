using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the profile of a hydrocolloid (docs/catalogue-format.md).</summary>
internal sealed class ProfileReader(FigureReader figures)
{
    private const double Minute = 60;
    private const double Hour = 3600;

    public HydrocolloidProfile Read(JsonElement json, string pointer)
    {
        HydrocolloidRole? role = null;
        var dispersal = new Dispersal(default, null, null, null, default, default);
        HydrationProtocol? hydration = null;
        var setting = new SettingBehaviour(default, null, null, default);
        var melting = new MeltingBehaviour(null, null, null, default);
        ValueList<DoseWindow> windows = default;
        ValueList<PublishedDose> published = default;
        Cited<NumberRange>? minimum = null;
        PhLimits? ph = null;
        StrengthScale? strength = null;
        ValueList<AgentFact> facts = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = pointer + "/" + member.Name;
            switch (member.Name)
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
                case "facts": facts = FigureReader.List(member.Value, at, ReadFact); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new HydrocolloidProfile(
            role ?? throw FigureReader.Broken(pointer, "needs a role"),
            dispersal,
            hydration ?? throw FigureReader.Broken(pointer, "needs hydration"),
            setting,
            melting)
        {
            DoseWindows = windows,
            PublishedDoses = published,
            MinimumGellingPercent = minimum,
            Ph = ph,
            Strength = strength,
            Facts = facts,
        };
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
        var parts = default(FigureReader.Parts);
        string? texture = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            if (member.NameEquals("texture"))
            {
                texture = member.Value.GetString();
            }
            else if (!parts.Take(member))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return (parts, texture ?? throw FigureReader.Broken(pointer, "needs a texture"));
    }

    private Dispersal ReadDispersal(JsonElement json, string pointer)
    {
        var dispersal = new Dispersal(default, null, null, null, default, default);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = pointer + "/" + member.Name;
            dispersal = member.Name switch
            {
                "medium" => dispersal with { Medium = figures.Facts(member.Value, at) },
                "sugarPartsPerPart" => dispersal with { SugarPartsPerPart = figures.Range(member.Value, at) },
                "lumpsAboveCelsius" => dispersal with { LumpsAbove = figures.Celsius(member.Value, at) },
                "soakWaterPartsPerPart" => dispersal with { SoakWaterPartsPerPart = figures.Range(member.Value, at) },
                "slurry" => dispersal with { Slurry = figures.Facts(member.Value, at) },
                "shear" => dispersal with { Shear = figures.Facts(member.Value, at) },
                _ => throw FigureReader.Unknown(pointer, member),
            };
        }

        return dispersal;
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
            string at = pointer + "/" + member.Name;
            switch (member.Name)
            {
                case "celsius": window = figures.Celsius(member.Value, at); break;
                case "holdMinutes": hold = figures.Durations(member.Value, at, Minute); break;
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
        var setting = new SettingBehaviour(default, null, null, default);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = pointer + "/" + member.Name;
            setting = member.Name switch
            {
                "triggers" => setting with { Triggers = FigureReader.List(member.Value, at, ReadTrigger) },
                "celsius" => setting with { Window = figures.Celsius(member.Value, at) },
                "hoursToStable" => setting with { TimeToStable = figures.Durations(member.Value, at, Hour) },
                "dependence" => setting with { Dependence = figures.Facts(member.Value, at) },
                _ => throw FigureReader.Unknown(pointer, member),
            };
        }

        return setting;
    }

    private SettingTrigger ReadTrigger(JsonElement json, string pointer)
    {
        var parts = default(FigureReader.Parts);
        string? when = null;
        string? ion = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            if (member.NameEquals("when"))
            {
                when = member.Value.GetString();
            }
            else if (member.NameEquals("ion"))
            {
                ion = member.Value.GetString();
            }
            else if (!parts.Take(member))
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
        var melting = new MeltingBehaviour(null, null, null, default);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = pointer + "/" + member.Name;
            melting = member.Name switch
            {
                "celsius" => melting with { Window = figures.Celsius(member.Value, at) },
                "reversible" => ReadReversible(melting, member.Value, at),
                "dependence" => melting with { Dependence = figures.Facts(member.Value, at) },
                _ => throw FigureReader.Unknown(pointer, member),
            };
        }

        return melting;
    }

    private MeltingBehaviour ReadReversible(MeltingBehaviour melting, JsonElement json, string pointer)
    {
        var parts = default(FigureReader.Parts);
        Reversibility? reversibility = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            if (member.NameEquals("value"))
            {
                reversibility = member.Value.GetString() switch
                {
                    "yes" => Reversibility.Reversible,
                    "no" => Reversibility.Irreversible,
                    "conditional" => Reversibility.Conditional,
                    _ => throw FigureReader.Broken(pointer, "value must be yes, no or conditional"),
                };
            }
            else if (!parts.Take(member))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return melting with
        {
            Reversibility = reversibility ?? throw FigureReader.Broken(pointer, "needs a value"),
            ReversibilityFact = figures.Fact(parts, pointer),
        };
    }

    private PhLimits ReadPh(JsonElement json, string pointer)
    {
        var limits = new PhLimits(null, default);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = pointer + "/" + member.Name;
            limits = member.Name switch
            {
                "range" => limits with { Range = figures.Range(member.Value, at) },
                "facts" => limits with { Facts = figures.Facts(member.Value, at) },
                _ => throw FigureReader.Unknown(pointer, member),
            };
        }

        return limits;
    }

    private StrengthScale ReadStrength(JsonElement json, string pointer)
    {
        var scale = new StrengthScale("", "", default, default);
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string at = pointer + "/" + member.Name;
            scale = member.Name switch
            {
                "scale" => scale with { Name = member.Value.GetString()! },
                "unit" => scale with { Unit = member.Value.GetString()! },
                "definition" => scale with { Definition = figures.Facts(member.Value, at) },
                "typical" => scale with { Typical = FigureReader.List(member.Value, at, figures.Range) },
                _ => throw FigureReader.Unknown(pointer, member),
            };
        }

        return scale;
    }

    private AgentFact ReadFact(JsonElement json, string pointer)
    {
        var parts = default(FigureReader.Parts);
        string? topic = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            if (member.NameEquals("topic"))
            {
                topic = member.Value.GetString();
            }
            else if (!parts.Take(member))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return new AgentFact(topic ?? throw FigureReader.Broken(pointer, "needs a topic"), figures.Fact(parts, pointer));
    }
}
