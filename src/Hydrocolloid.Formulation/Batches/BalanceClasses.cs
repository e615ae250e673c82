using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>The classes of OIML R 76-1:2006: table 3 (which balances a class has, and their least load) and table 6 (permissible errors).</summary>
internal static class BalanceClasses
{
    private const double NoLimit = double.PositiveInfinity;

    // Table 3: e in g, number of intervals n = Max/e, least load in e.
    private static readonly (BalanceClass Class, double EMin, double EMax, double NMin, double NMax, double LeastLoad)[] s_ranges =
    [
        (BalanceClass.Special, 0.001, NoLimit, 50_000, NoLimit, 100),
        (BalanceClass.High, 0.001, 0.05, 100, 100_000, 20),
        (BalanceClass.High, 0.1, NoLimit, 5_000, 100_000, 50),
        (BalanceClass.Medium, 0.1, 2, 100, 10_000, 20),
        (BalanceClass.Medium, 5, NoLimit, 500, 10_000, 20),
        (BalanceClass.Ordinary, 5, NoLimit, 100, 1_000, 10),
    ];

    /// <summary>The least load of a balance of a class; refused if the class has none with such intervals.</summary>
    public static double LeastLoad(BalanceClass @class, double e, double capacityGrams)
    {
        double n = capacityGrams / e;
        foreach (var range in s_ranges)
        {
            // The noise of a division neither makes nor breaks a class.
            if (range.Class == @class && e >= range.EMin && e <= range.EMax && n >= range.NMin * (1 - 1e-9) && n <= range.NMax * (1 + 1e-9))
            {
                return range.LeastLoad * e;
            }
        }

        string allowed = string.Join("; or ", s_ranges.Where(r => r.Class == @class).Select(r =>
            $"e {Text(r.EMin, r.EMax, " g")} with {Text(r.NMin, r.NMax, "")} intervals"));
        throw new ArgumentOutOfRangeException(nameof(capacityGrams), capacityGrams,
            $"A balance of class {Name(@class)} has {allowed}; this one has e {Numbers.Significant(e, 6)} g with {Numbers.Significant(n, 6)} intervals.");
    }

    /// <summary>Table 6: the permissible error at verification, in e, for a load in e.</summary>
    public static double PermissibleIntervals(BalanceClass @class, double load)
    {
        (double first, double second) = @class switch
        {
            BalanceClass.Special => (50_000d, 200_000d),
            BalanceClass.High => (5_000, 20_000),
            BalanceClass.Medium => (500, 2_000),
            _ => (50, 200),
        };
        return load <= first ? 0.5 : load <= second ? 1 : 1.5;
    }

    private static string Name(BalanceClass @class) => new('I', (int)@class + 1);

    private static string Text(double min, double max, string unit)
        => double.IsPositiveInfinity(max) ? $"from {Numbers.Exact(min)}{unit}" : $"{Numbers.Exact(min)} to {Numbers.Exact(max)}{unit}";
}
