using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>What is asked for: a number with a unit and so many digits, or which options. Immutable, equal by content.</summary>
public sealed record AnswerForm
{
    private AnswerForm(AnswerShape shape, QuantityKind? quantity, string unit, int? digits, int? decimals, ValueList<AnswerOption> options)
    {
        Shape = shape;
        Quantity = quantity;
        Unit = unit;
        Digits = digits;
        Decimals = decimals;
        Options = options;
    }

    /// <summary>What the answer consists of.</summary>
    public AnswerShape Shape { get; }

    /// <summary>What the number measures; null for a bare number, and where no number is asked for.</summary>
    public QuantityKind? Quantity { get; }

    /// <summary>The unit in which the answer is stated; empty for a bare number. For a bare number a word that may stand after it, such as °Brix.</summary>
    public string Unit { get; }

    /// <summary>How many significant digits are asked for; null if <see cref="Decimals"/> says it, or no number is asked for.</summary>
    public int? Digits { get; }

    /// <summary>How many decimals are asked for; null if <see cref="Digits"/> says it, or no number is asked for.</summary>
    public int? Decimals { get; }

    /// <summary>The options, in the order in which the student reads them; empty for a number.</summary>
    public ValueList<AnswerOption> Options { get; }

    /// <summary>A number with significant digits.</summary>
    /// <param name="quantity">What it measures; null for a bare number.</param>
    /// <param name="unit">A unit of that kind; for a bare number a word or nothing.</param>
    /// <param name="digits">Significant digits, 2 to 6.</param>
    /// <returns>The form.</returns>
    /// <exception cref="ArgumentException">The unit does not measure that.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The digits are not from 2 to 6.</exception>
    public static AnswerForm Number(QuantityKind? quantity, string unit, int digits = 3)
        => new(AnswerShape.Number, quantity, UnitOf(quantity, unit), (int)Guard.InRange(digits, 2, 6, "digits"), null, default);

    /// <summary>A number with decimals, for readings such as temperatures.</summary>
    /// <param name="quantity">What it measures; null for a bare number.</param>
    /// <param name="unit">A unit of that kind; for a bare number a word or nothing.</param>
    /// <param name="decimals">Decimals, 0 to 6.</param>
    /// <returns>The form.</returns>
    /// <exception cref="ArgumentException">The unit does not measure that.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The decimals are not from 0 to 6.</exception>
    public static AnswerForm Reading(QuantityKind? quantity, string unit, int decimals)
        => new(AnswerShape.Number, quantity, UnitOf(quantity, unit), null, (int)Guard.InRange(decimals, 0, 6, "decimals"), default);

    /// <summary>Options to choose, order or list.</summary>
    /// <param name="shape">A choice, an order or a list.</param>
    /// <param name="options">Two to twenty-six options, each key once.</param>
    /// <returns>The form.</returns>
    /// <exception cref="ArgumentException">The shape is a number, there are too few or too many options, or a key stands twice.</exception>
    public static AnswerForm Of(AnswerShape shape, params AnswerOption[] options)
    {
        if (shape is not (AnswerShape.Choice or AnswerShape.Order or AnswerShape.List) || Guard.NotNull(options).Length is < 2 or > 26
            || options.Select(o => o.Key).Distinct(StringComparer.Ordinal).Count() != options.Length)
        {
            throw new ArgumentException("Give a choice, an order or a list two to twenty-six options, each key once.", nameof(options));
        }

        return new AnswerForm(shape, null, "", null, null, ValueList<AnswerOption>.From(options));
    }

    /// <summary>How far from a value still counts as it: one unit of the last digit asked for, so that honest rounding on the way does not count as a mistake.</summary>
    /// <param name="value">The value, in the unit of the answer.</param>
    /// <returns>The tolerance, in the unit of the answer.</returns>
    public double ToleranceOf(double value) => Math.Pow(10, -DecimalsOf(value));

    /// <summary>A value with the right number of digits, and its unit.</summary>
    /// <param name="value">The value, in the unit of the answer.</param>
    /// <returns>The text, with "." as the decimal sign.</returns>
    public string TextOf(double value)
    {
        int decimals = DecimalsOf(value);
        string number = decimals >= 0 ? Numbers.Fixed(value, decimals) : Numbers.Exact(Math.Round(value * Math.Pow(10, decimals), MidpointRounding.AwayFromZero) * Math.Pow(10, -decimals));
        return Unit.Length == 0 ? number : number + " " + Unit;
    }

    internal static char Letter(int index) => (char)('a' + index);

    internal int IndexOf(string key)
    {
        for (int i = 0; i < Options.Count; i++)
        {
            if (Options[i].Key == key)
            {
                return i;
            }
        }

        return -1;
    }

    private static string UnitOf(QuantityKind? quantity, string unit)
        => quantity is not { } kind ? Guard.NotNull(unit)
            : KitchenUnit.TryFind(kind, Guard.NotNull(unit), out _, out string error) ? unit : throw new ArgumentException(error, nameof(unit));

    private int DecimalsOf(double value)
    {
        if (Decimals is { } decimals)
        {
            return decimals;
        }

        int digits = Digits ?? 6;
        if (value == 0)
        {
            return digits - 1;
        }

        int places = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        // 9.996 with three digits is 10.0, not 10.00.
        return Math.Abs(Numbers.RoundHalfAway(value, Math.Min(Math.Max(places, 0), 15))) >= Math.Pow(10, digits - places) ? places - 1 : places;
    }
}
