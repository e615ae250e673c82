using System.Globalization;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Text;

/// <summary>Quantities as text and back: a number, a space, and a unit of <see cref="KitchenUnit.All"/>.</summary>
/// <remarks>
/// <para>Numbers are an optional sign, the digits 0 to 9 with at most one decimal sign, and an optional exponent. Digits are never
/// grouped: a sign that could be a group separator is an error, not a guess. The decimal sign is "." unless a provider is given;
/// of a provider only the decimal sign is used, and the current culture never is. Between number and unit a space or no-break
/// space may stand.</para>
/// <para>A unit is the UCUM code or one of the listed spellings, case-sensitive. Household measures that exist in several sizes
/// ("tsp", "cup", "pint") are refused without the standard they belong to, and the error names the choices.</para>
/// <para>Every quantity is checked on its way in and out; the range of each kind stands at <see cref="QuantityKind"/>.</para>
/// </remarks>
public static partial class QuantityText
{
    /// <summary>
    /// For <c>digits</c>: as many as it takes to read back as exactly the same quantity. That holds in the base unit of the kind for
    /// every value, and in other units for 0 and for amounts of at least 1e-9 in both units.
    /// </summary>
    public const int AllDigits = 17;

    /// <summary>Reads a number without a unit, with "." as the decimal sign.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="number">The number, finite; 0 on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseNumber(string? text, out double number, out string error)
        => TryParseNumber(text, CultureInfo.InvariantCulture, out number, out error);

    /// <summary>Reads a number without a unit.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="number">The number, finite; 0 on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseNumber(string? text, IFormatProvider provider, out double number, out string error)
        => QuantityReader.TryReadNumber(text, Guard.NotNull(provider), out number, out error);

    /// <summary>Reads a number without a unit, with "." as the decimal sign.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The number, finite.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text is not a number; the message says why.</exception>
    public static double ParseNumber(string text) => ParseNumber(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a number without a unit.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The number, finite.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text is not a number; the message says why.</exception>
    public static double ParseNumber(string text, IFormatProvider provider)
        => TryParseNumber(Guard.NotNull(text), provider, out double number, out string error) ? number : throw new FormatException(error);

    private static KitchenUnit[] Units(QuantityKind kind, params string[] codes) => Array.ConvertAll(codes, code => UnitTable.Get(kind, code));
}
