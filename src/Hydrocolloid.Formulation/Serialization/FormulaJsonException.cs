namespace Hydrocolloid.Formulation.Serialization;

/// <summary>A document that is not a formula, or a formula that no document can hold; it carries every problem, not only the first.</summary>
public sealed class FormulaJsonException : Exception
{
    /// <summary>Makes an exception with a message only.</summary>
    public FormulaJsonException()
        : this("The document is not a formula.")
    {
    }

    /// <summary>Makes an exception with a message only.</summary>
    /// <param name="message">The message.</param>
    public FormulaJsonException(string message)
        : base(message)
    {
    }

    /// <summary>Makes an exception with a message and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public FormulaJsonException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }

    internal FormulaJsonException(string what, ValueList<FormulaJsonProblem> problems)
        : base(what + "\n" + string.Join("\n", problems))
        => Problems = problems;

    /// <summary>Every problem, in the order in which it was found.</summary>
    public ValueList<FormulaJsonProblem> Problems { get; }

    internal static FormulaJsonException Unreadable(ValueList<FormulaJsonProblem> problems) => new("The document is not a formula:", problems);

    internal static FormulaJsonException NoCatalogue(ValueList<FormulaJsonProblem> problems) => new("The document is not a catalogue:", problems);

    internal static FormulaJsonException NoPriceList(ValueList<FormulaJsonProblem> problems) => new("The document is not a price list:", problems);

    internal static FormulaJsonException NoBook(ValueList<FormulaJsonProblem> problems) => new("The document is not a book of formulas:", problems);

    internal static FormulaJsonException NoRecord(ValueList<FormulaJsonProblem> problems) => new("The document is not a process record:", problems);

    internal static FormulaJsonException NoTrial(ValueList<FormulaJsonProblem> problems) => new("The document is not a trial:", problems);

    internal static FormulaJsonException Unwritable(string id, string pointer, string message)
        => new("The formula cannot be written as a document:", ValueList<FormulaJsonProblem>.Own([new FormulaJsonProblem(id, pointer, message)]));
}
