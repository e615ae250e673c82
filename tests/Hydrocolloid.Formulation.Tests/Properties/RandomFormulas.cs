using CsCheck;
using Hydrocolloid.Formulation.Tests.Formulas;

namespace Hydrocolloid.Formulation.Tests.Properties;

/// <summary>Random formulas: possible ones of a kitchen, and drafts of any doubles at all.</summary>
internal static class RandomFormulas
{
    /// <summary>Any double, the ones that break things as often as the ordinary ones.</summary>
    public static readonly Gen<double> AnyDouble = Gen.OneOf(
        Gen.Double[0, 100],
        Gen.Double,
        Gen.OneOf<double>(0.0, -0.0, 1, 100, -1, 5e-324, 1e-310, -1e-310, double.MaxValue, double.MinValue, double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e6, 99.99999999999999));

    private static readonly Gen<(int Kind, double Size)> s_line = Gen.Select(Gen.Int[0, 4], Gen.Double[-3, 1].Select(power => Math.Pow(10, power)));

    /// <summary>A formula with a base of one to three parts and up to four phases of one to three lines, on every kind of reference.</summary>
    public static readonly Gen<Formula> Possible = Gen.Select(
        Gen.Double[0.1, 10].Array[1, 3],
        s_line.Array[1, 3].Array[0, 4]).Select(Build);

    public static Formula Build(double[] parts, (int Kind, double Size)[][] phases) => Draft(
        [.. parts.Select(p => p / parts.Sum() * 100)],
        [.. phases.Select(lines => lines.Select(l => (l.Kind, l.Size)).ToArray())]).Build();

    /// <summary>Kind: 0 base, 1 preceding, 2 total, 3 water, 4 the first part of the base.</summary>
    public static FormulaBuilder Draft(double[] shares, (int Kind, double Percent)[][] phases)
    {
        FormulaBuilder builder = Formula.Named("random").Base(b =>
        {
            for (int i = 0; i < shares.Length; i++)
            {
                b.Share(Of("part-" + i), shares[i]);
            }
        });
        int next = 0;
        for (int p = 0; p < phases.Length; p++)
        {
            builder.Then("phase " + p, b =>
            {
                foreach ((int kind, double percent) in phases[p])
                {
                    b.Add(Of("line-" + next++), Dose.Percent(percent).Of(Reference(kind)));
                }
            });
        }

        return builder;
    }

    public static DoseReference Reference(int kind) => kind switch
    {
        0 => DoseReference.Base,
        1 => DoseReference.Preceding,
        2 => DoseReference.Total,
        3 => DoseReference.Water,
        _ => DoseReference.Line("part-0"),
    };

    private static Ingredient Of(string id) => Mixes.Dry(id).WithComposition(Composition.Per100Grams(water: 70));
}
