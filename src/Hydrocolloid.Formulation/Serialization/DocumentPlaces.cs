using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Finds where in the bytes of a document its problems are. Used only once there are some.</summary>
internal static class DocumentPlaces
{
    /// <summary>The pointer of a member.</summary>
    public static string Member(string pointer, string name) => pointer + "/" + name.Replace("~", "~0").Replace("/", "~1");

    /// <summary>The problems with the place of each: its value, or the nearest value around it.</summary>
    /// <param name="problems">Problems that only have a pointer.</param>
    /// <param name="utf8">The document; syntactically sound.</param>
    /// <param name="start">Offset of its first byte: behind a byte order mark.</param>
    public static ValueList<FormulaJsonProblem> Place(List<FormulaJsonProblem> problems, ReadOnlySpan<byte> utf8, int start)
    {
        Dictionary<string, int> offsets = Offsets(problems, utf8.Slice(start));
        var found = new (int Offset, int Problem)[problems.Count];
        for (int i = 0; i < found.Length; i++)
        {
            string pointer = problems[i].Pointer;
            int offset;
            while (!offsets.TryGetValue(pointer, out offset) || offset < 0)
            {
                pointer = Parent(pointer);
            }

            found[i] = (start + offset, i);
        }

        var placed = new FormulaJsonProblem[found.Length];
        Array.Sort(found); // in the order of the document, so that lines are counted once
        int line = 1, lineStart = 0, counted = 0;
        foreach ((int offset, int problem) in found)
        {
            Advance(utf8, offset, ref counted, ref line, ref lineStart);
            placed[problem] = problems[problem] with { LineNumber = line, BytePositionInLine = offset - lineStart, ByteOffset = offset };
        }

        return ValueList<FormulaJsonProblem>.Own(placed);
    }

    /// <summary>A problem at an offset.</summary>
    public static FormulaJsonProblem At(int offset, ReadOnlySpan<byte> utf8, FormulaJsonProblem problem)
    {
        int line = 1, lineStart = 0, counted = 0;
        Advance(utf8, offset, ref counted, ref line, ref lineStart);
        return problem with { LineNumber = line, BytePositionInLine = offset - lineStart, ByteOffset = offset };
    }

    /// <summary>The offset of a byte in a line.</summary>
    public static int OffsetOf(ReadOnlySpan<byte> utf8, long line, long byteInLine)
    {
        int offset = 0;
        for (long i = 0; i < line; i++)
        {
            offset += utf8.Slice(offset).IndexOf((byte)'\n') + 1;
        }

        return offset + (int)byteInLine;
    }

    private static void Advance(ReadOnlySpan<byte> utf8, int offset, ref int counted, ref int line, ref int lineStart)
    {
        for (; counted < offset; counted++)
        {
            if (utf8[counted] == (byte)'\n')
            {
                line++;
                lineStart = counted + 1;
            }
        }
    }

    private static string Parent(string pointer) => pointer.Substring(0, pointer.LastIndexOf('/'));

    /// <summary>The offset of every value that a problem points to or into; -1 for those that are not there. The later of two members of one name counts.</summary>
    private static Dictionary<string, int> Offsets(List<FormulaJsonProblem> problems, ReadOnlySpan<byte> utf8)
    {
        var offsets = new Dictionary<string, int>(StringComparer.Ordinal) { [""] = 0 };
        foreach (FormulaJsonProblem problem in problems)
        {
            for (string pointer = problem.Pointer; pointer.Length > 0 && !offsets.ContainsKey(pointer); pointer = Parent(pointer))
            {
                offsets.Add(pointer, -1);
            }
        }

        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = JsonLimits.MaxDepth });
        var around = new Stack<(string Pointer, int Next)>(); // Next: the position of the next item of a list; -1 in an object
        string name = "";
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.PropertyName)
            {
                name = Member(around.Peek().Pointer, reader.GetString()!);
                continue;
            }

            if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                around.Pop();
                continue;
            }

            string pointer = name;
            if (around.Count > 0 && around.Peek().Next >= 0)
            {
                (string list, int next) = around.Pop();
                pointer = list + "/" + Numbers.Exact(next);
                around.Push((list, next + 1));
            }

            if (offsets.ContainsKey(pointer))
            {
                offsets[pointer] = (int)reader.TokenStartIndex;
            }
            else if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
            {
                reader.Skip(); // no problem in there
                continue;
            }

            if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
            {
                around.Push((pointer, reader.TokenType == JsonTokenType.StartArray ? 0 : -1));
            }
        }

        return offsets;
    }
}
