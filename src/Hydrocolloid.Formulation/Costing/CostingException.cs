namespace Hydrocolloid.Formulation.Costing;

/// <summary>Prices that cannot stand in one list; it carries every problem, not only the first.</summary>
public sealed class CostingException : Exception
{
    /// <summary>Makes an exception with a message only.</summary>
    public CostingException()
        : this("The prices cannot be.")
    {
    }

    /// <summary>Makes an exception with a message only.</summary>
    /// <param name="message">The message.</param>
    public CostingException(string message)
        : base(message)
    {
    }

    /// <summary>Makes an exception with a message and a cause.</summary>
    /// <param name="message">The message.</param>
    /// <param name="innerException">The cause.</param>
    public CostingException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }

    internal CostingException(string what, ValueList<CostingProblem> problems)
        : base(what + "\n" + string.Join("\n", problems))
        => Problems = problems;

    /// <summary>Every problem.</summary>
    public ValueList<CostingProblem> Problems { get; }
}
