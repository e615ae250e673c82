using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Where a figure comes from and how good it is. Immutable, equal by content.</summary>
public sealed record Citation
{
    private static readonly Source PracticeSource = new("common-practice", "Common practice of the trade, no source", SourceKind.Trade);
    private static readonly Source MeasurementSource = new("measurement", "Measured by the user", SourceKind.Measurement);

    /// <summary>Cites a work.</summary>
    /// <param name="source">The work.</param>
    /// <param name="place">Where in the work: table, page, record; null if not stated.</param>
    /// <param name="basis">Whether the figure was read there, recalled, or estimated from it.</param>
    public Citation(Source source, string? place = null, CitationBasis basis = CitationBasis.Read)
    {
        Source = Guard.NotNull(source);
        Place = place;
        Quality = QualityOf(source.Kind, (CitationBasis)Guard.Defined((int)basis, (int)CitationBasis.Estimated, nameof(basis)));
    }

    /// <summary>Common practice of the trade, with no source.</summary>
    public static Citation CommonPractice { get; } = new(PracticeSource);

    /// <summary>A value measured by the user of the library.</summary>
    public static Citation Measured { get; } = new(MeasurementSource);

    /// <summary>The work.</summary>
    public Source Source { get; }

    /// <summary>Where in the work; null if not stated.</summary>
    public string? Place { get; }

    /// <summary>How good the figure is.</summary>
    public CitationQuality Quality { get; }

    /// <summary>True if the figure is from memory: it is shown as recalled wherever it is shown.</summary>
    public bool IsRecalled => Quality == CitationQuality.Recalled;

    /// <summary>The source in one line, with the mark of a recalled, estimated, measured or unsourced figure.</summary>
    /// <returns>The line.</returns>
    public override string ToString() => Quality switch
    {
        CitationQuality.CommonPractice => "common practice, no source",
        CitationQuality.Measured when ReferenceEquals(Source, MeasurementSource) => "measured",
        _ => Source + (Place is null ? "" : ", " + Place) + Mark,
    };

    private string Mark => Quality switch
    {
        CitationQuality.Recalled => " [recalled, not re-read]",
        CitationQuality.Estimate => " [estimate]",
        CitationQuality.Measured => " [measured]",
        _ => "",
    };

    // A judgement or a rule of the trade has no text to recall it from.
    private static CitationQuality QualityOf(SourceKind kind, CitationBasis basis) => kind switch
    {
        SourceKind.Judgement => CitationQuality.Estimate,
        SourceKind.Trade => CitationQuality.CommonPractice,
        _ when basis == CitationBasis.Recalled => CitationQuality.Recalled,
        _ when basis == CitationBasis.Estimated => CitationQuality.Estimate,
        SourceKind.Measurement => CitationQuality.Measured,
        SourceKind.Standard => CitationQuality.Standard,
        SourceKind.Handbook => CitationQuality.Handbook,
        SourceKind.Paper => CitationQuality.Paper,
        SourceKind.Dataset => CitationQuality.Dataset,
        SourceKind.Regulation => CitationQuality.Regulation,
        SourceKind.Bulletin => CitationQuality.Bulletin,
        _ => CitationQuality.Teaching,
    };
}
