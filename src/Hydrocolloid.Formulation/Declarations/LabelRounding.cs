using Hydrocolloid.Formulation.Catalogues;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>How labels round. No rule says what becomes of a half: it is rounded away from zero, on the decimal digits.</summary>
internal static class LabelRounding
{
    public static Citation EuSource => BuiltInCatalogue.Cite("eu-rounding-2012", "Table 4", CitationBasis.Recalled);

    public static Citation UsSource => BuiltInCatalogue.Cite("fda-nlea-rounding", "21 CFR 101.9(c)");

    // Commission guidance of December 2012, table 4.
    public static string Eu(Nutrient kind, double value) => kind switch
    {
        Nutrient.Kilojoules => Whole(value, "kJ"),
        Nutrient.Kilocalories => Whole(value, "kcal"),
        Nutrient.Saturates => EuGrams(value, 0.1, 10, 1),
        Nutrient.Salt => EuGrams(value, 0.0125, 1, 2),
        _ => EuGrams(value, 0.5, 10, 1),
    };

    // 21 CFR 101.9(c).
    public static string Us(Nutrient kind, double value) => kind switch
    {
        Nutrient.Kilocalories => value < 5 ? "0 kcal" : Nearest(value, value <= 50 ? 5 : 10, "kcal"),
        Nutrient.Fat or Nutrient.Saturates => value < 0.5 ? "0 g" : Nearest(value, value < 5 ? 0.5 : 1, "g"),
        Nutrient.Sodium => value < 5 ? "0 mg" : Nearest(value, value <= 140 ? 5 : 10, "mg"),
        _ => value < 0.5 ? "0 g" : value < 1 ? "less than 1 g" : Nearest(value, 1, "g"),
    };

    /// <summary>Nothing up to a limit, then a number of decimals, and one less from a second limit on.</summary>
    private static string EuGrams(double value, double negligible, double coarse, int decimals)
    {
        if (value <= negligible)
        {
            return value == 0 ? "0 g" : $"< {(decimals == 2 ? "0.01" : Numbers.Exact(negligible))} g";
        }

        double fine = Numbers.RoundHalfAway(value, decimals);
        return fine >= coarse ? Numbers.Fixed(value, decimals - 1) + " g" : Numbers.Fixed(value, decimals) + " g";
    }

    private static string Whole(double value, string unit) => Numbers.Fixed(value, 0) + " " + unit;

    private static string Nearest(double value, double step, string unit) => Numbers.Exact(Numbers.RoundHalfAway(value / step, 0) * step) + " " + unit;
}
