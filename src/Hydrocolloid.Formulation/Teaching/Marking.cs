using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>Marks answers. Nothing that a student can write throws.</summary>
public static class Marking
{
    /// <summary>Marks one answer.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="answer">What the student wrote; null and empty are asked again.</param>
    /// <param name="provider">Gives the decimal sign; "." unless stated.</param>
    /// <param name="working">Results on the way, each with its unit.</param>
    /// <returns>The marked answer.</returns>
    public static MarkedAnswer Mark(Exercise exercise, string? answer, IFormatProvider? provider = null, IEnumerable<string>? working = null)
    {
        Guard.NotNull(exercise);
        IFormatProvider culture = provider ?? CultureInfo.InvariantCulture;
        return exercise.Form.Shape == AnswerShape.Number ? MarkNumber(exercise, answer, culture, working) : MarkOptions(exercise, answer);
    }

    /// <summary>Marks a sheet.</summary>
    /// <param name="set">The set.</param>
    /// <param name="sheet">The answers.</param>
    /// <returns>The marked sheet, one answer for each exercise.</returns>
    public static MarkedSheet Mark(ExerciseSet set, AnswerSheet sheet)
    {
        Guard.NotNull(sheet);
        return new MarkedSheet(sheet.Student, ValueList<MarkedAnswer>.From(Guard.NotNull(set).Exercises.Select((e, i) =>
        {
            StudentAnswer? given = sheet.Answers.FirstOrDefault(a => a.Number == i + 1);
            return Mark(e, given?.Text, sheet.Provider, given?.Working);
        })));
    }

    private static MarkedAnswer MarkNumber(Exercise exercise, string? answer, IFormatProvider provider, IEnumerable<string>? working)
    {
        AnswerForm form = exercise.Form;
        if (!TryRead(form.Quantity, form.Unit, answer, provider, out double value, out string error))
        {
            // A working without a readable answer keeps what it has earned.
            return new MarkedAnswer(MarkOutcome.AskedAgain, WorkingPercent(exercise, working, provider), Texts(
                $"Please write the answer again, as one number{(form.Unit.Length == 0 || form.Quantity is null ? "" : $" with its unit, such as 12 {form.Unit}")}.", error));
        }

        if (SlipFinder.IsSame(form, value, exercise.Solution.Value))
        {
            return new MarkedAnswer(MarkOutcome.Right, 100, Texts("Right."));
        }

        double earned = WorkingPercent(exercise, working, provider);
        ExpectedSlip[] alike = [.. exercise.Slips.Where(s => s.Value is { } v && SlipFinder.IsSame(form, value, v))];
        if (alike.Length > 0)
        {
            return Recognised(exercise, alike, earned);
        }

        // All steps are right but the last one, the rounding.
        int steps = exercise.Solution.Steps.Count(s => !s.IsGiven);
        return IsCoarse(form, value, exercise.Solution.Value)
            ? new MarkedAnswer(MarkOutcome.Wrong, Math.Max(earned, 100.0 * steps / (steps + 1)), Texts($"Nearly: that is the answer rounded too far. {DigitsAsked(form)}"), ValueList<Misconception>.Own([Misconception.RoundedEarly]))
            : new MarkedAnswer(MarkOutcome.Wrong, earned, Texts("Not right. Go through it step by step; the hints give one step at a time."));
    }

    private static MarkedAnswer MarkOptions(Exercise exercise, string? answer)
    {
        AnswerForm form = exercise.Form;
        if (!TryReadOptions(form, answer, out string[] keys, out string request))
        {
            return new MarkedAnswer(MarkOutcome.AskedAgain, 0, Texts(request));
        }

        if (IsSameOptions(form, keys, exercise.Solution.Keys))
        {
            return new MarkedAnswer(MarkOutcome.Right, 100, Texts("Right."));
        }

        // Each option in its place, or of a list each one rightly named less each one wrongly named, earns its share.
        double earned = form.Shape switch
        {
            AnswerShape.Order => 100.0 * keys.Where((k, i) => exercise.Solution.Keys[i] == k).Count() / keys.Length,
            AnswerShape.List => Math.Max(0, 100.0 * (keys.Count(k => exercise.Solution.Keys.Contains(k)) - keys.Count(k => !exercise.Solution.Keys.Contains(k))) / exercise.Solution.Keys.Count),
            _ => 0,
        };
        ExpectedSlip[] alike = [.. exercise.Slips.Where(s => s.Value is null && IsSameOptions(form, keys, s.Keys))];
        return alike.Length > 0 ? Recognised(exercise, alike, earned)
            : new MarkedAnswer(MarkOutcome.Wrong, earned, Texts("Not right. Go through it step by step; the hints give one step at a time."));
    }

    /// <summary>Names the likely mistake; where several give the same, each of them.</summary>
    private static MarkedAnswer Recognised(Exercise exercise, ExpectedSlip[] alike, double earned)
    {
        ExpectedSlip first = alike[0];
        SolutionStep? partsAt = first.PartsAtStep > 0 ? exercise.Solution.Steps[first.PartsAtStep - 1] : null;
        int worked = exercise.Solution.Steps.Count(s => !s.IsGiven);
        double kept = first.Value is null || worked == 0 ? 0 : 100.0 * first.KeptSteps / worked;
        Misconception[] made = [.. alike.SelectMany(a => a.Misconceptions).Distinct()];
        var feedback = new List<string> { $"Not right. It looks like {string.Join("; or like ", alike.Select(a => a.Name))}." };
        feedback.AddRange(made.Select(m => m.Feedback));
        if (partsAt is not null)
        {
            feedback.Add($"Here the ways part: {(partsAt.Law.Length == 0 ? "" : partsAt.Law + " ")}{partsAt.Quantity} = {partsAt.Expression}.");
        }

        return new MarkedAnswer(MarkOutcome.Wrong, Math.Max(earned, kept), ValueList<string>.Own([.. feedback]), ValueList<Misconception>.Own(made), partsAt);
    }

    /// <summary>The share of worked steps whose result stands in the working.</summary>
    private static double WorkingPercent(Exercise exercise, IEnumerable<string>? working, IFormatProvider provider)
    {
        SolutionStep[] worked = [.. exercise.Solution.Steps.Where(s => !s.IsGiven)];
        string[] written = [.. working ?? []];
        if (worked.Length == 0 || written.Length == 0)
        {
            return 0;
        }

        // The last step is the answer itself, which is not right here.
        int found = worked.Take(worked.Length - 1).Count(step => written.Any(w =>
            TryRead(KindOf(step.Unit), step.Unit, w, provider, out double value, out _) && step.Value is { } right && Math.Abs(value - right) <= 0.005 * Math.Abs(right)));
        return 100.0 * found / worked.Length;
    }

    private static QuantityKind? KindOf(string unit) => unit switch
    {
        "g" => QuantityKind.Mass,
        "mL" => QuantityKind.Volume,
        "°C" or "°F" => QuantityKind.Temperature,
        "%" => QuantityKind.Percent,
        "min" or "h" => QuantityKind.Duration,
        _ => null,
    };

    /// <summary>The right number with fewer digits than asked for, but at least two.</summary>
    private static bool IsCoarse(AnswerForm form, double value, double right)
    {
        int digits = form.Digits ?? 0;
        for (int fewer = digits - 1; fewer >= 2; fewer--)
        {
            double unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(right))) - fewer + 1);
            if (Math.Abs(value - Math.Round(right / unit, MidpointRounding.AwayFromZero) * unit) <= 1e-9 * Math.Abs(right))
            {
                return true;
            }
        }

        return false;
    }

    private static string DigitsAsked(AnswerForm form) => $"{Numbers.Exact(form.Digits ?? form.Decimals ?? 0)} {(form.Digits is null ? "decimals" : "significant digits")} are asked for.";

    private static bool TryRead(QuantityKind? quantity, string unit, string? text, IFormatProvider provider, out double value, out string error)
    {
        string written = text ?? "";
        if (written.Length > 200)
        {
            value = 0;
            error = "The text is too long to be one number.";
            return false;
        }

        if (quantity is not { } kind)
        {
            string number = unit.Length > 0 && written.TrimEnd().EndsWith(unit, StringComparison.OrdinalIgnoreCase) ? written.TrimEnd().Substring(0, written.TrimEnd().Length - unit.Length) : written;
            return QuantityText.TryParseNumber(number, provider, out value, out error);
        }

        if (!QuantityReader.TryRead(kind, written, provider, out double baseValue, out error))
        {
            value = 0;
            return false;
        }

        UnitTable.TryFind(KindFacts.Of(kind), unit, out KitchenUnit? asked, out _);
        value = asked!.FromBase(baseValue);
        return true;
    }

    private static bool TryReadOptions(AnswerForm form, string? answer, out string[] keys, out string request)
    {
        string[] parts = (answer ?? "").Split([' ', ',', ';', ')', '.', '\t', '\u00A0'], StringSplitOptions.RemoveEmptyEntries);
        string letters = string.Join(", ", form.Options.Select((_, i) => AnswerForm.Letter(i)));
        request = form.Shape switch
        {
            AnswerShape.Choice => $"Please write the letter of one option: {letters}.",
            AnswerShape.Order => $"Please write all letters in order: {letters}.",
            _ => $"Please write the letters of the options that fit, with commas between them: {letters}.",
        };
        keys = new string[parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            string part = parts[i].ToLowerInvariant();
            int index = part.Length == 1 && part[0] is >= 'a' and <= 'z' ? part[0] - 'a' : form.IndexOf(part);
            if (index < 0 || index >= form.Options.Count)
            {
                return false;
            }

            keys[i] = form.Options[index].Key;
        }

        int distinct = keys.Distinct(StringComparer.Ordinal).Count();
        return distinct == keys.Length && (form.Shape switch { AnswerShape.Choice => distinct == 1, AnswerShape.Order => distinct == form.Options.Count, _ => distinct > 0 });
    }

    private static bool IsSameOptions(AnswerForm form, string[] a, ValueList<string> b)
        => form.Shape == AnswerShape.List ? a.Length == b.Count && a.All(k => b.Contains(k)) : a.SequenceEqual(b);

    private static ValueList<string> Texts(params string[] texts) => ValueList<string>.From(texts.Where(t => t.Length > 0));
}
