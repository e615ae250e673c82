using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>How a batch is to be declared. Immutable, equal by content.</summary>
public sealed record LabelPlan
{
    private readonly LabelMarket _market;
    private readonly AdditiveNaming _additives;
    private readonly double? _portionGrams;
    private readonly ValueList<LineLabel> _lines;

    /// <summary>Whose rules the label follows; the European Union unless stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public LabelMarket Market
    {
        get => _market;
        init => _market = (LabelMarket)Guard.Defined((int)value, (int)LabelMarket.Codex, nameof(Market));
    }

    /// <summary>What stands beside the class of an additive; its name unless stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a defined value.</exception>
    public AdditiveNaming Additives
    {
        get => _additives;
        init => _additives = (AdditiveNaming)Guard.Defined((int)value, (int)AdditiveNaming.Number, nameof(Additives));
    }

    /// <summary>True to leave out added water that makes up no more than 5 % by weight of the finished food.</summary>
    public bool OmitLittleWater { get; init; }

    /// <summary>The mass of one portion; null for that of the formula's service plan, or of the yield.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 g.</exception>
    public Mass? Portion
    {
        get => _portionGrams is { } g ? Mass.FromGrams(g) : null;
        init => _portionGrams = value is { } v ? Guard.PositiveGrams(v, nameof(Portion)) : null;
    }

    /// <summary>What is said of single lines, each line once.</summary>
    /// <exception cref="ArgumentException">A line stands twice.</exception>
    public ValueList<LineLabel> Lines
    {
        get => _lines;
        init => _lines = value.Select(l => l.Line).Distinct(StringComparer.Ordinal).Count() == value.Count ? value
            : throw new ArgumentException("Say what the label says of a line once.", nameof(value));
    }

    internal double? PortionGrams => _portionGrams;
}
