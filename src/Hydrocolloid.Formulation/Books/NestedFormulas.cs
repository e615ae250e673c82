using System.Diagnostics;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Books;

/// <summary>
/// Formulas that are made with one another: a line whose ingredient has the id of another entry stands for what that entry makes. Each
/// entry is worked out once, after what it is made with; what cannot be used is reported, and the rest stays usable. Immutable, safe to
/// share between threads.
/// </summary>
[DebuggerDisplay("{Entries.Count} formulas")]
public sealed class NestedFormulas
{
    private readonly Dictionary<string, int> _positions = new(StringComparer.Ordinal);
    private readonly Formula?[] _formulas;
    private readonly Ingredient?[] _made;
    private readonly List<int> _order = [];

    private NestedFormulas(ValueList<BookEntry> entries)
    {
        Entries = entries;
        _formulas = new Formula?[entries.Count];
        _made = new Ingredient?[entries.Count];
        Problems = ValueList<BookProblem>.From(Work());
    }

    /// <summary>The entries, in the order given.</summary>
    public ValueList<BookEntry> Entries { get; }

    /// <summary>The entries that cannot be used, and why; empty if all can.</summary>
    public ValueList<BookProblem> Problems { get; }

    /// <summary>The formula of an entry, with all that is known of the entries that it is made with.</summary>
    /// <param name="id">The id of the entry.</param>
    /// <exception cref="ArgumentException">There is no such entry, or it cannot be used; the message says why.</exception>
    public Formula this[string id] => _formulas[PositionOf(id)] ?? throw Unusable(id);

    /// <summary>Takes formulas together.</summary>
    /// <param name="entries">The entries. One whose id was there before is reported and not used.</param>
    /// <returns>The formulas.</returns>
    public static NestedFormulas From(IEnumerable<BookEntry> entries)
        => new(ValueList<BookEntry>.From(Guard.NotNull(entries).Select(e => Guard.NotNull(e, nameof(entries)))));

    /// <summary>
    /// What an entry makes, as an ingredient: composition after boiling off, °Brix, allergens, diet, tannin, enzymes, casein and cautions,
    /// each as far as it is known of every line; pH and density measured, else worked out if no water is lost. It is no hydrocolloid,
    /// even if it holds some: what gels in a part is set in the part.
    /// </summary>
    /// <param name="id">The id of the entry.</param>
    /// <returns>The ingredient.</returns>
    /// <exception cref="ArgumentException">There is no such entry, or it cannot be made into an ingredient; the message says why.</exception>
    public Ingredient Made(string id)
    {
        int position = PositionOf(id);
        return _made[position] ?? Make(position, this[id], out BookProblem? problem) ?? throw new ArgumentException(problem!.ToString(), nameof(id));
    }

    /// <summary>A formula with all that is known of the entries that it is made with; the formula need not be an entry.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The formula; the same if it is made with no entry.</returns>
    /// <exception cref="ArgumentException">It is made with an entry that cannot be used.</exception>
    /// <exception cref="FormulaException">With what is known of the parts it cannot be solved.</exception>
    public Formula Resolve(Formula formula)
    {
        foreach (string id in PartIdsOf(Guard.NotNull(formula)))
        {
            Made(id);
        }

        return WithParts(formula) is { } builder ? builder.Build() : formula;
    }

    /// <summary>Everything to make for an amount of an entry: of each part as much as is needed, its own losses made up for.</summary>
    /// <param name="id">The id of the entry.</param>
    /// <param name="yield">How much of it.</param>
    /// <returns>The batches, parts first.</returns>
    /// <exception cref="ArgumentException">There is no such entry, or it cannot be used; the message says why.</exception>
    /// <exception cref="FormulaException">There is no such batch of it or of a part.</exception>
    public MakingPlan Plan(string id, Yield yield)
    {
        Batch asked = this[id].ScaleTo(Guard.NotNull(yield));
        var needed = new Dictionary<string, double>(StringComparer.Ordinal);
        var users = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        var batches = new List<PlannedBatch>();
        void Take(string user, Batch batch)
        {
            foreach (BatchLine line in batch.Lines.Where(l => l.Grams > 0 && IsPart(l.Line.Ingredient.Id)))
            {
                string part = line.Line.Ingredient.Id;
                needed[part] = (needed.TryGetValue(part, out double grams) ? grams : 0) + line.Grams;
                if (!users.TryGetValue(part, out List<string>? by))
                {
                    users.Add(part, by = []);
                }

                if (!by.Contains(user))
                {
                    by.Add(user);
                }
            }
        }

        batches.Add(new PlannedBatch(id, asked, default));
        Take(id, asked);
        for (int i = _order.Count - 1; i >= 0; i--) // users come after their parts in the order, so backwards every need is known in time
        {
            string part = Entries[_order[i]].Id;
            if (part != id && needed.TryGetValue(part, out double grams))
            {
                Batch batch = this[part].ScaleTo(Yield.Finished(UnitsNet.Mass.FromGrams(grams)));
                batches.Add(new PlannedBatch(part, batch, ValueList<string>.From(users[part])));
                Take(part, batch);
            }
        }

        batches.Reverse();
        return new MakingPlan(ValueList<PlannedBatch>.From(batches));
    }

    private bool IsPart(string id) => _positions.ContainsKey(id);

    private int PositionOf(string id) => _positions.TryGetValue(Guard.NotNull(id), out int position) ? position
        : throw new ArgumentException($"There is no entry '{id}'.", nameof(id));

    private ArgumentException Unusable(string id)
        => new($"'{id}' cannot be used: {string.Join(" ", Problems.Where(p => p.Entry == id).Select(p => p.Message))}", nameof(id));

    private IEnumerable<string> PartIdsOf(Formula formula)
        => formula.Lines.Select(l => l.Ingredient.Id).Where(IsPart).Distinct(StringComparer.Ordinal);

    private List<BookProblem> Work()
    {
        var problems = new List<BookProblem>();
        for (int i = 0; i < Entries.Count; i++)
        {
            if (_positions.TryGetValue(Entries[i].Id, out int first))
            {
                problems.Add(new BookProblem("id-repeated", Entries[i].Id, $"Entry number {Numbers.Exact(first + 1)} has this id too; the first counts."));
            }
            else
            {
                _positions.Add(Entries[i].Id, i);
            }
        }

        IEnumerable<int>? PartsOf(int i) => _positions[Entries[i].Id] != i ? null
            : Entries[i].Formula is { } formula ? PartIdsOf(formula).Select(p => _positions[p]) : [];
        var order = BookOrder.Of(Entries.Count, PartsOf);
        var isPart = new HashSet<int>(Enumerable.Range(0, Entries.Count).SelectMany(i => PartsOf(i) ?? []));
        foreach (int i in order.Levels.SelectMany(l => l))
        {
            if (Solve(i, isPart.Contains(i)) is { } problem)
            {
                problems.Add(problem);
            }

            _order.Add(i);
        }

        foreach (int i in Enumerable.Range(0, Entries.Count).Where(order.IsUnreached))
        {
            string? cycle = order.CycleOf(i, PartsOf, p => Entries[p].Id);
            problems.Add(cycle is not null ? new BookProblem("cycle", Entries[i].Id, cycle + ".")
                : new BookProblem("part-unusable", Entries[i].Id, "It is made with something that is made with itself."));
        }

        return problems;
    }

    private BookProblem? Solve(int i, bool isPart)
    {
        BookEntry entry = Entries[i];
        if (entry.Formula is not { } formula)
        {
            return new BookProblem("formula-broken", entry.Id, entry.Fault!);
        }

        string[] unusable = [.. PartIdsOf(formula).Where(p => _made[_positions[p]] is null)];
        if (unusable.Length > 0)
        {
            return new BookProblem("part-unusable", entry.Id, $"It is made with {string.Join(", ", unusable)}, which cannot be used.");
        }

        FormulaBuilder? builder = WithParts(formula);
        if (builder is not null && !builder.TryBuild(out formula!, out ValueList<FormulaProblem> faults))
        {
            return new BookProblem("formula-broken", entry.Id, string.Join(" ", faults.Select(f => f.Message)));
        }

        _formulas[i] = formula;
        BookProblem? problem = null;
        _made[i] = isPart ? Make(i, formula, out problem) : null;
        return problem;
    }

    private Ingredient? Make(int i, Formula formula, out BookProblem? problem)
        => Entries[i].Make(formula, out problem) is { } batch ? MadeIngredient.Of(Entries[i], batch) : null;

    /// <summary>The formula with its parts in place; null if it has none.</summary>
    private FormulaBuilder? WithParts(Formula formula)
    {
        if (!PartIdsOf(formula).Any())
        {
            return null;
        }

        FormulaBuilder builder = formula.ToBuilder();
        foreach (List<DraftLine> lines in builder.PhaseDrafts.Select(p => p.Lines).Prepend(builder.BaseLines))
        {
            for (int i = 0; i < lines.Count; i++)
            {
                if (IsPart(lines[i].Ingredient.Id))
                {
                    lines[i] = lines[i] with { Ingredient = Made(lines[i].Ingredient.Id) };
                }
            }
        }

        return builder;
    }
}
