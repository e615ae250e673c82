using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>An exercise with everything that marking needs: question, answer, solution, and what known mistakes would give. Plain data; immutable, equal by content.</summary>
public sealed record Exercise
{
    internal Exercise(string kind, int level, string question, ValueList<Given> givens, ValueList<GivenThing> things, AnswerForm form, WorkedSolution solution, ValueList<ExpectedSlip> slips)
    {
        Kind = kind;
        Level = level;
        Question = question;
        Givens = givens;
        Things = things;
        Form = form;
        Solution = solution;
        Slips = slips;
    }

    /// <summary>The id of its kind.</summary>
    public string Kind { get; }

    /// <summary>Its level, from 1.</summary>
    public int Level { get; }

    /// <summary>The question in English. <see cref="Kind"/>, <see cref="Level"/>, <see cref="Givens"/> and <see cref="Things"/> say the same without words.</summary>
    public string Question { get; }

    /// <summary>The numbers stated.</summary>
    public ValueList<Given> Givens { get; }

    /// <summary>The things named, by id.</summary>
    public ValueList<GivenThing> Things { get; }

    /// <summary>What is asked for.</summary>
    public AnswerForm Form { get; }

    /// <summary>The right way.</summary>
    public WorkedSolution Solution { get; }

    /// <summary>What known mistakes would give; only those that differ from the right answer by more than the tolerance.</summary>
    public ValueList<ExpectedSlip> Slips { get; internal init; }

    /// <summary>How far from the answer still counts as right, in the unit of the answer; 0 for options.</summary>
    public double Tolerance => Form.Shape == AnswerShape.Number ? Form.ToleranceOf(Solution.Value) : 0;

    /// <summary>The answer with the right number of digits and its unit, or the letters of the options.</summary>
    public string AnswerText => Form.Shape == AnswerShape.Number ? Form.TextOf(Solution.Value)
        : string.Join(", ", Solution.Keys.Select(k => AnswerForm.Letter(Form.IndexOf(k))));

    /// <summary>Hints, one step at a time: first the law, then the expression. The last result is not given away, nor is a verdict on an option.</summary>
    public ValueList<string> Hints => ValueList<string>.From(Solution.Steps.Where(s => !s.IsGiven)
        .SelectMany(s => s.Value is null ? new[] { s.Law } : new[] { s.Law, $"{s.Quantity} = {s.Expression}" }).Where(h => h.Length > 0).Distinct());

    /// <summary>The solution as it is written on the board: the steps, a word on rounding, and the answer.</summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string SolutionText()
        => string.Concat(Solution.Steps.Select((s, i) => $"{Numbers.Exact(i + 1)}. {(s.Law.Length == 0 ? "" : s.Law + " ")}{s}\n"))
            + (Form.Shape == AnswerShape.Number
                ? $"Nothing is rounded on the way (six digits are shown); the answer is rounded to {(Form.Digits is { } d ? Numbers.Exact(d) + " significant digits" : Numbers.Exact(Form.Decimals!.Value) + (Form.Decimals == 1 ? " decimal" : " decimals"))}: {AnswerText}\n"
                : $"Answer: {AnswerText}\n");

    /// <summary>The question.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Question;
}
