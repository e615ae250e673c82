using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>A work that figures are taken from. Immutable, equal by content.</summary>
public sealed record Source
{
    private readonly ISourceText? _unread;
    private SourceText? _text;

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
        Kind = (SourceKind)Guard.Defined((int)kind, (int)SourceKind.Measurement, nameof(kind));
        _text = new SourceText(Guard.NotBlank(title), authors, year, place, locator);
    }

    /// <summary>A source of a catalogue: what it is called is read when it is first shown, because most figures are reckoned with and not shown.</summary>
    internal Source(string id, SourceKind kind, ISourceText unread)
    {
        Id = id;
        Kind = kind;
        _unread = unread;
    }

    /// <summary>Kebab-case id, unique in its catalogue.</summary>
    public string Id { get; }

    /// <summary>Title of the work.</summary>
    public string Title => Text.Title;

    /// <summary>What kind of work it is.</summary>
    public SourceKind Kind { get; }

    /// <summary>Authors or organisation; null if not known.</summary>
    public string? Authors => Text.Authors;

    /// <summary>Year or edition; null if not known.</summary>
    public string? Year => Text.Year;

    /// <summary>Which part of the work was used; null if not stated.</summary>
    public string? Place => Text.Place;

    /// <summary>DOI, address or shelf mark; null if not known.</summary>
    public string? Locator => Text.Locator;

    // Two threads may read it at once, and read the same.
    private SourceText Text => _text ??= _unread!.Read();

    /// <summary>True if both are the same work, said in the same words.</summary>
    /// <param name="other">The other source.</param>
    /// <returns>Whether they are equal.</returns>
    public bool Equals(Source? other) => ReferenceEquals(this, other) || (other is not null && Id == other.Id && Kind == other.Kind && Text == other.Text);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);

    /// <summary>Authors, title and year in one line.</summary>
    /// <returns>The line.</returns>
    public override string ToString()
        => (Authors is null ? "" : Authors + ": ") + Title + (Year is null ? "" : " (" + Year + ")");
}
