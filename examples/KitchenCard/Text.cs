using System.Globalization;

namespace KitchenCard;

/// <summary>Numbers and lines for people: invariant, no group separators.</summary>
internal static class Text
{
    public static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    public static string Tenths(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>A time in hours and minutes; never reached if null.</summary>
    public static string Hours(double? seconds) => seconds is not { } s ? "never"
        : s < 3600 ? $"{Math.Ceiling(s / 60).ToString(CultureInfo.InvariantCulture)} min" : $"{Number(Math.Round(s / 3600, 1))} h";

    /// <summary>Four significant digits.</summary>
    public static string Significant(double value)
    {
        int decimals = value == 0 ? 0 : Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>A mass with as many decimals as the balance shows.</summary>
    public static string Grams(double grams, double division)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(division) - 1e-9), 0, 6);
        return grams.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) + " g";
    }

    public static string Percent(double percent)
    {
        int decimals = percent == 0 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(percent))), 0, 6);
        return percent.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture) + " %";
    }

    public static string SignedPercent(double percent)
        => Math.Abs(percent) < 0.05 ? "0 %" : percent.ToString("+0.0;-0.0", CultureInfo.InvariantCulture) + " %";

    public static string Count(int count, string one, string several) => $"{count.ToString(CultureInfo.InvariantCulture)} {(count == 1 ? one : several)}";

    /// <summary>An amount of money; "not known" if it is not.</summary>
    public static string Money(decimal? amount) => amount?.ToString(CultureInfo.InvariantCulture) ?? "not known";

    /// <summary>What the balance shows, and which balance.</summary>
    public static string Weighed(CardWeighed line) => line.WeighGrams is not { } grams || line.BalanceDivisionGrams is not { } division ? "cannot be weighed"
        : $"{Grams(grams, division)} ({Number(division)} g steps{(line.Goes > 1 ? $", in {line.Goes.Value.ToString(CultureInfo.InvariantCulture)} goes" : "")}){(line.Way == "direct" ? "" : $" of its {line.Way}")}";

    public static string Moulds(CardMoulds m)
        => $"Fills {Count(m.Filled, "cavity", "cavities")} of {m.Name} ({Count(m.MouldsNeeded, "mould", "moulds")}) with {Significant(m.GramsEach)} g each: {Significant(m.FillMillilitres)} mL "
            + $"at {Number(m.CastCelsius)} °C, {Number(Math.Round(m.DensityKgPerM3))} kg/m³ ({m.DensityHow}). {Significant(m.LeftGrams)} g left.";

    public static string SourceMarks(IReadOnlyList<int> sources)
        => sources.Count == 0 ? "" : " [" + string.Join(", ", sources.Select(s => s.ToString(CultureInfo.InvariantCulture))) + "]";

    public static string Kebab(string name)
        => string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? "-" + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    /// <summary>Breaks a text at spaces so that no line is longer than the width, further lines indented.</summary>
    public static IEnumerable<string> Wrap(string text, int width, string indent, string hanging)
    {
        string line = indent;
        bool empty = true;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = hanging;
                empty = true;
            }

            line += empty ? word : " " + word;
            empty = false;
        }

        yield return line;
    }
}
