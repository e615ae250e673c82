using System.Globalization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

/// <summary>
/// One unit the library reads and writes: its code, the spellings accepted for it, and its exact relation to the base unit
/// of its kind, with the source of that relation. Immutable.
/// </summary>
/// <remarks>
/// A value in this unit relates to the base unit as <c>base = (value - Zero) × Factor</c>. Only °F and K readings have a
/// <see cref="Zero"/> other than 0. Codes and spellings are case-sensitive.
/// </remarks>
public sealed class KitchenUnit
{
    private readonly decimal _numerator;
    private readonly decimal _denominator;
    private readonly decimal _zero;

    internal KitchenUnit(
        QuantityKind kind, string code, string name, decimal factor, string source, string[] symbols,
        decimal divisor = 1, decimal zero = 0, bool isUcum = true, KitchenMeasure measure = KitchenMeasure.None)
    {
        Kind = kind;
        Code = code;
        Name = name;
        Source = source;
        Symbols = Array.AsReadOnly(symbols);
        IsUcum = isUcum;
        Measure = measure;
        _numerator = factor;
        _denominator = divisor;
        _zero = zero;
        Factor = Exactly.ToDouble(factor / divisor);
        Zero = Exactly.ToDouble(zero);
    }

    /// <summary>Every known unit, by kind; in each kind the base unit comes first.</summary>
    public static IReadOnlyList<KitchenUnit> All => UnitTable.All;

    /// <summary>What the unit measures.</summary>
    public QuantityKind Kind { get; }

    /// <summary>The case-sensitive UCUM code such as <c>[tsp_us]</c>, or the library's own code where UCUM has none (<see cref="IsUcum"/> is then false).</summary>
    public string Code { get; }

    /// <summary>Whether <see cref="Code"/> is a UCUM code.</summary>
    public bool IsUcum { get; }

    /// <summary>The English name, such as "US customary teaspoon".</summary>
    public string Name { get; }

    /// <summary>The spelling the library writes, such as "US tsp"; it can be read back.</summary>
    public string Symbol => Symbols[0];

    /// <summary>The spellings read beside <see cref="Code"/>; the first is <see cref="Symbol"/>.</summary>
    public IReadOnlyList<string> Symbols { get; }

    /// <summary>How many base units of <see cref="Kind"/> this unit is; more than 0.</summary>
    public double Factor { get; }

    /// <summary>What this unit shows where the base unit shows 0: 32 for °F readings, 273.15 for K readings, otherwise 0.</summary>
    public double Zero { get; }

    /// <summary>Where the relation to the base unit is published.</summary>
    public string Source { get; }

    internal KitchenMeasure Measure { get; }

    private bool IsBase => _numerator == 1 && _denominator == 1 && _zero == 0;

    /// <summary>Finds the unit of a kind by its code or by one of its spellings.</summary>
    /// <param name="kind">What the unit measures; a defined value.</param>
    /// <param name="text">The code or spelling, case-sensitive; null and empty find nothing.</param>
    /// <param name="unit">The unit, or null where there is none.</param>
    /// <param name="error">Why there is none, with the choices where the spelling has several meanings; empty on success.</param>
    /// <returns>Whether the unit was found.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a defined value.</exception>
    public static bool TryFind(QuantityKind kind, string? text, out KitchenUnit? unit, out string error)
        => UnitTable.TryFind(KindFacts.Of(kind), text, out unit, out error);

    /// <summary>The code.</summary>
    /// <returns><see cref="Code"/>.</returns>
    public override string ToString() => Code;

    /// <summary>The base value of a number written in this unit; decimal arithmetic, so 1.005 kg is 1005 g.</summary>
    /// <param name="number">The number as invariant text.</param>
    /// <param name="value">The same number, finite.</param>
    internal double ToBase(string number, double value)
        => IsBase ? value
            : FitsDecimal(value, value * Factor) && Exactly.TryParse(number, out decimal exact)
                ? Exactly.ToDouble((exact - _zero) * _numerator / _denominator)
            : (value - Zero) * Factor;

    /// <summary>The value in this unit, to the nearest double.</summary>
    internal double FromBase(double baseValue)
        => IsBase ? baseValue
            : TryFromBase(baseValue, out decimal exact) ? Exactly.ToDouble(exact)
            : baseValue / Factor + Zero;

    /// <summary>
    /// The value in this unit as invariant text, with as many digits as it takes to read back as the same base value. Always
    /// possible in the base unit; elsewhere for 0 and for amounts of at least 1e-9 in both units.
    /// </summary>
    internal string FromBaseInFull(double baseValue)
    {
        double nearest = FromBase(baseValue);
        string text = Numbers.Exact(nearest);
        if (!ToBase(text, nearest).Equals(baseValue) && TryFromBase(baseValue, out decimal exact))
        {
            for (int decimals = 6; decimals <= 28; decimals++)
            {
                string longer = Exactly.ToText(Math.Round(exact, decimals));
                if (ToBase(longer, nearest).Equals(baseValue))
                {
                    return longer;
                }
            }
        }

        return text;
    }

    private static bool FitsDecimal(double value, double other) => Exactly.Fits(value) && Exactly.Fits(other);

    private bool TryFromBase(double baseValue, out decimal value)
    {
        value = 0;
        if (!FitsDecimal(baseValue, baseValue / Factor)
            || !Exactly.TryParse(baseValue.ToString("E16", CultureInfo.InvariantCulture), out decimal exact))
        {
            return false;
        }

        value = exact * _denominator / _numerator + _zero;
        return true;
    }
}
