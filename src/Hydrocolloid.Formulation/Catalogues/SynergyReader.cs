namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the pairs of ingredients of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class SynergyReader(FigureReader figures)
{
    public Synergy Read(ref JsonCursor json, string pointer)
    {
        string? id = null, partner = null, provenance = null;
        ValueList<string> first = default, second = default;
        Cited<ValueList<SynergyEffect>>? effects = null;
        ValueList<Cited<string>> ratios = default, conditions = default, magnitude = default;
        ValueList<Cited<NumberRange>> percent = default;
        Cited<NumberRange>? firstPercent = null, againstWeepingPercent = null;
        Cited<string>? recommended = null;
        ValueList<BlendDose> doses = default;
        Cited<TemperatureRange>? melts = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = json.Text(at); break;
                case "provenance": provenance = json.Text(at); break;
                case "a": first = FigureReader.Strings(ref json, at); break;
                case "b": second = FigureReader.Strings(ref json, at); break;
                case "partner": partner = json.Text(at); break;
                case "effects": effects = ReadEffects(ref json, at); break;
                case "ratios": ratios = figures.Facts(ref json, at); break;
                case "firstPercent": firstPercent = figures.Range(ref json, at); break;
                case "againstWeepingPercent": againstWeepingPercent = figures.Range(ref json, at); break;
                case "doses": doses = FigureReader.List(ref json, at, ReadDose); break;
                case "meltsCelsius": melts = figures.Celsius(ref json, at); break;
                case "percent": percent = FigureReader.List(ref json, at, figures.Range); break;
                case "conditions": conditions = figures.Facts(ref json, at); break;
                case "magnitude": magnitude = figures.Facts(ref json, at); break;
                case "recommended": recommended = figures.Fact(ref json, at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new Synergy(
            id ?? throw FigureReader.Broken(pointer, "needs an id"), first, second, partner,
            effects ?? throw FigureReader.Broken(pointer, "needs effects"), ratios, percent, conditions, magnitude, recommended, firstPercent, againstWeepingPercent, doses, melts, provenance);
    }

    private BlendDose ReadDose(ref JsonCursor json, string pointer)
    {
        Texture? texture = null;
        double? first = null;
        var parts = new FigureReader.Parts(figures.OfRange);
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "texture")
            {
                texture = Words.TryTexture(json.Text(pointer), out Texture known) ? known : throw FigureReader.Broken(pointer, $"'{json.Text(pointer)}' is not a texture");
            }
            else if (word == "firstPercent")
            {
                first = json.Number(pointer);
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return new BlendDose(
            texture ?? throw FigureReader.Broken(pointer, "needs a texture"), figures.Range(parts, pointer),
            first is > 0 and < 100 ? first.Value : throw FigureReader.Broken(pointer, "needs a firstPercent between 0 and 100"));
    }

    private Cited<ValueList<SynergyEffect>> ReadEffects(ref JsonCursor json, string pointer)
    {
        ValueList<SynergyEffect> effects = default;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "are")
            {
                effects = FigureReader.List(ref json, FigureReader.Under(pointer, "are"), (ref item, at)
                    => Words.TrySynergyEffect(item.Text(at), out SynergyEffect effect) ? effect : throw FigureReader.Broken(at, "is not an effect"));
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return figures.Cite(effects, parts, pointer);
    }
}
