using System.Text.RegularExpressions;

namespace Hydrocolloid.Formulation.Tests;

/// <summary>The repository that the tests were built in.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static string Library => Path.Combine(Root, "src", "Hydrocolloid.Formulation");

    /// <summary>A source file without comments and without the text of its strings.</summary>
    public static string Code(string file)
        => Regex.Replace(File.ReadAllText(file), """//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*" """.Trim(), m => m.Value[0] == '"' ? "\"\"" : "", RegexOptions.Singleline);

    private static string Find(string folder)
        => File.Exists(Path.Combine(folder, "Hydrocolloid.Formulation.sln")) ? folder
            : Find(Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar)) ?? throw new InvalidOperationException("The tests run outside the repository."));
}
