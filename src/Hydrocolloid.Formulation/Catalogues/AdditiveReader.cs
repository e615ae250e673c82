namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the additives of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class AdditiveReader(FigureReader figures)
{
    public Additive Read(ref JsonCursor json, string pointer)
    {
        string? id = null, name = null, provenance = null;
        ValueList<string> e = default, ins = default, entries = default;
        Citation? numbers = null, insNumbers = null;
        ValueList<Cited<string>> cas = default;
        Cited<ValueList<string>>? classes = null;
        Cited<string>? jecfa = null, efsa = null, eu = null, us = null;
        ValueList<UsCeiling> ceilings = default;
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = json.Text(at); break;
                case "name": name = json.Text(at); break;
                case "provenance": provenance = json.Text(at); break;
                case "e": e = FigureReader.Strings(ref json, at); break;
                case "ins": ins = FigureReader.Strings(ref json, at); break;
                case "numbers": (numbers, insNumbers) = ReadCitations(ref json, at); break;
                case "entries": entries = FigureReader.Strings(ref json, at); break;
                case "cas": cas = figures.Facts(ref json, at); break;
                case "classes": classes = ReadClasses(ref json, at); break;
                case "jecfa": jecfa = figures.Fact(ref json, at); break;
                case "efsa": efsa = figures.Fact(ref json, at); break;
                case "eu": eu = figures.Fact(ref json, at); break;
                case "us": us = figures.Fact(ref json, at); break;
                case "usCeilings": ceilings = FigureReader.List(ref json, at, ReadCeiling); break;
                default: throw FigureReader.Unknown(pointer, word);
            }
        }

        return new Additive(
            id ?? throw FigureReader.Broken(pointer, "needs an id"), name ?? throw FigureReader.Broken(pointer, "needs a name"),
            new AdditiveNumbers(e, ins, numbers ?? throw FigureReader.Broken(pointer, "needs numbers"), insNumbers), entries, cas,
            classes ?? throw FigureReader.Broken(pointer, "needs classes"), jecfa, efsa, eu ?? throw FigureReader.Broken(pointer, "needs eu"), us, ceilings, provenance);
    }

    private (Citation Numbers, Citation? Ins) ReadCitations(ref JsonCursor json, string pointer)
    {
        Citation? ins = null;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "insRecalled")
            {
                ins = figures.Recalled(ref json, FigureReader.Under(pointer, word));
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return (figures.CitationOf(parts, pointer), ins);
    }

    private UsCeiling ReadCeiling(ref JsonCursor json, string pointer)
    {
        string? category = null;
        var parts = new FigureReader.Parts(figures.OfNumber);
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "category")
            {
                category = json.Word(pointer);
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return new UsCeiling(category ?? throw FigureReader.Broken(pointer, "needs a category"), figures.Cite(FigureReader.ValueOf(parts, pointer), parts, pointer));
    }

    private Cited<ValueList<string>> ReadClasses(ref JsonCursor json, string pointer)
    {
        ValueList<string> classes = default;
        var parts = new FigureReader.Parts();
        json.OpenObject(pointer);
        while (json.NextMember(out string word))
        {
            if (word == "are")
            {
                classes = FigureReader.Strings(ref json, FigureReader.Under(pointer, "are"));
            }
            else
            {
                parts.Take(word, ref json, pointer);
            }
        }

        return figures.Cite(classes, parts, pointer);
    }
}
