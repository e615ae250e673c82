using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>Reads the additives of a catalogue document (docs/catalogue-format.md).</summary>
internal sealed class AdditiveReader(FigureReader figures)
{
    public Additive Read(JsonElement json, string pointer)
    {
        string? id = null, name = null;
        ValueList<string> e = default, ins = default, entries = default;
        Citation? numbers = null;
        ValueList<Cited<string>> cas = default;
        Cited<ValueList<string>>? classes = null;
        Cited<string>? jecfa = null, efsa = null, eu = null, us = null;
        ValueList<UsCeiling> ceilings = default;
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            string at = FigureReader.Under(pointer, word);
            switch (word)
            {
                case "id": id = member.Value.GetString(); break;
                case "name": name = member.Value.GetString(); break;
                case "e": e = Strings(member.Value, at); break;
                case "ins": ins = Strings(member.Value, at); break;
                case "numbers": numbers = ReadCitation(member.Value, at); break;
                case "entries": entries = Strings(member.Value, at); break;
                case "cas": cas = figures.Facts(member.Value, at); break;
                case "classes": classes = ReadClasses(member.Value, at); break;
                case "jecfa": jecfa = figures.Fact(member.Value, at); break;
                case "efsa": efsa = figures.Fact(member.Value, at); break;
                case "eu": eu = figures.Fact(member.Value, at); break;
                case "us": us = figures.Fact(member.Value, at); break;
                case "usCeilings": ceilings = FigureReader.List(member.Value, at, ReadCeiling); break;
                default: throw FigureReader.Unknown(pointer, member);
            }
        }

        return new Additive(
            id ?? throw FigureReader.Broken(pointer, "needs an id"), name ?? throw FigureReader.Broken(pointer, "needs a name"),
            new AdditiveNumbers(e, ins, numbers ?? throw FigureReader.Broken(pointer, "needs numbers")), entries, cas,
            classes ?? throw FigureReader.Broken(pointer, "needs classes"), jecfa, efsa, eu ?? throw FigureReader.Broken(pointer, "needs eu"), us, ceilings);
    }

    private static ValueList<string> Strings(JsonElement json, string pointer) => FigureReader.List(json, pointer, (s, _) => s.GetString()!);

    private Citation ReadCitation(JsonElement json, string pointer)
    {
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return figures.CitationOf(parts, pointer);
    }

    private UsCeiling ReadCeiling(JsonElement json, string pointer)
    {
        string? category = null;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "category")
            {
                category = WordMemo.Value(member.Value);
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        double percent = parts.Value ?? throw FigureReader.Broken(pointer, "needs a value");
        return new UsCeiling(category ?? throw FigureReader.Broken(pointer, "needs a category"), figures.Cite(percent, parts, pointer));
    }

    private Cited<ValueList<string>> ReadClasses(JsonElement json, string pointer)
    {
        ValueList<string> classes = default;
        var parts = new FigureReader.Parts();
        foreach (JsonProperty member in json.EnumerateObject())
        {
            string word = WordMemo.Name(member);
            if (word == "are")
            {
                classes = Strings(member.Value, FigureReader.Under(pointer, "are"));
            }
            else if (!parts.Take(word, member.Value))
            {
                throw FigureReader.Unknown(pointer, member);
            }
        }

        return figures.Cite(classes, parts, pointer);
    }
}
