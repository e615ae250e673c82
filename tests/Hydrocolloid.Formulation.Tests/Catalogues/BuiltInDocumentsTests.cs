using System.Text.Json;

namespace Hydrocolloid.Formulation.Tests.Catalogues;

/// <summary>What the reader of the built-in documents leaves to the tests.</summary>
public sealed class BuiltInDocumentsTests
{
    public static TheoryData<string> Documents => [.. typeof(Catalogue).Assembly.GetManifestResourceNames()];

    [Theory, MemberData(nameof(Documents))]
    public void No_member_of_a_document_is_repeated(string document)
    {
        using Stream stream = typeof(Catalogue).Assembly.GetManifestResourceStream(document)!;

        FluentActions.Invoking(() => JsonDocument.Parse(stream, new JsonDocumentOptions { AllowDuplicateProperties = false }).Dispose()).Should().NotThrow();
    }

    [Fact]
    public void Every_document_of_the_source_tree_is_embedded()
        => Directory.EnumerateFiles(Path.Combine(Repository.Library, "Catalogues", "Data"), "*.json", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Path.Combine(Repository.Library, "Catalogues", "Data"), f).Replace('\\', '/'))
            .Should().BeEquivalentTo(typeof(Catalogue).Assembly.GetManifestResourceNames());
}
