namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the techniques of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class TechniqueReader(FigureReader figures)
{
    public Technique Read(ref JsonCursor json, string pointer)
    {
        string? id = null;
        ValueList<string> agents = default;
        ValueList<TechniqueFigure> read = default;
        ValueList<AgentFact> facts = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = json.Text(at); break;
                case "agents": agents = FigureReader.Strings(ref json, at); break;
                case "figures": read = FigureReader.List(ref json, at, ReadFigure); break;
                case "facts": facts = FigureReader.List(ref json, at, figures.FactOfTopic); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new Technique(id ?? throw FigureReader.Broken(pointer, "needs an id"), agents, read, facts);
    }

    private TechniqueFigure ReadFigure(ref JsonCursor json, string pointer)
    {
        var parts = new FigureReader.Parts(figures.OfRange);
        string? what = null, of = null;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            switch (word)
            {
                case "what": what = json.Text(pointer); break;
                case "of": of = json.Text(pointer); break;
                default: parts.Take(word, ref json, pointer); break;
            }
        }

        return new TechniqueFigure(what ?? throw FigureReader.Broken(pointer, "needs what it is"), of, figures.Range(parts, pointer));
    }
}
