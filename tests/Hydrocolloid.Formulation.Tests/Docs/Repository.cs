namespace Hydrocolloid.Formulation.Tests.Docs;

/// <summary>The repository that the tests stand in.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static IEnumerable<string> MarkdownFiles => Directory.EnumerateFiles(Path.Combine(Root, "docs"), "*.md", SearchOption.AllDirectories)
        .Append(Path.Combine(Root, "README.md")).Append(Path.Combine(Root, "DEVELOPERS.md")).Order(StringComparer.Ordinal);

    public static string Read(string relativePath) => File.ReadAllText(Path.Combine(Root, relativePath)).ReplaceLineEndings("\n");

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Hydrocolloid.Formulation.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The tests do not stand in the repository.");
    }
}
