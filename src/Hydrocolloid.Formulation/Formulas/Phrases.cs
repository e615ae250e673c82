namespace Hydrocolloid.Formulation;

/// <summary>Names of lines inside sentences.</summary>
internal static class Phrases
{
    /// <summary>The ingredient's name as it stands inside a sentence: no capital, unless it is an abbreviation.</summary>
    public static string InSentence(FormulaLine line) => InSentence(line.Ingredient.Name);

    /// <summary>A name as it stands inside a sentence.</summary>
    public static string InSentence(string name)
    {
        return name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name.Substring(1) : name;
    }

    public static string Names(IEnumerable<FormulaLine> lines) => And(lines.Select(InSentence));

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string And(IEnumerable<string> names)
    {
        string[] all = [.. names];
        return all.Length < 2 ? string.Concat(all) : string.Join(", ", all.Take(all.Length - 1)) + " and " + all[all.Length - 1];
    }
}
