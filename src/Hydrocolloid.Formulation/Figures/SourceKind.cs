namespace Hydrocolloid.Formulation;

/// <summary>What kind of work a source is.</summary>
public enum SourceKind
{
    /// <summary>A published standard.</summary>
    Standard,

    /// <summary>A handbook or textbook.</summary>
    Handbook,

    /// <summary>A paper in a journal or proceedings.</summary>
    Paper,

    /// <summary>A published set of data, such as a food composition table.</summary>
    Dataset,

    /// <summary>A law, regulation or official specification.</summary>
    Regulation,

    /// <summary>A producer's or trade association's technical bulletin.</summary>
    Bulletin,

    /// <summary>Teaching or popular-science material.</summary>
    Teaching,

    /// <summary>A judgement made for this catalogue from the figures listed beside it.</summary>
    Judgement,

    /// <summary>Common practice of the trade, with no source.</summary>
    Trade,

    /// <summary>A measurement made by the user of the library.</summary>
    Measurement,
}
