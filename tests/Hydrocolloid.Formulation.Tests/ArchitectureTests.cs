using System.Text.RegularExpressions;

namespace Hydrocolloid.Formulation.Tests;

/// <summary>Dependencies point one way: a folder of the library names only types of the folders listed for it.</summary>
public partial class ArchitectureTests
{
    /// <summary>What each folder must not know.</summary>
    public static TheoryData<string, string[]> Walls => new()
    {
        { "Internal", ["Figures", "Ingredients", "Hydrocolloids", "Catalogues", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Figures", ["Ingredients", "Hydrocolloids", "Catalogues", "Text", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Chemistry", ["Ingredients", "Hydrocolloids", "Catalogues", "Text", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Gelation", ["Text", "Formulas", "Batches", "Derivations", "Analysis", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Hydrocolloids", ["Text", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Ingredients", ["Text", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Catalogues", ["Text", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Text", ["Figures", "Ingredients", "Hydrocolloids", "Catalogues", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Thermal", ["Ingredients", "Hydrocolloids", "Catalogues", "Text", "Formulas", "Batches", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Formulas", ["Catalogues", "Text", "Batches", "Derivations", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Batches", ["Catalogues", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Derivations", ["Catalogues", "Text", "Batches", "Compatibility", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Compatibility", ["Batches", "Derivations", "Choosing", "Methods", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Books", ["Catalogues", "Text", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Costing", ["Catalogues", "Derivations", "Gelation", "Compatibility", "Choosing", "Methods"] },
        { "Methods", ["Catalogues", "Derivations", "Choosing", "Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Choosing", ["Books", "Serialization", "Declarations", "Exchange", "Costing", "Teaching"] },
        { "Serialization", ["Costing", "Declarations", "Exchange", "Teaching"] },
    };

    private static readonly Dictionary<string, string> s_folderByType = Files("")
        .SelectMany(f => Declaration().Matches(Repository.Code(f)).Select(m => (Type: m.Groups["name"].Value, Folder: FolderOf(f))))
        .GroupBy(d => d.Type, StringComparer.Ordinal)
        .Where(g => g.Select(d => d.Folder).Distinct(StringComparer.Ordinal).Count() == 1)
        .ToDictionary(g => g.Key, g => g.First().Folder, StringComparer.Ordinal);

    [Theory, MemberData(nameof(Walls))]
    public void Folder_does_not_know(string folder, string[] forbidden)
    {
        // Words.cs is the table of the words for every closed set, whatever folder the set is of.
        string[] known = [.. Files(folder).Where(f => Path.GetFileName(f) != "Words.cs").SelectMany(f => TypesNamedIn(f).Where(t => forbidden.Contains(s_folderByType[t])).Select(t => $"{Path.GetFileName(f)} names {t} of {s_folderByType[t]}"))];

        string.Join("; ", known.Except(s_allowed)).Should().BeEmpty();
    }

    [Fact]
    public void Types_are_found()
        => s_folderByType.Should().Contain("Formula", "Formulas").And.Contain("Batch", "Batches").And.Contain("Ingredient", "Ingredients").And.Contain("ValueList", "Figures");

    private static readonly string[] s_allowed =
    [
        "KitchenUnit.cs names Source of Figures", // a property of its own of that name
        "Severity.cs names Caution of Methods", // a value of its own of that name
        "Declaration.cs names Caution of Methods", // likewise a text of its own
        "CoolingVerdict.cs names Caution of Methods", // a property of its own of that name
        "CitationQuality.cs names Estimate of Gelation", // likewise
        "MouldShapeReader.cs names Given of Teaching", // a method of its own of that name
        "TrialDose.cs names Dose of Formulas", // properties of their own of that name
        "TrialFit.cs names Dose of Formulas",
        "TrialPoint.cs names Dose of Formulas",
    ];

    // Types stand at the left margin; what is indented is nested and nobody else's.
    [GeneratedRegex(@"^(?:public|internal)\s[\w ]*\b(?:class|struct|interface|enum|record)\s+(?<name>[A-Z]\w*)", RegexOptions.Multiline)]
    private static partial Regex Declaration();

    // A name after a dot is a member of something else.
    [GeneratedRegex(@"(?<![\w.])[A-Z]\w*")]
    private static partial Regex Name();

    private static IEnumerable<string> Files(string folder)
        => Directory.EnumerateFiles(Path.Combine(Repository.Library, folder), "*.cs", SearchOption.AllDirectories)
            .Where(f => FolderOf(f) is not ("bin" or "obj")).OrderBy(f => f, StringComparer.Ordinal);

    private static string FolderOf(string file)
    {
        string[] parts = Path.GetRelativePath(Repository.Library, file).Split(Path.DirectorySeparatorChar);
        return parts.Length == 1 ? "" : parts[0];
    }

    private static IEnumerable<string> TypesNamedIn(string file)
        => Name().Matches(Repository.Code(file)).Select(m => m.Value).Distinct(StringComparer.Ordinal).Where(s_folderByType.ContainsKey);
}
