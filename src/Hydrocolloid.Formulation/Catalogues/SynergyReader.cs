using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the pairs of ingredients of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class SynergyReader(FigureReader figures)
{
    public Synergy Read(JsonElement json, string pointer)
    {
        string? id = null, partner = null;
        ValueList<string> first = default, second = default;
        Cited<ValueList<SynergyEffect>>? effects = null;
        ValueList<Cited<string>> ratios = default, conditions = default, magnitude = default;
        ValueList<Cited<NumberRange>> percent = default;
        Cited<NumberRange>? firstPercent = null, againstWeepingPercent = null;
        Cited<string>? recommended = null;
        ValueList<BlendDose> doses = default;
        Cited<TemperatureRange>? melts = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = member.Value.GetString(); break;
                case "a": first = FigureReader.List(member.Value, at, (s, _) => s.GetString()!); break;
                case "b": second = FigureReader.List(member.Value, at, (s, _) => s.GetString()!); break;
                case "partner": partner = member.Value.GetString(); break;
                case "effects": effects = ReadEffects(member.Value, at); break;
                case "ratios": ratios = figures.Facts(member.Value, at); break;
                case "firstPercent": firstPercent = figures.Range(member.Value, at); break;
                case "againstWeepingPercent": againstWeepingPercent = figures.Range(member.Value, at); break;
                case "doses": doses = FigureReader.List(member.Value, at, ReadDose); break;
                case "meltsCelsius": melts = figures.Celsius(member.Value, at); break;
                case "percent": percent = FigureReader.List(member.Value, at, figures.Range); break;
                case "conditions": conditions = figures.Facts(member.Value, at); break;
                case "magnitude": magnitude = figures.Facts(member.Value, at); break;
                case "recommended": recommended = figures.Fact(member.Value, at); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new Synergy(
            id ?? throw FigureReader.Broken(pointer, "needs an id"), first, second, partner,
            effects ?? throw FigureReader.Broken(pointer, "needs effects"), ratios, percent, conditions, magnitude, recommended, firstPercent, againstWeepingPercent, doses, melts);
    }

    private BlendDose ReadDose(JsonElement json, string pointer)
    {
        Texture? texture = null;
        double? first = null;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "texture")
            {
                texture = Words.TryTexture(member.Value.GetString(), out Texture known) ? known : throw FigureReader.Broken(pointer, $"'{member.Value}' is not a texture");
            }
            else if (word == "firstPercent")
            {
                first = member.Value.GetDouble();
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return new BlendDose(
            texture ?? throw FigureReader.Broken(pointer, "needs a texture"), figures.Range(parts, pointer),
            first is > 0 and < 100 ? first.Value : throw FigureReader.Broken(pointer, "needs a firstPercent between 0 and 100"));
    }

    private Cited<ValueList<SynergyEffect>> ReadEffects(JsonElement json, string pointer)
    {
        ValueList<SynergyEffect> effects = default;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "are")
            {
                effects = FigureReader.List(member.Value, FigureReader.Under(pointer, "are"), (e, at)
                    => Words.TrySynergyEffect(e.GetString(), out SynergyEffect effect) ? effect : throw FigureReader.Broken(at, "is not an effect"));
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return figures.Cite(effects, parts, pointer);
    }
}
