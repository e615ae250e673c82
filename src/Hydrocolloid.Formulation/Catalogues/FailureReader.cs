using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the known failures of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class FailureReader(FigureReader figures)
{
    public KnownFailure Read(JsonElement json, string pointer)
    {
        string? id = null, toBeSure = null, nextTime = null;
        ValueList<string> agents = default, rules = default;
        ValueList<Symptom> symptoms = default;
        Cited<string>? cause = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = member.Value.GetString(); break;
                case "agents": agents = FigureReader.List(member.Value, at, (s, _) => s.GetString()!); break;
                case "symptoms":
                    symptoms = FigureReader.List(member.Value, at, (s, place)
                        => Words.TrySymptom(s.GetString(), out Symptom symptom) ? symptom : throw FigureReader.Broken(place, "is not a symptom"));
                    break;
                case "rules": rules = FigureReader.List(member.Value, at, (s, _) => s.GetString()!); break;
                case "cause": cause = figures.Fact(member.Value, at); break;
                case "toBeSure": toBeSure = member.Value.GetString(); break;
                case "nextTime": nextTime = member.Value.GetString(); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new KnownFailure(
            id ?? throw FigureReader.Broken(pointer, "needs an id"), agents, symptoms, rules, cause ?? throw FigureReader.Broken(pointer, "needs a cause"),
            toBeSure, nextTime ?? throw FigureReader.Broken(pointer, "needs what to do next time"));
    }
}
