using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A work that figures are taken from. Immutable, equal by content.</summary>
public sealed record Source
{
    /// <summary>Makes a source.</summary>
    /// <param name="id">Kebab-case id, unique in its catalogue.</param>
    /// <param name="title">Title of the work.</param>
    /// <param name="kind">What kind of work it is.</param>
    /// <param name="authors">Authors or organisation, if known.</param>
    /// <param name="year">Year or edition, if known.</param>
    /// <param name="place">Which part of the work was used.</param>
    /// <param name="locator">DOI, address or shelf mark.</param>
    /// <exception cref="ArgumentException">The id or the title is blank.</exception>
    public Source(string id, string title, SourceKind kind, string? authors = null, string? year = null, string? place = null, string? locator = null)
    {
        Id = Guard.NotBlank(id);
        Title = Guard.NotBlank(title);
        Kind = (SourceKind)Guard.Defined((int)kind, (int)SourceKind.Measurement, nameof(kind));
        Authors = authors;
        Year = year;
        Place = place;
        Locator = locator;
    }

    /// <summary>Kebab-case id, unique in its catalogue.</summary>
    public string Id { get; }

    /// <summary>Title of the work.</summary>
    public string Title { get; }

    /// <summary>What kind of work it is.</summary>
    public SourceKind Kind { get; }

    /// <summary>Authors or organisation; null if not known.</summary>
    public string? Authors { get; }

    /// <summary>Year or edition; null if not known.</summary>
    public string? Year { get; }

    /// <summary>Which part of the work was used; null if not stated.</summary>
    public string? Place { get; }

    /// <summary>DOI, address or shelf mark; null if not known.</summary>
    public string? Locator { get; }

    /// <summary>Authors, title and year in one line.</summary>
    /// <returns>The line.</returns>
    public override string ToString()
        => (Authors is null ? "" : Authors + ": ") + Title + (Year is null ? "" : " (" + Year + ")");
}
