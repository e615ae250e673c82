using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    private static readonly KitchenUnit[] s_densityUnits = Units(QuantityKind.Density, "kg/m3");

    /// <summary>Writes a density in kg/m³, with three significant digits and whole digits kept, such as "1040 kg/m³".</summary>
    /// <param name="density">The quantity; 0 to 30 000 kg/m³.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="density"/> carries a unit that does not exist.</exception>
    public static string Format(Density density) => Format(density, CultureInfo.InvariantCulture);

    /// <summary>Writes a density in kg/m³, with three significant digits and whole digits kept, such as "1040 kg/m³", with the decimal sign of a culture.</summary>
    /// <param name="density">The quantity; 0 to 30 000 kg/m³.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="density"/> carries a unit that does not exist.</exception>
    public static string Format(Density density, IFormatProvider provider)
        => QuantityWriter.Auto(Guard.KilogramsPerCubicMetre(density), Guard.NotNull(provider), s_densityUnits);

    /// <summary>Writes a density in a given unit.</summary>
    /// <param name="density">The quantity; 0 to 30 000 kg/m³.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "g/mL".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="density"/> carries a unit that does not exist.</exception>
    public static string Format(Density density, string unit, int digits) => Format(density, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a density in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="density">The quantity; 0 to 30 000 kg/m³.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "g/mL".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="density"/> carries a unit that does not exist.</exception>
    public static string Format(Density density, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Density, Guard.KilogramsPerCubicMetre(density), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a density, with "." as the decimal sign.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="density">The quantity, 0 to 30 000 kg/m³; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseDensity(string? text, out Density density, out string error)
        => TryParseDensity(text, CultureInfo.InvariantCulture, out density, out error);

    /// <summary>Reads a density, with the decimal sign of a culture.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="density">The quantity, 0 to 30 000 kg/m³; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseDensity(string? text, IFormatProvider provider, out Density density, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.Density, text, Guard.NotNull(provider), out double value, out error);
        density = read ? Density.FromKilogramsPerCubicMeter(value) : default;
        return read;
    }

    /// <summary>Reads a density, with "." as the decimal sign.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, 0 to 30 000 kg/m³.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Density ParseDensity(string text) => ParseDensity(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a density, with the decimal sign of a culture.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, 0 to 30 000 kg/m³.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Density ParseDensity(string text, IFormatProvider provider)
        => TryParseDensity(Guard.NotNull(text), provider, out Density density, out string error) ? density : throw new FormatException(error);
}
