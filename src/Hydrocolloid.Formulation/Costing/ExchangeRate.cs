using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>What one unit of a currency is in another, and on which day. Immutable, equal by content.</summary>
public sealed record ExchangeRate
{
    /// <summary>States a rate.</summary>
    /// <param name="from">The currency to convert.</param>
    /// <param name="to">The currency to convert into.</param>
    /// <param name="rate">How much of the second one unit of the first is; above 0 and up to 1e9.</param>
    /// <param name="on">The day of the rate, without a time.</param>
    /// <exception cref="ArgumentException">Both currencies are the same, or the day has a time.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rate is outside its range.</exception>
    public ExchangeRate(Currency from, Currency to, decimal rate, DateTime on)
    {
        From = Guard.NotNull(from);
        To = Guard.NotNull(to) != from ? to : throw new ArgumentException("Must be another currency.", nameof(to));
        Rate = Amounts.InRange(rate, 0, 1_000_000_000m, "", excludingMin: true);
        On = Days.Check(on);
    }

    /// <summary>The currency to convert.</summary>
    public Currency From { get; }

    /// <summary>The currency to convert into.</summary>
    public Currency To { get; }

    /// <summary>How much of <see cref="To"/> one unit of <see cref="From"/> is.</summary>
    public decimal Rate { get; }

    /// <summary>The day of the rate.</summary>
    public DateTime On { get; }

    /// <summary>The rate in words.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => $"1 {From} = {Exactly.ToText(Rate)} {To} on {Days.Text(On)}";
}
