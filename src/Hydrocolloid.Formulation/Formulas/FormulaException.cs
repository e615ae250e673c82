namespace Hydrocolloid.Formulation;

/// <summary>A formula or a batch that cannot be; it carries every problem, not only the first.</summary>
public sealed class FormulaException : Exception
{
    /// <summary>Makes an exception with a message only.</summary>
    public FormulaException()
        : this("The formula cannot be.")
    {
    }

    /// <summary>Makes an exception with a message only.</summary>
    /// <param name="message">The message.</param>
    public FormulaException(string message)
        : base(message)
    {
    }

    /// <summary>Makes an exception with a message and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public FormulaException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }

    internal FormulaException(string what, ValueList<FormulaProblem> problems)
        : base(what + " cannot be:\n" + string.Join("\n", problems))
        => Problems = problems;

    /// <summary>Every problem, in the order of the formula.</summary>
    public ValueList<FormulaProblem> Problems { get; }
}
