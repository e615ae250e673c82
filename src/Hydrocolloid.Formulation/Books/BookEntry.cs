using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Books;

/// <summary>
/// One formula of a book, or the place of one that could not be read. A line of another entry whose ingredient has the id of this one
/// stands for it. Immutable.
/// </summary>
public sealed class BookEntry
{
    private static readonly Yield s_kilogram = Yield.Assembled(Mass.FromGrams(1000));

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
    /// <param name="yield">The size at which it is made; null for 1 kg assembled. Only fixed losses make a kilogram of it depend on the size, and need one.</param>
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

    /// <summary>What was measured on the finished product; it goes before what is worked out. Null if nothing was.</summary>
    public Measurements? Measured { get; init; }

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

    /// <summary>The batch that a kilogram of the entry is worked out from; null, and why, if there is none.</summary>
    /// <param name="formula">The formula, or what became of it once its parts were known.</param>
    /// <param name="problem">Why there is no batch.</param>
    internal Batch? Make(Formula? formula, out BookProblem? problem)
    {
        problem = null;
        if (formula is null)
        {
            problem = new BookProblem("formula-broken", Id, Fault!);
            return null;
        }

        Losses losses = formula.Process.Losses;
        if (Yield is null && (losses.Evaporation.Grams > 0 || losses.Straining.Grams > 0 || losses.Transfer.Grams > 0 || losses.Trimming.Grams > 0))
        {
            problem = new BookProblem("size-missing", Id, "It has a fixed loss, so what a kilogram of it takes depends on the size: state its yield.");
            return null;
        }

        if (!formula.TryScaleTo(Yield ?? s_kilogram, losses, out Batch? batch, out ValueList<FormulaProblem> problems))
        {
            problem = new BookProblem("batch-impossible", Id, string.Join(" ", problems.Select(p => p.Message)));
        }

        return batch;
    }
}
