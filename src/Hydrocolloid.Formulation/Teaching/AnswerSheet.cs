using System.Globalization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>The answers of one student. Immutable, equal by content.</summary>
public sealed record AnswerSheet
{
    /// <summary>Makes a sheet.</summary>
    /// <param name="student">A name or number.</param>
    /// <param name="answers">The answers.</param>
    /// <param name="decimalSign">The decimal sign in which they are written: "." or ",".</param>
    /// <exception cref="ArgumentException">The student is blank, the sign is another one, or an exercise is answered twice.</exception>
    public AnswerSheet(string student, ValueList<StudentAnswer> answers, string decimalSign = ".")
    {
        Student = Guard.NotBlank(student);
        Answers = answers.Select(a => a.Number).Distinct().Count() == answers.Count ? answers : throw new ArgumentException("An exercise is answered twice.", nameof(answers));
        DecimalSign = decimalSign is "." or "," ? decimalSign : throw new ArgumentException("The decimal sign is \".\" or \",\".", nameof(decimalSign));
    }

    /// <summary>A name or number.</summary>
    public string Student { get; }

    /// <summary>The answers.</summary>
    public ValueList<StudentAnswer> Answers { get; }

    /// <summary>The decimal sign in which they are written.</summary>
    public string DecimalSign { get; }

    internal IFormatProvider Provider => new NumberFormatInfo { NumberDecimalSeparator = DecimalSign };
}
