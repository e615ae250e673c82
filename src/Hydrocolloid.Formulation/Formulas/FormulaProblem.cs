namespace Hydrocolloid.Formulation;

/// <summary>One reason why a formula cannot be. Immutable, equal by content.</summary>
public sealed record FormulaProblem
{
    internal FormulaProblem(string id, string pointer, string message, string? line = null, double? value = null, double? limit = null)
    {
        Id = id;
        Pointer = pointer;
        Message = message;
        Line = line;
        Value = value;
        Limit = limit;
    }

    /// <summary>Stable kebab-case id, such as <c>base-shares</c>; docs/problems.md lists them.</summary>
    public string Id { get; }

    /// <summary>Where in the formula, as a JSON Pointer into its document, such as <c>/phases/0/add/1/percent</c>.</summary>
    public string Pointer { get; }

    /// <summary>The problem in words: the line, the value and the limit.</summary>
    public string Message { get; }

    /// <summary>The label of the line it is about; null if it is about the whole formula.</summary>
    public string? Line { get; }

    /// <summary>The value that cannot be; null if there is none.</summary>
    public double? Value { get; }

    /// <summary>The limit it breaks; null if there is none.</summary>
    public double? Limit { get; }

    /// <summary>The place and the message.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{(Pointer.Length == 0 ? "/" : Pointer)}: {Message}";
}
