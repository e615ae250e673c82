using System.Globalization;
using System.Numerics;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// An amount of money: a decimal number and its currency. Sums and products keep 28 digits; nothing is rounded to units until <see cref="Rounded"/>
/// is called. Two currencies never meet: convert one first, at a stated rate. Immutable, equal by content.
/// </summary>
public sealed record Money
{
    private const decimal MaxAmount = 1_000_000_000_000_000_000m;
    private const decimal MaxFactor = 1_000_000_000m;

    /// <summary>Makes an amount.</summary>
    /// <param name="amount">The amount in units of the currency, not in cents; up to 1e18 on either side of 0, with any decimals.</param>
    /// <param name="currency">The currency.</param>
    /// <exception cref="ArgumentOutOfRangeException">The amount is beyond 1e18.</exception>
    public Money(decimal amount, Currency currency)
    {
        Currency = Guard.NotNull(currency);
        Amount = Math.Abs(amount) <= MaxAmount ? amount : throw new ArgumentOutOfRangeException(nameof(amount), amount, "Must be between -1e18 and 1e18.");
    }

    /// <summary>Makes an amount.</summary>
    /// <param name="amount">The amount in units of the currency, not in cents; up to 1e18 on either side of 0, with any decimals.</param>
    /// <param name="currencyCode">The ISO 4217 code, such as <c>EUR</c>.</param>
    /// <exception cref="ArgumentException">There is no such currency.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount is beyond 1e18.</exception>
    public Money(decimal amount, string currencyCode)
        : this(amount, Currency.Of(currencyCode))
    {
    }

    /// <summary>The amount in units of the currency; not rounded.</summary>
    public decimal Amount { get; }

    /// <summary>The currency.</summary>
    public Currency Currency { get; }

    /// <summary>The sum of two amounts.</summary>
    /// <param name="left">One amount.</param>
    /// <param name="right">The other, in the same currency.</param>
    /// <returns>The sum.</returns>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public static Money operator +(Money left, Money right) => new(Guard.NotNull(left).Amount + left.Matched(right), left.Currency);

    /// <summary>The difference of two amounts.</summary>
    /// <param name="left">The amount to take from.</param>
    /// <param name="right">The amount to take, in the same currency.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public static Money operator -(Money left, Money right) => new(Guard.NotNull(left).Amount - left.Matched(right), left.Currency);

    /// <summary>An amount so many times.</summary>
    /// <param name="money">The amount.</param>
    /// <param name="factor">How many times; up to 1e9 on either side of 0.</param>
    /// <returns>The product.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is beyond 1e9, or the product beyond 1e18.</exception>
    public static Money operator *(Money money, decimal factor) => Math.Abs(factor) <= MaxFactor ? new(Guard.NotNull(money).Amount * factor, money.Currency)
        : throw new ArgumentOutOfRangeException(nameof(factor), factor, "Must be between -1e9 and 1e9.");

    /// <summary>An amount divided; to 28 digits, not to whole units. To share an amount out, use <see cref="Allocate(ValueList{decimal}, MoneyRemainder)"/>.</summary>
    /// <param name="money">The amount.</param>
    /// <param name="divisor">What to divide by; at least 1e-9 and at most 1e18 on either side of 0.</param>
    /// <returns>The quotient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is outside its range, or the quotient beyond 1e18.</exception>
    public static Money operator /(Money money, decimal divisor) => Math.Abs(divisor) is >= 1 / MaxFactor and <= MaxAmount ? new(Guard.NotNull(money).Amount / divisor, money.Currency)
        : throw new ArgumentOutOfRangeException(nameof(divisor), divisor, "Must be at least 1e-9 and at most 1e18 on either side of 0.");

    /// <summary>The amount with the decimals of its currency.</summary>
    /// <param name="rounding">What becomes of halves: away from zero unless stated, or to even.</param>
    /// <returns>The rounded amount.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Another way of rounding.</exception>
    public Money Rounded(MidpointRounding rounding = MidpointRounding.AwayFromZero) => rounding is MidpointRounding.AwayFromZero or MidpointRounding.ToEven
        ? new(Math.Round(Amount, Currency.Decimals, rounding), Currency)
        : throw new ArgumentOutOfRangeException(nameof(rounding), rounding, "Halves go away from zero or to even.");

    /// <summary>The amount in another currency; not rounded.</summary>
    /// <param name="rate">The rate from this currency.</param>
    /// <returns>The converted amount.</returns>
    /// <exception cref="ArgumentException">The rate is from another currency.</exception>
    public Money ConvertAt(ExchangeRate rate) => Guard.NotNull(rate).From == Currency ? new((this * rate.Rate).Amount, rate.To)
        : throw new ArgumentException($"The rate is from {rate.From}, but the amount is in {Currency}.", nameof(rate));

    /// <summary>Shares the amount out in whole units of the currency's last decimal; the shares always add up to the amount.</summary>
    /// <param name="weights">How much each is due, such as 75 and 25; none negative, not all zero, each at most 1e18.</param>
    /// <param name="remainder">Who gets the units left over; the largest fractions unless stated.</param>
    /// <returns>The shares, in the order of the weights.</returns>
    /// <exception cref="ArgumentException">There are no weights, one is outside its range, or all are zero.</exception>
    /// <exception cref="InvalidOperationException">The amount has more decimals than its currency: round it first.</exception>
    public ValueList<Money> Allocate(ValueList<decimal> weights, MoneyRemainder remainder = MoneyRemainder.Largest)
    {
        Guard.Defined((int)remainder, (int)MoneyRemainder.First, nameof(remainder));
        if (weights.All(w => w == 0) || weights.Any(w => w is < 0 or > MaxAmount))
        {
            throw new ArgumentException("Needs weights of 0 to 1e18 each, and at least one above 0.", nameof(weights));
        }

        if (Rounded() != this)
        {
            throw new InvalidOperationException($"{this} has more decimals than {Currency} has: round it first.");
        }

        // In whole numbers, so that no share depends on how a quotient is rounded.
        int decimals = weights.Max(Scale);
        BigInteger[] due = [.. weights.Select(w => Scaled(w, decimals))];
        BigInteger total = Scaled(Math.Abs(Amount), Currency.Decimals), sum = due.Aggregate(BigInteger.Add);
        BigInteger[] units = [.. due.Select(d => total * d / sum)];
        BigInteger[] fractions = [.. due.Select(d => total * d % sum)];
        int left = (int)(total - units.Aggregate(BigInteger.Add));
        IEnumerable<int> shares = Enumerable.Range(0, due.Length).Where(i => due[i] > 0);
        IEnumerable<int> lucky = remainder == MoneyRemainder.First ? shares : shares.OrderByDescending(i => fractions[i]); // a stable sort: ties by order
        foreach (int i in lucky.Take(left))
        {
            units[i]++;
        }

        decimal unit = (Amount < 0 ? -1m : 1m) / (decimal)BigInteger.Pow(10, Currency.Decimals);
        return ValueList<Money>.From(units.Select(u => new Money((decimal)u * unit, Currency)));
    }

    /// <summary>Shares the amount out equally; the shares always add up to the amount, and the first ones are a unit larger where it does not go out evenly.</summary>
    /// <param name="count">How many shares; 1 to 1 000 000.</param>
    /// <returns>The shares.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The amount has more decimals than its currency: round it first.</exception>
    public ValueList<Money> Split(int count)
    {
        Guard.InRange(count, 1, 1_000_000, "shares");
        return Allocate(ValueList<decimal>.From(Enumerable.Repeat(1m, count)));
    }

    /// <summary>The amount with all its digits, at least those of the currency, and the code; invariant.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Amount.ToString(
        (Currency.Decimals == 0 ? "0." : "0." + new string('0', Currency.Decimals)) + new string('#', 28 - Currency.Decimals), CultureInfo.InvariantCulture) + " " + Currency.Code;

    internal decimal Matched(Money other) => Guard.NotNull(other).Currency == Currency ? other.Amount
        : throw new ArgumentException($"{other} and {this} are of two currencies: convert one at a stated rate.", nameof(other));

    private static int Scale(decimal value) => decimal.GetBits(value)[3] >> 16 & 0xFF;

    private static BigInteger Scaled(decimal value, int decimals)
    {
        int[] bits = decimal.GetBits(value);
        BigInteger digits = ((BigInteger)(uint)bits[2] << 64) + ((BigInteger)(uint)bits[1] << 32) + (uint)bits[0];
        int scale = Scale(value);
        return scale <= decimals ? digits * BigInteger.Pow(10, decimals - scale) : digits / BigInteger.Pow(10, scale - decimals); // what is cut is zeros
    }
}
