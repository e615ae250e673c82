using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    private static readonly KitchenUnit[] s_massUnits = Units(QuantityKind.Mass, "mg", "g", "kg");

    /// <summary>Writes a mass in mg, g or kg, with three significant digits and whole digits kept, such as "3.33 g", "450 mg".</summary>
    /// <param name="mass">The quantity; 0 to 1e9 g.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mass"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="mass"/> carries a unit that does not exist.</exception>
    public static string Format(Mass mass) => Format(mass, CultureInfo.InvariantCulture);

    /// <summary>Writes a mass in mg, g or kg, with three significant digits and whole digits kept, such as "3.33 g", "450 mg", with the decimal sign of a culture.</summary>
    /// <param name="mass">The quantity; 0 to 1e9 g.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mass"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="mass"/> carries a unit that does not exist.</exception>
    public static string Format(Mass mass, IFormatProvider provider)
        => QuantityWriter.Auto(Guard.Grams(mass), Guard.NotNull(provider), s_massUnits);

    /// <summary>Writes a mass in a given unit.</summary>
    /// <param name="mass">The quantity; 0 to 1e9 g.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "g".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mass"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="mass"/> carries a unit that does not exist.</exception>
    public static string Format(Mass mass, string unit, int digits) => Format(mass, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a mass in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="mass">The quantity; 0 to 1e9 g.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "g".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mass"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="mass"/> carries a unit that does not exist.</exception>
    public static string Format(Mass mass, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Mass, Guard.Grams(mass), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a mass, with "." as the decimal sign.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="mass">The quantity, 0 to 1e9 g; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseMass(string? text, out Mass mass, out string error)
        => TryParseMass(text, CultureInfo.InvariantCulture, out mass, out error);

    /// <summary>Reads a mass, with the decimal sign of a culture.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="mass">The quantity, 0 to 1e9 g; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseMass(string? text, IFormatProvider provider, out Mass mass, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.Mass, text, Guard.NotNull(provider), out double value, out error);
        mass = read ? Mass.FromGrams(value) : default;
        return read;
    }

    /// <summary>Reads a mass, with "." as the decimal sign.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, 0 to 1e9 g.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Mass ParseMass(string text) => ParseMass(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a mass, with the decimal sign of a culture.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, 0 to 1e9 g.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Mass ParseMass(string text, IFormatProvider provider)
        => TryParseMass(Guard.NotNull(text), provider, out Mass mass, out string error) ? mass : throw new FormatException(error);
}
