using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the techniques of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class TechniqueReader(FigureReader figures)
{
    public Technique Read(JsonElement json, string pointer)
    {
        string? id = null;
        ValueList<string> agents = default;
        ValueList<TechniqueFigure> read = default;
        ValueList<AgentFact> facts = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = member.Value.GetString(); break;
                case "agents": agents = FigureReader.List(member.Value, at, (s, _) => s.GetString()!); break;
                case "figures": read = FigureReader.List(member.Value, at, ReadFigure); break;
                case "facts": facts = FigureReader.List(member.Value, at, figures.FactOfTopic); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new Technique(id ?? throw FigureReader.Broken(pointer, "needs an id"), agents, read, facts);
    }

    private TechniqueFigure ReadFigure(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        string? what = null, of = null;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            switch (word)
            {
                case "what": what = member.Value.GetString(); break;
                case "of": of = member.Value.GetString(); break;
                default:
                    if (!parts.Take(word, member.Value))
                    {
                        throw FigureReader.Unknown(pointer, member);
                    }

                    break;
            }
        }

        return new TechniqueFigure(what ?? throw FigureReader.Broken(pointer, "needs what it is"), of, figures.Range(parts, pointer));
    }
}
