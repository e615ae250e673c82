namespace Hydrocolloid.Formulation;

/// <summary>How good a figure is, from the kind of its source and from whether it was read there.</summary>
public enum CitationQuality
{
    /// <summary>Read in a published standard.</summary>
    Standard,

    /// <summary>Read in a handbook or textbook.</summary>
    Handbook,

    /// <summary>Read in a paper.</summary>
    Paper,

    /// <summary>Read in a data set.</summary>
    Dataset,

    /// <summary>Read in a regulation.</summary>
    Regulation,

    /// <summary>Read in a producer's or association's bulletin.</summary>
    Bulletin,

    /// <summary>Read in teaching material.</summary>
    Teaching,

    /// <summary>Common practice of the trade, with no source.</summary>
    CommonPractice,

    /// <summary>From memory: the source named is where the figure is believed to stand, and was not re-read.</summary>
    Recalled,

    /// <summary>An estimate: a judgement from other figures, never a published value.</summary>
    Estimate,

    /// <summary>Measured by the user of the library.</summary>
    Measured,
}
