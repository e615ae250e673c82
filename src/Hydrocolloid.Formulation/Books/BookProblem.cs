namespace Hydrocolloid.Formulation.Books;

/// <summary>Why a formula of a book cannot be used. Immutable, equal by content.</summary>
public sealed record BookProblem
{
    internal BookProblem(string id, string entry, string message)
    {
        Id = id;
        Entry = entry;
        Message = message;
    }

    /// <summary>Stable kebab-case id, such as <c>cycle</c>; docs/books.md lists them.</summary>
    public string Id { get; }

    /// <summary>The id of the entry.</summary>
    public string Entry { get; }

    /// <summary>The problem in words.</summary>
    public string Message { get; }

    /// <summary>The entry and the message.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Entry}: {Message}";
}
