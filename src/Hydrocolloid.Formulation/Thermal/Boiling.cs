using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// Where a liquid boils: water by IAPWS-IF97; dissolved sugars and salt raise it to where aw(t)·p water(t) meets the pressure; ethanol lowers it by the table at 1 atm.
/// Sucrose: activity by Starzak and Peacock (1997), 0–95 % by mass of sucrose and water, 0–150 °C; the kitchen's table (Browne 1912) is 0.2–0.4 K higher to 50 %, level at 60 %, and 1.5, 2.5 and
/// 5.4 K higher at 70, 80 and 90 %. Glucose and fructose (Norrish) and salt (Pitzer, to 6.1 mol per kg of water) by their activity at 25 °C. Ethanol: Perry's table at 1 atm; at 70 kPa
/// its own vapour pressure makes the effect up to 1 K smaller.
/// </summary>
public static class Boiling
{
    private const double StandardPascals = 101_325, GasConstant = 8.314462618, ZeroCelsiusKelvins = 273.15;
    private const double WaterGramsPerMol = 18.01528, SucroseGramsPerMol = 342.3, EthanolGramsPerMol = 46.068;
    private const double MaxSucroseFraction = 0.95, MaxSaltGrams = 36, MaxGlucoseGrams = 1900; // per 100 g of water: where the relations are held fast

    // Starzak and Peacock 1997: Q in J/mol, a, b.
    private const double Q = -17_638, A = -1.0038, B = -0.24653;

    // Browne 1912: % of sucrose by mass, K.
    private static readonly double[] s_browneSucrose = [0, 10, 20, 30, 40, 50, 60, 62, 64, 66, 68, 70, 72, 74, 76, 78, 80, 82, 84, 86, 88, 90];
    private static readonly double[] s_browneKelvins = [0, 0.4, 0.6, 1.0, 1.5, 2.0, 3.0, 3.4, 4.0, 4.8, 5.6, 6.5, 7.4, 8.4, 9.4, 10.6, 12.0, 13.9, 16.3, 19.3, 23.1, 27.8];

    // Perry's Chemical Engineers' Handbook as on a course sheet, 1 atm: mole fraction of ethanol in the liquid, °C.
    private static readonly double[] s_ethanolMoles = [0, 0.019, 0.072, 0.097, 0.124, 0.166, 0.234, 0.261, 0.327, 0.397, 0.508, 0.52, 0.573, 0.676, 0.747, 0.894, 1];
    private static readonly double[] s_ethanolCelsius = [100, 95.5, 89.0, 86.7, 85.3, 84.1, 82.7, 82.3, 81.5, 80.7, 79.8, 79.7, 79.3, 78.74, 78.24, 78.15, 78.3];

    /// <summary>The boiling point of a liquid.</summary>
    /// <param name="liquid">What is dissolved in its water.</param>
    /// <param name="pressure">The pressure over it; the standard atmosphere at sea level unless stated.</param>
    /// <returns>The boiling point, its parts, and whether the relations hold; where one does not, it is held at its limit and named.</returns>
    public static BoilingPoint PointOf(LiquidShares liquid, PotPressure pressure = default)
    {
        var solution = new Solution(liquid);
        double water = SaturatedWater.Celsius(pressure.AbsolutePascals);
        double sugars = solution.HasSugar ? solution.BoilsAt(pressure.AbsolutePascals, withSalt: false) : water;
        double all = solution.HasSalt ? solution.BoilsAt(pressure.AbsolutePascals, withSalt: true) : sugars;
        double celsius = all - solution.EthanolKelvins;
        double table = Math.Max(0, Interpolated(s_browneSucrose, s_browneKelvins, 100 * solution.SucroseFraction) - (sugars - water));

        return new(Temperature.FromDegreesCelsius(celsius), Temperature.FromDegreesCelsius(water),
            TemperatureDelta.FromKelvins(sugars - water), TemperatureDelta.FromKelvins(all - sugars), TemperatureDelta.FromKelvins(-solution.EthanolKelvins),
            new TemperatureRange(new NumberRange(celsius, celsius + (solution.IsSucroseOnly ? table : 0))), solution.IsEstimate, solution.By,
            pressure.Outside ?? solution.Outside(celsius, pressure.AbsolutePascals));
    }

    /// <summary>
    /// Whether a liquid gets as hot as a hydration window asks. A boil is the most that a pot reaches; a gentle simmer is a few degrees under it.
    /// </summary>
    /// <param name="needed">The temperatures needed; an open lower end is always reached. The lower end must be 200 °C or less.</param>
    /// <param name="liquid">What is dissolved in the water of the liquid.</param>
    /// <param name="pressure">The pressure over it; the standard atmosphere at sea level unless stated.</param>
    /// <returns>The answer, with the pressure of the cooker that would do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The lower end is above 200 °C.</exception>
    public static SimmerAnswer Reaches(TemperatureRange needed, LiquidShares liquid, PotPressure pressure = default)
    {
        BoilingPoint boils = PointOf(liquid, pressure);
        double min = Guard.InRange(needed.Celsius.Min ?? Guard.AbsoluteZeroCelsius, Guard.AbsoluteZeroCelsius, 200, "°C", nameof(needed));
        double missing = min - boils.Temperature.DegreesCelsius;
        if (missing <= 0)
        {
            return new(true, needed, boils, TemperatureDelta.FromKelvins(0), null, boils.Outside);
        }

        // The pressure at which it boils at the temperature needed: aw(t)·p water(t), with t as it would be without the ethanol.
        var solution = new Solution(liquid);
        double absolute = solution.Pascals(min + solution.EthanolKelvins, withSalt: true);
        return new(false, needed, boils, TemperatureDelta.FromKelvins(missing), Pressure.FromPascals(absolute - pressure.AirPascals), pressure.Outside ?? solution.Outside(min, absolute));
    }

    internal static double EthanolMoleFraction(double massFraction)
        => massFraction / EthanolGramsPerMol / ((massFraction / EthanolGramsPerMol) + ((1 - massFraction) / WaterGramsPerMol));

    private static double Interpolated(double[] x, double[] y, double at)
    {
        int row = Array.FindLastIndex(x, v => v <= at);
        return row >= x.Length - 1 ? y[y.Length - 1] : y[row] + ((at - x[row]) / (x[row + 1] - x[row]) * (y[row + 1] - y[row]));
    }

    private sealed class Solution
    {
        private readonly LiquidShares _liquid;
        private readonly double _sucroseMoles;
        private readonly double _glucoseActivity;
        private readonly double _saltActivity;
        private readonly double _saltMolal;

        public Solution(LiquidShares liquid)
        {
            _liquid = liquid;
            double water = Guard.InRange(liquid.WaterPercent, 0.1, 100, "%", nameof(liquid));
            SucroseFraction = liquid.SucrosePercent / (liquid.SucrosePercent + water);
            double sucrose = Math.Min(SucroseFraction, MaxSucroseFraction);
            _sucroseMoles = sucrose / SucroseGramsPerMol / ((sucrose / SucroseGramsPerMol) + ((1 - sucrose) / WaterGramsPerMol));
            _glucoseActivity = Activity(Solute.Glucose, liquid.MonosaccharidesPercent, MaxGlucoseGrams);
            _saltActivity = Activity(Solute.SodiumChloride, liquid.SaltPercent, MaxSaltGrams);
            _saltMolal = liquid.SaltPercent / water * 1000 / Solute.SodiumChloride.MolarMassGramsPerMol;
            EthanolKelvins = 100 - Interpolated(s_ethanolMoles, s_ethanolCelsius, EthanolMoleFraction(liquid.EthanolPercent / (liquid.EthanolPercent + water)));
        }

        /// <summary>Sucrose as a part of sucrose and water, by mass.</summary>
        public double SucroseFraction { get; }

        /// <summary>How much ethanol lowers the boiling point.</summary>
        public double EthanolKelvins { get; }

        public bool HasSugar => _liquid.SucrosePercent > 0 || _liquid.MonosaccharidesPercent > 0;

        public bool HasSalt => _liquid.SaltPercent > 0;

        public bool IsSucroseOnly => HasSugar && _liquid.MonosaccharidesPercent == 0;

        public bool IsEstimate => HasSalt || _liquid.MonosaccharidesPercent > 0 || (_liquid.SucrosePercent > 0 && _liquid.EthanolPercent > 0);

        public string By => string.Join(", ", new[]
        {
            "water IAPWS-IF97",
            _liquid.SucrosePercent > 0 ? "sucrose Starzak and Peacock 1997" : "",
            _liquid.MonosaccharidesPercent > 0 ? "glucose and fructose Norrish at 25 °C" : "",
            HasSalt ? "salt Pitzer at 25 °C" : "",
            _liquid.EthanolPercent > 0 ? "ethanol Perry's table at 1 atm" : "",
        }.Where(s => s.Length > 0));

        /// <summary>Vapour pressure of the water in the solution: aw(t)·p water(t).</summary>
        public double Pascals(double celsius, bool withSalt)
        {
            double sucrose = (1 - _sucroseMoles)
                * Math.Exp(Q / (GasConstant * (celsius + ZeroCelsiusKelvins)) * _sucroseMoles * _sucroseMoles * (1 + (_sucroseMoles * (A + (_sucroseMoles * B)))));
            return sucrose * _glucoseActivity * (withSalt ? _saltActivity : 1) * SaturatedWater.Pascals(celsius);
        }

        public double BoilsAt(double pascals, bool withSalt)
            => Pascals(SaturatedWater.MaxCelsius, withSalt) <= pascals ? SaturatedWater.MaxCelsius
                : Brent.FindRoot(t => Math.Log(Pascals(t, withSalt) / pascals), SaturatedWater.Celsius(pascals) - 1e-6, SaturatedWater.MaxCelsius, 1e-9, 200);

        public OutsideRange? Outside(double celsius, double pascals)
            => (_liquid.SucrosePercent > 0
                ? OutsideRange.Check("sucrose", 100 * SucroseFraction, "% of sucrose and water", 0, 100 * MaxSucroseFraction) ?? OutsideRange.Check("temperature", celsius, "°C", 0, 150)
                : null)
            ?? OutsideRange.Check("water activity of glucose and fructose", _glucoseActivity, "", 0.7, 1)
            ?? OutsideRange.Check("salt", _saltMolal, "mol/kg of water", 0, 6.1)
            ?? (_liquid.EthanolPercent > 0 ? OutsideRange.Check("pressure", pascals, "Pa", 0.96 * StandardPascals, 1.04 * StandardPascals) : null);

        private double Activity(Solute solute, double percent, double maxGrams)
            => percent == 0 ? 1 : WaterActivity.Ross([new SoluteAmount(solute, Math.Min(100 * percent / _liquid.WaterPercent, maxGrams))]).Value;
    }
}
