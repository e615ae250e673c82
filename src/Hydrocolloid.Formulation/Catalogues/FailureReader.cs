namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the known failures of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class FailureReader(FigureReader figures)
{
    public KnownFailure Read(ref JsonCursor json, string pointer)
    {
        string? id = null, toBeSure = null, nextTime = null;
        ValueList<string> agents = default, rules = default;
        ValueList<Symptom> symptoms = default;
        Cited<string>? cause = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = json.Text(at); break;
                case "agents": agents = FigureReader.Strings(ref json, at); break;
                case "symptoms":
                    symptoms = FigureReader.List(ref json, at, (ref item, place)
                        => Words.TrySymptom(item.Text(place), out Symptom symptom) ? symptom : throw FigureReader.Broken(place, "is not a symptom"));
                    break;
                case "rules": rules = FigureReader.Strings(ref json, at); break;
                case "cause": cause = figures.Fact(ref json, at); break;
                case "toBeSure": toBeSure = json.Text(at); break;
                case "nextTime": nextTime = json.Text(at); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new KnownFailure(
            id ?? throw FigureReader.Broken(pointer, "needs an id"), agents, symptoms, rules, cause ?? throw FigureReader.Broken(pointer, "needs a cause"),
            toBeSure, nextTime ?? throw FigureReader.Broken(pointer, "needs what to do next time"));
    }
}
