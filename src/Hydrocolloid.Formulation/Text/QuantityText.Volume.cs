using System.Globalization;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Text;

public static partial class QuantityText
{
    private static readonly KitchenUnit[] s_volumeUnits = Units(QuantityKind.Volume, "mL", "L");

    /// <summary>Writes a volume in mL or L, with three significant digits and whole digits kept, such as "250 mL", "1.2 L".</summary>
    /// <param name="volume">The quantity; 0 to 1e9 mL.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="volume"/> carries a unit that does not exist.</exception>
    public static string Format(Volume volume) => Format(volume, CultureInfo.InvariantCulture);

    /// <summary>Writes a volume in mL or L, with three significant digits and whole digits kept, such as "250 mL", "1.2 L", with the decimal sign of a culture.</summary>
    /// <param name="volume">The quantity; 0 to 1e9 mL.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="volume"/> carries a unit that does not exist.</exception>
    public static string Format(Volume volume, IFormatProvider provider)
        => QuantityWriter.Auto(Guard.Millilitres(volume), Guard.NotNull(provider), s_volumeUnits);

    /// <summary>Writes a volume in a given unit.</summary>
    /// <param name="volume">The quantity; 0 to 1e9 mL.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "US tsp".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="volume"/> carries a unit that does not exist.</exception>
    public static string Format(Volume volume, string unit, int digits) => Format(volume, unit, digits, CultureInfo.InvariantCulture);

    /// <summary>Writes a volume in a given unit, with the decimal sign of a culture.</summary>
    /// <param name="volume">The quantity; 0 to 1e9 mL.</param>
    /// <param name="unit">A code or spelling of <see cref="KitchenUnit.All"/>, such as "US tsp".</param>
    /// <param name="digits">Significant digits, 1 to 15 (whole digits are always kept), or <see cref="AllDigits"/>.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="unit"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> or <paramref name="digits"/> is out of range.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is not a unit of this kind, or <paramref name="volume"/> carries a unit that does not exist.</exception>
    public static string Format(Volume volume, string unit, int digits, IFormatProvider provider)
        => QuantityWriter.In(QuantityKind.Volume, Guard.Millilitres(volume), unit, digits, Guard.NotNull(provider));

    /// <summary>Reads a volume, with "." as the decimal sign.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="volume">The quantity, 0 to 1e9 mL; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    public static bool TryParseVolume(string? text, out Volume volume, out string error)
        => TryParseVolume(text, CultureInfo.InvariantCulture, out volume, out error);

    /// <summary>Reads a volume, with the decimal sign of a culture.</summary>
    /// <param name="text">The text; null and empty are errors.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <param name="volume">The quantity, 0 to 1e9 mL; the type's default on failure.</param>
    /// <param name="error">Why the text was refused; empty on success.</param>
    /// <returns>Whether the text was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="provider"/> is null.</exception>
    public static bool TryParseVolume(string? text, IFormatProvider provider, out Volume volume, out string error)
    {
        bool read = QuantityReader.TryRead(QuantityKind.Volume, text, Guard.NotNull(provider), out double value, out error);
        volume = read ? Volume.FromMilliliters(value) : default;
        return read;
    }

    /// <summary>Reads a volume, with "." as the decimal sign.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The quantity, 0 to 1e9 mL.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Volume ParseVolume(string text) => ParseVolume(text, CultureInfo.InvariantCulture);

    /// <summary>Reads a volume, with the decimal sign of a culture.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Gives the decimal sign.</param>
    /// <returns>The quantity, 0 to 1e9 mL.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> or <paramref name="provider"/> is null.</exception>
    /// <exception cref="FormatException">The text was refused; the message says why.</exception>
    public static Volume ParseVolume(string text, IFormatProvider provider)
        => TryParseVolume(Guard.NotNull(text), provider, out Volume volume, out string error) ? volume : throw new FormatException(error);
}
