namespace Hydrocolloid.Formulation;

/// <summary>How a line gets into the batch.</summary>
public enum WeighingWay
{
    /// <summary>Weighed by itself.</summary>
    Direct,

    /// <summary>With a weighed part of a stock in water of the formula: a dispersion or a solution.</summary>
    Stock,

    /// <summary>With a weighed part of a dry blend with sugar or salt of the formula.</summary>
    Premix,

    /// <summary>Not at all: nothing at hand weighs it within the tolerance.</summary>
    NotPossible,
}
