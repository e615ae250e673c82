using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>What an exercise kind makes of its draws: a question, what is asked for, and the way to the answer with or without given mistakes.</summary>
public sealed class ExerciseDraft
{
    /// <summary>Makes a draft.</summary>
    /// <param name="question">The question.</param>
    /// <param name="form">What is asked for.</param>
    /// <param name="solve">The way to the answer. It is given a test for mistakes, and where one is made it goes on with the mistake; without any it is the right way. Null where a mistake makes no sense.</param>
    /// <param name="misconceptions">The mistakes that it knows.</param>
    /// <exception cref="ArgumentException">The question is blank.</exception>
    public ExerciseDraft(string question, AnswerForm form, Func<Func<Misconception, bool>, WorkedSolution?> solve, params Misconception[] misconceptions)
    {
        Question = Guard.NotBlank(question);
        Form = Guard.NotNull(form);
        Solve = Guard.NotNull(solve);
        Misconceptions = ValueList<Misconception>.From(misconceptions);
    }

    /// <summary>The question.</summary>
    public string Question { get; }

    /// <summary>What is asked for.</summary>
    public AnswerForm Form { get; }

    /// <summary>The way to the answer.</summary>
    public Func<Func<Misconception, bool>, WorkedSolution?> Solve { get; }

    /// <summary>The mistakes that it knows.</summary>
    public ValueList<Misconception> Misconceptions { get; }
}
