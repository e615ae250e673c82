using System.Text.RegularExpressions;

namespace Hydrocolloid.Formulation.Tests;

/// <summary>The repository that the tests were built in.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static string Library => Path.Combine(Root, "src", "Hydrocolloid.Formulation");

    /// <summary>README, the contributors' guide and every page of docs.</summary>
    public static IEnumerable<string> MarkdownFiles => Directory.EnumerateFiles(Path.Combine(Root, "docs"), "*.md", SearchOption.AllDirectories)
        .Append(Path.Combine(Root, "README.md")).Append(Path.Combine(Root, "DEVELOPERS.md")).Order(StringComparer.Ordinal);

    /// <summary>A file's text with "\n" line ends.</summary>
    public static string Read(string relativePath) => File.ReadAllText(Path.Combine(Root, relativePath)).ReplaceLineEndings("\n");

    /// <summary>A source file without comments and without the text of its strings.</summary>
    public static string Code(string file)
        => Regex.Replace(File.ReadAllText(file), """//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*" """.Trim(), m => m.Value[0] == '"' ? "\"\"" : "", RegexOptions.Singleline);

    private static string Find(string folder)
        => File.Exists(Path.Combine(folder, "Hydrocolloid.Formulation.sln")) ? folder
            : Find(Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar)) ?? throw new InvalidOperationException("The tests run outside the repository."));
}
