using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>A set as a page: for students without answers, for teachers with the solutions.</summary>
public static class ExerciseSheet
{
    /// <summary>The page as Markdown.</summary>
    /// <param name="set">The set.</param>
    /// <param name="title">The heading.</param>
    /// <param name="withSolutions">Whether the worked solutions stand under the questions.</param>
    /// <returns>The text; lines end with a line feed.</returns>
    public static string ToMarkdown(ExerciseSet set, string title, bool withSolutions = false)
    {
        var text = new StringBuilder("# ").Append(Markdown(Guard.NotBlank(title))).Append('\n');
        foreach ((Exercise exercise, int number) in Numbered(set))
        {
            text.Append("\n## ").Append(Numbers.Exact(number)).Append("\n\n").Append(Markdown(exercise.Question)).Append('\n');
            if (!exercise.Form.Options.IsEmpty)
            {
                text.Append('\n');
                for (int i = 0; i < exercise.Form.Options.Count; i++)
                {
                    text.Append("- ").Append(AnswerForm.Letter(i)).Append(") ").Append(Markdown(exercise.Form.Options[i].Text)).Append('\n');
                }
            }

            text.Append('\n').Append(withSolutions ? "```text\n" + exercise.SolutionText() + "```\n" : $"Answer ({Asked(exercise.Form)}): \\_\\_\\_\\_\\_\\_\\_\\_\n");
        }

        return text.ToString();
    }

    /// <summary>The page as HTML that prints on plain paper: no script, nothing loaded from elsewhere.</summary>
    /// <param name="set">The set.</param>
    /// <param name="title">The heading.</param>
    /// <param name="withSolutions">Whether the worked solutions stand under the questions.</param>
    /// <returns>The text; lines end with a line feed.</returns>
    public static string ToHtml(ExerciseSet set, string title, bool withSolutions = false)
    {
        string heading = Escaped(Guard.NotBlank(title));
        var text = new StringBuilder(
            $"<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>{heading}</title>\n<style>body{{font-family:serif;max-width:42em;margin:2em auto}}"
            + "li.exercise{margin:0 0 2em;break-inside:avoid}.line{display:inline-block;width:14em;border-bottom:1px solid}pre{white-space:pre-wrap}</style>\n</head>\n<body>\n"
            + $"<h1>{heading}</h1>\n<ol>\n");
        foreach ((Exercise exercise, _) in Numbered(set))
        {
            text.Append("<li class=\"exercise\"><p>").Append(Escaped(exercise.Question)).Append("</p>\n");
            if (!exercise.Form.Options.IsEmpty)
            {
                text.Append("<ol type=\"a\">").Append(string.Concat(exercise.Form.Options.Select(o => $"<li>{Escaped(o.Text)}</li>"))).Append("</ol>\n");
            }

            text.Append(withSolutions ? $"<pre>{Escaped(exercise.SolutionText())}</pre>" : $"<p>Answer ({Escaped(Asked(exercise.Form))}): <span class=\"line\"></span></p>").Append("</li>\n");
        }

        return text.Append("</ol>\n</body>\n</html>\n").ToString();
    }

    internal static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        foreach (char c in text)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                // XML has no other control characters.
                < ' ' and not ('\n' or '\t') => escaped.Append(' '),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }

    internal static string Asked(AnswerForm form) => form.Shape switch
    {
        AnswerShape.Number => (form.Unit.Length == 0 ? "" : $"in {form.Unit}, ")
            + (form.Digits is { } digits ? $"{Numbers.Exact(digits)} significant digits" : $"{Numbers.Exact(form.Decimals!.Value)} {(form.Decimals == 1 ? "decimal" : "decimals")}"),
        AnswerShape.Choice => "one letter",
        AnswerShape.Order => "all letters in order",
        _ => "the letters that fit",
    };

    private static IEnumerable<(Exercise Exercise, int Number)> Numbered(ExerciseSet set) => Guard.NotNull(set).Exercises.Select((e, i) => (e, i + 1));

    private static string Markdown(string text)
    {
        var escaped = new StringBuilder(text.Length + 8);
        foreach (char c in text)
        {
            escaped.Append(c is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '#' ? "\\" : "").Append(c is '\n' or '\r' ? ' ' : c);
        }

        return escaped.ToString();
    }
}
