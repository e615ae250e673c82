using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>One formula of a book, or the place of one that could not be read. Immutable.</summary>
public sealed class BookEntry
{
    private BookEntry(string id, Formula? formula, Yield? yield, string? fault)
    {
        Id = Ids.Check(id, nameof(id));
        Formula = formula;
        Yield = yield;
        Fault = fault;
    }

    /// <summary>An entry.</summary>
    /// <param name="id">Its kebab-case id; a line of another entry whose ingredient has this id stands for this formula.</param>
    /// <param name="formula">The formula; the losses of its process plan count.</param>
    /// <param name="yield">The size at which it is made; null for 1 kg assembled. Only fixed losses make the cost of a kilogram depend on it, and need one.</param>
    /// <exception cref="ArgumentException">The id is not kebab-case.</exception>
    public BookEntry(string id, Formula formula, Yield? yield = null)
        : this(id, Guard.NotNull(formula), yield, null)
    {
    }

    /// <summary>Its id.</summary>
    public string Id { get; }

    /// <summary>The formula; null if it could not be read.</summary>
    public Formula? Formula { get; }

    /// <summary>The size at which it is made; null if not stated.</summary>
    public Yield? Yield { get; }

    /// <summary>Why there is no formula; null if there is one.</summary>
    public string? Fault { get; }

    /// <summary>An entry whose formula could not be read: it keeps its place, is reported, and so is what is made with it.</summary>
    /// <param name="id">Its kebab-case id.</param>
    /// <param name="fault">Why; not blank.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentException">The id is not kebab-case, or the fault is blank.</exception>
    public static BookEntry Broken(string id, string fault) => new(id, null, null, Guard.NotBlank(fault));

    /// <summary>The id.</summary>
    /// <returns>The id.</returns>
    public override string ToString() => Id;
}
