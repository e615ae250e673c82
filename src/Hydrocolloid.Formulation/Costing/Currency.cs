using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// A currency of ISO 4217: its code and how many decimals its amounts have. One object a code, so the same code is the same object.
/// Gold, testing codes and the like, which have no minor unit, are no currencies of a price.
/// </summary>
public sealed class Currency
{
    // ISO 4217, codes and minor units as of 2026-02-01 (maintenance agency: SIX), read in a table derived from the agency's list.
    private const string NoDecimals = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";

    private const string TwoDecimals =
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW "
        + "CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF "
        + "IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK "
        + "MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP "
        + "SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XAD XCD XCG "
        + "YER ZAR ZMW ZWG";

    private const string ThreeDecimals = "BHD IQD JOD KWD LYD OMR TND";

    private const string FourDecimals = "CLF UYW";

    private static readonly Dictionary<string, Currency> s_all = Table();

    private Currency(string code, int decimals)
    {
        Code = code;
        Decimals = decimals;
    }

    /// <summary>Every currency, by code.</summary>
    public static ValueList<Currency> All { get; } = ValueList<Currency>.From(s_all.Values.OrderBy(c => c.Code, StringComparer.Ordinal));

    /// <summary>The three capital letters.</summary>
    public string Code { get; }

    /// <summary>How many decimals an amount has once it is rounded: 2 for EUR, 0 for JPY, 3 for KWD.</summary>
    public int Decimals { get; }

    /// <summary>A currency by its code.</summary>
    /// <param name="code">Three capital letters, such as <c>EUR</c>.</param>
    /// <returns>The currency.</returns>
    /// <exception cref="ArgumentException">ISO 4217 has no such currency with a minor unit.</exception>
    public static Currency Of(string code) => TryFind(Guard.NotNull(code), out Currency? currency) ? currency
        : throw new ArgumentException($"'{code}' is not a currency of ISO 4217 with a minor unit, such as EUR.", nameof(code));

    /// <summary>A currency by its code, without throwing.</summary>
    /// <param name="code">Three capital letters; anything else finds nothing.</param>
    /// <param name="currency">The currency; null if there is none.</param>
    /// <returns>Whether there is one.</returns>
    public static bool TryFind(string? code, [NotNullWhen(true)] out Currency? currency)
    {
        currency = null;
        return code is not null && s_all.TryGetValue(code, out currency);
    }

    /// <summary>The code.</summary>
    /// <returns>The code.</returns>
    public override string ToString() => Code;

    private static Dictionary<string, Currency> Table()
    {
        string[] codes = [NoDecimals, "", TwoDecimals, ThreeDecimals, FourDecimals];
        var table = new Dictionary<string, Currency>(StringComparer.Ordinal);
        for (int decimals = 0; decimals < codes.Length; decimals++)
        {
            foreach (string code in codes[decimals].Split([' '], StringSplitOptions.RemoveEmptyEntries))
            {
                table.Add(code, new Currency(code, decimals));
            }
        }

        return table;
    }
}
