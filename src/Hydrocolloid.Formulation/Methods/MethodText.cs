using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>A method as text and as Markdown: the same parts, marked differently.</summary>
internal static class MethodText
{
    public static string Plain(Method method) => Write(method, title: m => m, section: s => "\n" + s.ToUpperInvariant(), step: s => s, item: "   - ", escape: t => t);

    public static string Markdown(Method method) => Write(method, title: m => "# " + m, section: s => "\n## " + s + "\n", step: s => "**" + s + "**", item: "   - ", escape: Escaped);

    private static string Write(Method method, Func<string, string> title, Func<string, string> section, Func<string, string> step, string item, Func<string, string> escape)
    {
        var text = new StringBuilder();
        void Line(string line) => text.Append(line).Append('\n');

        Line(title(escape(method.Name)));
        Line("");
        Line($"Known times add up to {Time(method.TotalTime)}; of it someone stands by for {Time(method.ActiveTime)}.");
        Line(section("To weigh"));
        foreach (StepAmount amount in method.ToWeigh)
        {
            Line("- " + escape(amount.ToString()));
        }

        Line(section("Steps"));
        foreach (MethodStep one in method.Steps)
        {
            Line($"{Numbers.Exact(one.Number)}. {step(escape(one.Instruction))}");
            if (!one.Amounts.IsEmpty)
            {
                Line(item + escape(string.Join(", ", one.Amounts)));
            }

            Line($"{item}Why: {escape(one.Reason)}");
            Line($"{item}Check: {escape(one.Check)}");
        }

        if (!method.Ahead.IsEmpty)
        {
            Line(section("Can be done ahead"));
            foreach (MethodStep one in method.Ahead)
            {
                Line($"- up to step {Numbers.Exact(one.Number)}: stands {one.Ahead}");
            }
        }

        foreach ((string heading, IEnumerable<string> lines) in new[] { ("Conflicts", method.Conflicts.Select(c => c.ToString())), ("Cautions", method.Cautions.Select(c => c.Text.Value)) })
        {
            if (lines.Any())
            {
                Line(section(heading));
                foreach (string line in lines)
                {
                    Line("- " + escape(line));
                }
            }
        }

        Line(section("Sources"));
        foreach (string source in method.Steps.SelectMany(s => s.Citations).Select(c => c.ToString()).Distinct(StringComparer.Ordinal))
        {
            Line("- " + escape(source));
        }

        return text.ToString();
    }

    /// <summary>A time to two digits.</summary>
    private static string Time(DurationRange time)
    {
        static double? Rounded(double? seconds) => seconds is not { } s ? null : s >= 7200 ? Math.Round(s / 360) * 360 : s >= 60 ? Math.Round(s / 60) * 60 : s;

        return new DurationRange(new NumberRange(Rounded(time.Seconds.Min), Rounded(time.Seconds.Max))).ToString();
    }

    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            if (c is '\\' or '*' or '_' or '`' or '[' or ']' or '<' or '#' or '|')
            {
                escaped.Append('\\');
            }

            escaped.Append(c);
        }

        return escaped.ToString();
    }
}
