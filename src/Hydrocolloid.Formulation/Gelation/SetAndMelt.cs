using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;
using static Hydrocolloid.Formulation.Gelation.GelationSources;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>
/// Setting and melting temperature by concentration where published: gelatin by the law of Eldridge and Ferry, ln c = a + b/T, and a straight line in ln c, both fitted to a
/// cookery textbook's table (2–10 %, Bloom not stated, slow cooling). Other agents have the range of their source or of the catalogue.
/// </summary>
public static class SetAndMelt
{
    // Chori to riron [recalled].
    private static readonly double[] TablePercent = [2, 3, 4, 5, 6, 10];
    private static readonly double[] TableSettingCelsius = [3.2, 8, 10.5, 13.5, 14.5, 18.5];
    private static readonly double[] TableMeltingCelsius = [20, 23.5, 25, 26.5, 27, 28.5];

    internal static readonly LeastSquares Melting = Line(i => 1 / (TableMeltingCelsius[i] - Guard.AbsoluteZeroCelsius), i => Math.Log(TablePercent[i]));
    internal static readonly LeastSquares Setting = Line(i => Math.Log(TablePercent[i]), i => TableSettingCelsius[i]);

    /// <summary>The temperature at which a gel sets on slow cooling (methylcellulose and high-set curdlan: on heating).</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="percent">Its concentration in % of the gel, 0.01–100.</param>
    /// <returns>The temperature, or its range only; for an agent without a published one no value.</returns>
    /// <exception cref="ArgumentNullException">The agent is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is not from 0.01 to 100 %.</exception>
    public static Estimate<Temperature> SettingOf(Ingredient agent, double percent)
    {
        double dose = Guard.InRange(percent, 0.01, 100, "%");
        switch (EntryOf(agent).Id)
        {
            case "gelatin-type-a" or "gelatin-type-b":
                return Gelatin(Setting.Coefficients[0] + (Setting.Coefficients[1] * Math.Log(dose)), Quantile(Setting) * Setting.ResidualDeviation, dose, "sets");
            case "agar":
                return Range(new(34, 43), "1.5 % agar sets between 34 and 43 °C; cooled fast in ice it sets lower", FaoAgar, OutsideRange.Check("dose", dose, "% of the gel", 1.5, 1.5));
            default:
                return Catalogued(agent.Profile?.Setting.Window, "sets");
        }
    }

    /// <summary>The temperature at which a set gel melts.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="percent">Its concentration in % of the gel, 0.01–100.</param>
    /// <returns>The temperature, or its range only; for an agent without a published one no value.</returns>
    /// <exception cref="ArgumentNullException">The agent is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is not from 0.01 to 100 %.</exception>
    public static Estimate<Temperature> MeltingOf(Ingredient agent, double percent)
    {
        double dose = Guard.InRange(percent, 0.01, 100, "%");
        switch (EntryOf(agent).Id)
        {
            case "gelatin-type-a" or "gelatin-type-b":
                double a = Melting.Coefficients[0], b = Melting.Coefficients[1];
                double kelvins = b / (Math.Log(dose) - a);
                // The scatter in ln c as a scatter in T: dT = T²/|b| · d(ln c).
                return Gelatin(kelvins + Guard.AbsoluteZeroCelsius, Quantile(Melting) * Melting.ResidualDeviation * kelvins * kelvins / Math.Abs(b), dose, "melts");
            case "agar":
                return Range(new(85, null), "1.5 % agar does not melt below 85 °C", FaoAgar, OutsideRange.Check("dose", dose, "% of the gel", 1.5, 1.5));
            default:
                return Catalogued(agent.Profile?.Melting.Window, "melts");
        }
    }

    /// <summary>The melting temperature of a kappa-carrageenan gel by the temperature at which it set: 10–15 K higher, without added ions. By the ions only the form T = T₀ + b√c is known, without its constants.</summary>
    /// <param name="setting">The temperature at which it set.</param>
    /// <returns>The range.</returns>
    public static Estimate<Temperature> KappaMelting(Temperature setting)
    {
        double celsius = Guard.Celsius(setting);
        return Range(new(celsius + 10, celsius + 15), "kappa-carrageenan melts 10–15 K above the temperature at which it sets", GelationSources.KappaMelting, null);
    }

    /// <summary>The gelling temperature of one methylcellulose with sodium citrate and tartrate at 0.1 mol/L each, as measured. Two salts together shift it less than the sum of their shifts.</summary>
    /// <param name="citrate">Whether citrate is in it.</param>
    /// <param name="tartrate">Whether tartrate is in it.</param>
    /// <returns>The temperature of that sample.</returns>
    public static Estimate<Temperature> Methylcellulose(bool citrate, bool tartrate)
    {
        double celsius = (citrate, tartrate) switch { (false, false) => 60, (true, false) => 44, (false, true) => 47, _ => 36 };
        return new(Temperature.FromDegreesCelsius(celsius), null, null, Reliance.Screening, "measured on one sample of methylcellulose; the type and dose move it", GelationSources.Methylcellulose);
    }

    /// <summary>
    /// The gelling temperature of methylcellulose in a mixture of two salts at a fixed total concentration: T = x₁T₁ + x₂T₂ (Xu, Li, Zheng, Lam, Hu: Langmuir 20:6134, 2004, sodium chloride and iodide).
    /// </summary>
    /// <param name="firstSharePercent">Share of the first salt in mol % of the salts, 0–100.</param>
    /// <param name="withFirst">Gelling temperature with the first salt alone.</param>
    /// <param name="withSecond">Gelling temperature with the second salt alone.</param>
    /// <returns>The gelling temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 100 %.</exception>
    public static Temperature MethylcelluloseInMixedSalts(double firstSharePercent, Temperature withFirst, Temperature withSecond)
    {
        double share = Guard.InRange(firstSharePercent, 0, 100, "%") / 100;
        return Temperature.FromDegreesCelsius((share * Guard.Celsius(withFirst)) + ((1 - share) * Guard.Celsius(withSecond)));
    }

    private static Ingredient EntryOf(Ingredient agent) => Guard.NotNull(agent).BasedOn is { } entry ? EntryOf(entry) : agent;

    private static LeastSquares Line(Func<int, double> x, Func<int, double> y)
        => new(Matrix<double>.Build.Dense(TablePercent.Length, 2, (i, column) => column == 0 ? 1 : x(i)), Vector<double>.Build.Dense(TablePercent.Length, y));

    private static double Quantile(LeastSquares fit) => StudentT.InvCDF(0, 1, fit.DegreesOfFreedom, 0.975);

    private static Estimate<Temperature> Gelatin(double celsius, double half, double percent, string does)
        => new(Temperature.FromDegreesCelsius(celsius), Temperature.FromDegreesCelsius(celsius - half), Temperature.FromDegreesCelsius(celsius + half), Reliance.Screening,
            $"gelatin at {Numbers.Significant(percent, 3)} % {does} at about {Numbers.Significant(celsius, 3)} °C; the table states no Bloom, and more Bloom raises it", Yamazaki,
            OutsideRange.Check("dose", percent, "% of the gel", 2, 10));

    private static Estimate<Temperature> Catalogued(Cited<TemperatureRange>? window, string does)
        => window is null ? Estimate<Temperature>.None($"No temperature at which it {does} is known here.", Citation.CommonPractice)
            : Range(window.Value.Celsius, $"it {does} at {window.Value}; no relation to the dose is known here", window.Citation, null);

    private static Estimate<Temperature> Range(NumberRange celsius, string explanation, Citation source, OutsideRange? outside)
        => new(null, celsius.Min is { } low ? Temperature.FromDegreesCelsius(low) : null, celsius.Max is { } high ? Temperature.FromDegreesCelsius(high) : null,
            Reliance.Screening, explanation, source, outside);
}
