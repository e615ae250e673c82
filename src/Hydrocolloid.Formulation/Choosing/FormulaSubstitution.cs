using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>Makes a formula with another gelling agent, for the same texture.</summary>
public static class FormulaSubstitution
{
    /// <summary>The formula with other agents in place of one, worked in a plain kitchen.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="from">What is taken out: the label of a line, an agent by a name that the catalogue knows, a family such as <c>gelatin</c>, or a blend by its id.</param>
    /// <param name="to">What comes in, by the same names. Of several agents that answer to it, the one with the least trouble in this formula is taken.</param>
    /// <returns>The new formula with all it took; or, without one, the reasons.</returns>
    /// <exception cref="ArgumentNullException">The formula or a word is null.</exception>
    /// <exception cref="ArgumentException">A word is blank, no hydrocolloid of the formula answers to the first, or no gelling agent or known blend to the second; the message lists those there are.</exception>
    public static Substitution Substitute(this Formula formula, string from, string to) => formula.Substitute(from, to, MethodOptions.Default);

    /// <summary>The formula with other agents in place of one.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="from">What is taken out: the label of a line, an agent by a name that the catalogue knows, a family such as <c>gelatin</c>, or a blend by its id.</param>
    /// <param name="to">What comes in, by the same names. Of several agents that answer to it, the one with the least trouble in this formula is taken.</param>
    /// <param name="options">How the method is to be planned.</param>
    /// <returns>The new formula with all it took; or, without one, the reasons.</returns>
    /// <exception cref="ArgumentNullException">The formula, a word or the options are null.</exception>
    /// <exception cref="ArgumentException">A word is blank, no hydrocolloid of the formula answers to the first, or no gelling agent or known blend to the second; the message lists those there are.</exception>
    public static Substitution Substitute(this Formula formula, string from, string to, MethodOptions options) => Best(formula, Lines(formula, from), Systems(to), options);

    /// <summary>The formula with a gel system in place of one or more agents.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="from">What is taken out: the label of a line, an agent, a family or a blend.</param>
    /// <param name="to">What comes in; the grade of an agent counts.</param>
    /// <param name="options">How the method is to be planned.</param>
    /// <returns>The new formula with all it took; or, without one, the reasons.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The word is blank, or no hydrocolloid of the formula answers to it; the message lists those there are.</exception>
    public static Substitution Substitute(this Formula formula, string from, GelSystem to, MethodOptions options) => Best(formula, Lines(formula, from), [Guard.NotNull(to)], options);

    /// <summary>The formula with other agents in place of all that gel in it, and of the gums that are a blend with one of them, worked in a plain kitchen.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="to">What comes in: an agent by a name that the catalogue knows, a family, or a blend.</param>
    /// <returns>The new formula with all it took; or, without one, the reasons.</returns>
    /// <exception cref="ArgumentNullException">The formula or the word is null.</exception>
    /// <exception cref="ArgumentException">Nothing gels in the formula, or no gelling agent or known blend answers to the word.</exception>
    public static Substitution SubstituteAll(this Formula formula, string to) => formula.SubstituteAll(to, MethodOptions.Default);

    /// <summary>The formula with other agents in place of all that gel in it, and of the gums that are a blend with one of them.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="to">What comes in: an agent by a name that the catalogue knows, a family, or a blend.</param>
    /// <param name="options">How the method is to be planned.</param>
    /// <returns>The new formula with all it took; or, without one, the reasons.</returns>
    /// <exception cref="ArgumentNullException">The formula, the word or the options are null.</exception>
    /// <exception cref="ArgumentException">Nothing gels in the formula, or no gelling agent or known blend answers to the word.</exception>
    public static Substitution SubstituteAll(this Formula formula, string to, MethodOptions options) => Best(formula, AllThatGels(formula), Systems(to), options);

    /// <summary>The formula with a gel system in place of all that gels in it, and of the gums that are a blend with one of them.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="to">What comes in; the grade of an agent counts.</param>
    /// <param name="options">How the method is to be planned.</param>
    /// <returns>The new formula with all it took; or, without one, the reasons.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">Nothing gels in the formula.</exception>
    public static Substitution SubstituteAll(this Formula formula, GelSystem to, MethodOptions options) => Best(formula, AllThatGels(formula), [Guard.NotNull(to)], options);

    /// <summary>The least trouble wins: a formula at all, then conflicts, cautions, allergens, and the order of the catalogue.</summary>
    private static Substitution Best(Formula formula, FormulaLine[] old, IEnumerable<GelSystem> systems, MethodOptions options)
        => systems.Select(s => new Substituting(formula, old, s, Guard.NotNull(options)).Run())
            .OrderBy(s => s.Formula is null)
            .ThenBy(s => s.Findings.Count(f => f.Severity == Severity.Conflict) + (s.Method?.Conflicts.Count ?? 0))
            .ThenBy(s => s.Findings.Count(f => f.Severity == Severity.Caution))
            .ThenBy(s => s.To.Agents.Sum(a => a.Allergens?.Value.Count ?? 0))
            .ThenBy(s => s.To.Id, StringComparer.Ordinal).First();

    private static ValueList<GelSystem> Systems(string to) => GelSystem.Find(Guard.NotNull(to)) is { IsEmpty: false } systems ? systems
        : throw new ArgumentException(
            $"No gelling agent or known blend answers to '{to}'. The agents: {string.Join(", ", Catalogue.BuiltIn.OfRole(HydrocolloidRole.GellingAgent).Select(i => i.Id))}; the blends: {string.Join(", ", GelSystem.KnownBlends.Select(b => b.Id))}.",
            nameof(to));

    private static FormulaLine[] Lines(Formula formula, string from)
    {
        FormulaLine[] hydrocolloids = [.. Guard.NotNull(formula).Lines.Where(IsAgent)];
        string word = Guard.NotNull(from);
        FormulaLine[] found = [.. hydrocolloids.Where(l => l.Label == word)];
        if (found.Length == 0)
        {
            string[] ids = [.. GelSystem.Answering(word, Catalogue.BuiltIn).Concat(GelSystem.Find(word).SelectMany(s => s.Agents)).Select(i => i.Id)];
            found = [.. hydrocolloids.Where(l => ids.Contains(l.Ingredient.Id) || ids.Contains(l.Ingredient.BasedOn?.Id) || l.Ingredient.Name.Equals(word, StringComparison.OrdinalIgnoreCase))];
        }

        return found.Length > 0 ? found
            : throw new ArgumentException($"No hydrocolloid that is added to the formula answers to '{word}'. Those that are: {string.Join(", ", hydrocolloids.Select(l => l.Label))}.", nameof(from));
    }

    private static FormulaLine[] AllThatGels(Formula formula)
    {
        FormulaLine[] agents = [.. Guard.NotNull(formula).Lines.Where(IsAgent)];
        FormulaLine[] old = [.. agents.Where(l => l.Ingredient.Profile!.Role == HydrocolloidRole.GellingAgent || agents.Any(o => o != l && GelSystem.Between(l.Ingredient, o.Ingredient) is not null))];
        return old.Length > 0 ? old : throw new ArgumentException("Nothing that is added to the formula gels.", nameof(formula));
    }

    private static bool IsAgent(FormulaLine line) => line is { IsBase: false, IsContinuous: true, Ingredient.Profile: not null };
}
