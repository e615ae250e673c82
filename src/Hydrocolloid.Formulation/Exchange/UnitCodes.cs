using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>
/// Units of mass and volume by their codes of UN/ECE Recommendation 20 (revision 11e), as trade documents have them. The table is
/// closed and case-sensitive: <c>KG</c>, <c>G</c>, <c>L</c> and <c>GM</c> are not codes of these units.
/// </summary>
public static class UnitCodes
{
    // G21, a cup that does not say whose, is left out.
    private static readonly (string Rec20, QuantityKind Kind, string Ucum)[] s_codes =
    [
        ("GRM", QuantityKind.Mass, "g"), ("KGM", QuantityKind.Mass, "kg"), ("MGM", QuantityKind.Mass, "mg"), ("MC", QuantityKind.Mass, "ug"), ("TNE", QuantityKind.Mass, "t"),
        ("ONZ", QuantityKind.Mass, "[oz_av]"), ("LBR", QuantityKind.Mass, "[lb_av]"),
        ("MLT", QuantityKind.Volume, "mL"), ("LTR", QuantityKind.Volume, "L"), ("CLT", QuantityKind.Volume, "cL"), ("DLT", QuantityKind.Volume, "dL"),
        ("CMQ", QuantityKind.Volume, "cm3"), ("MTQ", QuantityKind.Volume, "m3"),
        ("G25", QuantityKind.Volume, "[tsp_us]"), ("G24", QuantityKind.Volume, "[tbs_us]"), ("OZA", QuantityKind.Volume, "[foz_us]"),
        ("PTL", QuantityKind.Volume, "[pt_us]"), ("QTL", QuantityKind.Volume, "[qt_us]"), ("GLL", QuantityKind.Volume, "[gal_us]"),
        ("OZI", QuantityKind.Volume, "[foz_br]"), ("PTI", QuantityKind.Volume, "[pt_br]"), ("QTI", QuantityKind.Volume, "[qt_br]"), ("GLI", QuantityKind.Volume, "[gal_br]"),
    ];

    /// <summary>The code of a unit.</summary>
    /// <param name="unit">A unit of mass or volume.</param>
    /// <returns>The code; null if Recommendation 20 has none for it that says whose measure it is.</returns>
    public static string? Of(KitchenUnit unit)
    {
        Guard.NotNull(unit);
        return s_codes.FirstOrDefault(c => c.Kind == unit.Kind && c.Ucum == unit.Code).Rec20;
    }

    /// <summary>The unit of a code.</summary>
    /// <param name="code">The code, case-sensitive; null and empty find nothing.</param>
    /// <param name="unit">The unit; null where there is none.</param>
    /// <returns>Whether it is the code of a unit of mass or volume.</returns>
    public static bool TryFind(string? code, [NotNullWhen(true)] out KitchenUnit? unit)
    {
        (string Rec20, QuantityKind Kind, string Ucum) found = s_codes.FirstOrDefault(c => c.Rec20 == code);
        unit = null;
        return found.Rec20 is not null && KitchenUnit.TryFind(found.Kind, found.Ucum, out unit, out _);
    }
}
