using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Choosing;

/// <summary>A formula made over to leaf gelatin (or packets of powder), with the sheets to count out. Sheets of different names are not equally firm: they are converted by weight. Immutable.</summary>
public sealed class SheetAdjustment
{
    internal SheetAdjustment(GradeAdjustment adjustment, GelatinPiece piece, double count, double countByOtherRule, double exponent)
    {
        Adjustment = adjustment;
        Piece = piece;
        Count = count;
        CountByOtherRule = countByOtherRule;
        WholeSheets = Math.Max((int)Numbers.RoundHalfAway(count, 0), 1);
        FirmnessOfWholeSheets = PowerLaw.At(1, WholeSheets / count, exponent);
    }

    /// <summary>The formula with gelatin of the sheets' grade, and how its dose follows.</summary>
    public GradeAdjustment Adjustment { get; }

    /// <summary>The sheet, with its Bloom, its mass and where they come from.</summary>
    public GelatinPiece Piece { get; }

    /// <summary>How many sheets the batch takes, unrounded. Unit: sheets.</summary>
    public double Count { get; }

    /// <summary>The same by the other rule. Unit: sheets.</summary>
    public double CountByOtherRule { get; }

    /// <summary>The nearest whole count, at least 1.</summary>
    public int WholeSheets { get; }

    /// <summary>How firm the whole count comes out against the unrounded one, as a ratio without unit: (whole/count)ⁿ.</summary>
    public double FirmnessOfWholeSheets { get; }

    /// <summary>The sheets, and what the other rule and whole sheets would make.</summary>
    /// <returns>The sentence.</returns>
    public override string ToString()
        => $"{Numbers.Significant(Count, 3)} of {Piece}; {Numbers.Significant(CountByOtherRule, 3)} by the other rule. "
            + $"{Numbers.Exact(WholeSheets)} whole {(WholeSheets == 1 ? "one is" : "ones are")} {Numbers.Significant(FirmnessOfWholeSheets, 3)} times as firm.";
}
