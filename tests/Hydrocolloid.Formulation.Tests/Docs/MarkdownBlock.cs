namespace Hydrocolloid.Formulation.Tests.Docs;

/// <summary>A fenced block of a Markdown page, with the marker comment on the line above it.</summary>
internal sealed record MarkdownBlock(string File, int Line, string Language, string? Marker, string Text)
{
    public static IEnumerable<MarkdownBlock> In(string file)
    {
        string[] lines = System.IO.File.ReadAllText(file).ReplaceLineEndings("\n").Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("```", StringComparison.Ordinal))
            {
                continue;
            }

            int start = i;
            int end = Array.IndexOf(lines, "```", start + 1);
            string? marker = start > 0 && lines[start - 1].StartsWith("<!-- ", StringComparison.Ordinal) ? lines[start - 1][5..^4] : null;
            yield return new MarkdownBlock(
                Path.GetRelativePath(Repository.Root, file), start + 1, lines[start][3..], marker,
                string.Concat(lines[(start + 1)..end].Select(l => l + "\n")));
            i = end;
        }
    }

    public override string ToString() => $"{File}:{Line}";
}
