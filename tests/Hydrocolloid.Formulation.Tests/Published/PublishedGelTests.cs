using System.Text.Json;
using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Gelation;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>The checks of <c>gel-checks.json</c>, which holds each one's source, tolerance and how it was seen.</summary>
public class PublishedGelTests
{
    private static readonly JsonElement s_document = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "gel-checks.json"))).RootElement;

    public static TheoryData<string> Ids => [.. s_document.GetProperty("checks").EnumerateArray().Select(c => c.GetProperty("id").GetString()!)];

    [Theory, MemberData(nameof(Ids))]
    public void Value_is_met(string id)
    {
        JsonElement check = Find(id);
        Dictionary<string, object?> computed = Compute(id, check.GetProperty("given"), check.GetProperty("law").GetString()!);
        foreach (JsonProperty expected in check.GetProperty("expected").EnumerateObject())
        {
            computed.Should().ContainKey(expected.Name);
            Matches(expected.Value, computed[expected.Name], check.GetProperty("tolerance"), $"{id}: {expected.Name}");
        }
    }

    [Theory]
    [InlineData("fit-gelatin-nguyen-0oil")]
    [InlineData("fit-gelatin-nguyen-20oil")]
    [InlineData("fit-kappa-spi-power")]
    [InlineData("fit-kappa-spi-linear")]
    [InlineData("fit-leaf-sheet-mass")]
    [InlineData("fit-gelatin-viscosity-bloom")]
    public void Intervals_are_met(string id)
    {
        JsonElement check = Find(id);
        TrialFit fit = FitOf(check.GetProperty("given"), check.GetProperty("law").GetString()!);
        // The intervals are printed with ten digits.
        JsonElement tolerance = check.GetProperty("tolerance");
        foreach (JsonElement expected in check.GetProperty("predictions").EnumerateArray())
        {
            TrialPrediction at = fit.StrengthAt(expected.GetProperty("x").GetDouble());
            Matches(expected.GetProperty("y"), at.Strength, tolerance, id);
            Matches(expected.GetProperty("ci95_mean"), Both(at.Confidence), tolerance, id);
            Matches(expected.GetProperty("pi95"), Both(at.Prediction), tolerance, id);
        }
    }

    [Fact]
    public void Every_check_is_cited()
    {
        JsonElement[] checks = [.. s_document.GetProperty("checks").EnumerateArray()];
        checks.Select(c => c.GetProperty("id").GetString()).Should().OnlyHaveUniqueItems().And.HaveCount(84);
        checks.Should().OnlyContain(c => c.GetProperty("source").GetString()!.Length > 0 && (c.GetProperty("seen").GetString() == "read" || c.GetProperty("seen").GetString() == "recalled"));
    }

    private static JsonElement Find(string id) => s_document.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);

    private static Dictionary<string, object?> Compute(string id, JsonElement given, string law)
    {
        double N(string name) => given.GetProperty(name).GetDouble();
        double[] A(string name) => Doubles(given.GetProperty(name));
        StrengthModel gelatin = StrengthModel.For(Hydrocolloids.GelatinTypeA), agar = StrengthModel.For(Hydrocolloids.Agar);
        Grade Bloom(string name) => new(GradeScale.Bloom, N(name));
        Grade Agar(string name) => new(GradeScale.GelStrength, N(name));

        switch (id)
        {
            case "nist-norris":
                return LineOf(FitOf(given, law));
            case "nist-noint1":
                return ThroughOrigin(A("x"), A("y"));
            case "ols-exact-power-law":
                {
                    TrialFit fit = FitOf(given, law);
                    return new() { ["n"] = fit.Slope, ["ln_A"] = fit.Intercept, ["r_squared"] = fit.RSquared, ["residual_sd"] = fit.ResidualDeviation };
                }

            case "student-t":
                return new() { ["t"] = A("df").Select(df => FitWith((int)df).StudentT(95)).ToArray() };
            case "fit-inverse-gelatin":
                return new() { ["c_percent"] = FitOf(Find(given.GetProperty("fit").GetString()!).GetProperty("given"), "ln y").DoseFor(N("target_kPa")).Dose };
            case "fit-fewer-than-3":
                {
                    TrialFit fit = FitOf(given, "ln y");
                    fit.Issues.Should().Contain(TrialIssue.NoInterval);
                    return new() { ["n"] = fit.Slope, ["confidence_interval"] = fit.StrengthAt(1).Confidence };
                }

            case "fit-nonpositive":
                FluentActions.Invoking(() => FitOf(given, "ln y")).Should().Throw<ArgumentException>().WithMessage("*above 0*");
                return new() { ["error"] = "x and y must be positive for a log-log fit" };
            case "gf-cm2-to-Pa":
                return new() { ["Pa"] = A("g_cm2").Select(v => Firmness.FromGramsPerSquareCentimetre(v).Pascals).ToArray() };
            case "kgf-to-N":
                return new() { ["N"] = A("kgf").Select(v => Firmness.WeightOf(Mass.FromKilograms(v)).Newtons).ToArray() };
            case "kcal-to-kJ":
                N("kcal_mol").Should().Be(29.2, "it is Masson's activation energy");
                return new() { ["kJ_mol"] = StrengthLoss.CarrageenanActivationEnergy };
            case "bloom-area":
                Firmness.BloomPlunger.Millimeters.Should().BeApproximately(N("d_mm"), 1e-12);
                return new() { ["A_mm2"] = 1e6 / Firmness.On(Force.FromNewtons(1), Firmness.BloomPlunger).Pascals };
            case "bloom-concentration":
                return new() { ["c_percent"] = gelatin.ReferencePercent };
            case "bloom-100-pressure" or "bloom-225-pressure" or "bloom-250-pressure":
                {
                    double modulus = Firmness.YoungsModulusOfBloom(N("bloom")).Value!.Value.Kilopascals;
                    return new() { ["nominal_kPa"] = Firmness.On(Firmness.WeightOf(Mass.FromGrams(N("bloom"))), Firmness.BloomPlunger).Kilopascals, ["E_kPa"] = modulus, ["G_kPa"] = modulus / 3 };
                }

            case { } when id.StartsWith("bloom-scale-", StringComparison.Ordinal):
                return new() { ["F_g"] = gelatin.StrengthAt(Bloom("bloom"), N("c_percent")).Value };
            case { } when id.StartsWith("bloom-sub-", StringComparison.Ordinal):
                {
                    Mass mass = Mass.FromGrams(N("m1_g"));
                    GradeChange root = gelatin.Substitute(mass, Bloom("B1"), Bloom("B2")), ratio = gelatin.Substitute(mass, Bloom("B1"), Bloom("B2"), GradeRule.Proportional);
                    root.ByOtherRule!.Value.Grams.Should().Be(ratio.Result.Value!.Value.Grams);
                    return new() { ["p_0_5"] = root.Result.Value!.Value.Grams, ["p_1"] = ratio.Result.Value!.Value.Grams };
                }

            case "leaf-count-from-packet":
                {
                    // The check takes 200 g for gold, not the middle of its range.
                    var gold = new GelatinPiece("gold sheet", NumberRange.Single(N("sheet_bloom")), GelatinPiece.Gold.MassGrams);
                    (double count, double other) = gold.CountFor(Mass.FromGrams(N("packet_g")), Bloom("packet_bloom"));
                    return new() { ["sheets_sqrt_rule"] = count, ["sheets_linear_rule"] = other };
                }

            case "leaf-firmness-index":
                {
                    GelatinPiece[] sheets = [GelatinPiece.Bronze, GelatinPiece.Silver, GelatinPiece.Gold, GelatinPiece.Platinum];
                    sheets.Select(s => s.Grade.Value).Should().Equal(A("bloom"));
                    return new() { ["index"] = sheets.Select(s => s.FirmnessIndex).ToArray(), ["bronze_over_platinum"] = GelatinPiece.Bronze.FirmnessAgainst(GelatinPiece.Platinum) };
                }

            case "oil-softening":
                return new() { ["ratio"] = new[] { 10.0, 20, 40 }.Select(oil => GelModifiers.GelatinWithFat(oil).Value!.Value / 100).ToArray() };
            case "gelatin-hall":
                return new() { ["E_kPa"] = Firmness.YoungsModulusOfGelatin(N("C_g_L")).Value!.Value.Kilopascals };
            case "gelatin-melting-fit":
                return new() { ["a"] = SetAndMelt.Melting.Coefficients[0], ["b_K"] = SetAndMelt.Melting.Coefficients[1], ["enthalpy_kJ_mol"] = SetAndMelt.Melting.Coefficients[1] * Kinetics.GasConstant / 1000 };
            case { } when id.StartsWith("agar-scale-", StringComparison.Ordinal):
                {
                    double strength = agar.StrengthAt(Agar("grade_g_cm2"), N("c_percent")).Value!.Value;
                    return new() { ["S_g_cm2"] = strength, ["S_kPa"] = Firmness.FromGramsPerSquareCentimetre(strength).Kilopascals };
                }

            case "agar-exponent":
                return new() { ["n_agar"] = PowerLawOf(A("c"), A("agar")).Slope, ["n_agarose"] = PowerLawOf(A("c"), A("agarose")).Slope };
            case "agar-inverse":
                return new() { ["c_percent"] = agar.DoseFor(Agar("grade_g_cm2"), N("target_g_cm2")).Value };
            case "agar-roundtrip":
                return new() { ["S"] = PowerLaw.At(N("S15"), N("c") / 1.5, N("n")) };
            case "agar-temperature-range":
                {
                    Estimate<Temperature> setting = SetAndMelt.SettingOf(Hydrocolloids.Agar, N("c_percent"));
                    return new()
                    {
                        ["setting_C"] = new[] { setting.Low!.Value.DegreesCelsius, setting.High!.Value.DegreesCelsius },
                        ["melting_C_min"] = SetAndMelt.MeltingOf(Hydrocolloids.Agar, N("c_percent")).Low!.Value.DegreesCelsius,
                    };
                }

            case "syneresis-m":
                return new() { ["M"] = A("kt").Select(kt => GelModifiers.Syneresis(kt, Duration.FromHours(1)).Value!.Value / 100).ToArray() };
            case "syneresis-half":
                GelModifiers.Syneresis(N("k_per_h"), Duration.FromHours(1 / N("k_per_h"))).Value.Should().BeApproximately(50, 1e-9);
                return new() { ["t_half_h"] = 1 / N("k_per_h") };
            case "carr-ph-factor":
                return new() { ["factor"] = QuarterLoss(100, A("pH")[0]) / QuarterLoss(100, A("pH")[1]) };
            case "carr-masson":
                return new()
                {
                    ["k_per_h"] = A("T_C").Select(c => StrengthLoss.CarrageenanScissionPerHour(Celsius(c)).Value).ToArray(),
                    ["ratio_90_100"] = StrengthLoss.CarrageenanScissionPerHour(Celsius(100)).Value / StrengthLoss.CarrageenanScissionPerHour(Celsius(90)).Value,
                };
            case "carr-ea-factor3":
                return new() { ["Ea_kJ_mol"] = Kinetics.ActivationEnergy(3, Celsius(N("T1_C")), Celsius(N("T2_C"))) };
            case { } when id.StartsWith("carr-t25-", StringComparison.Ordinal):
                return new() { ["t_min"] = QuarterLoss(N("T_C"), N("pH")) };
            case { } when id.StartsWith("carr-exposure", StringComparison.Ordinal):
                return new()
                {
                    ["remaining"] = StrengthLoss.Remaining(Hydrocolloids.CarrageenanKappa, given.GetProperty("steps").EnumerateArray().Select(s =>
                        new HeatStep(Celsius(s.GetProperty("T_C").GetDouble()), s.GetProperty("pH").GetDouble(), Duration.FromMinutes(s.GetProperty("t_min").GetDouble())))).Value!.Value / 100,
                };
            case "kcl-optimum":
                {
                    NumberRange optimum = IonDemand.KappaPotassium(0.75).Value!.Value;
                    Both(optimum).Should().Equal(A("mol_L"));
                    return new() { ["g_L"] = A("mol_L").Select(mol => mol * Reagents.PotassiumChloride.MolarMassGramsPerMol).ToArray() };
                }

            case "q10":
                return new() { ["ratio"] = A("Ea_kJ_mol").Select(e => Kinetics.RateRatio(e, Celsius(N("T1_C")), Celsius(N("T2_C")))).ToArray() };
            case "mw-effect":
                return new() { ["ratio"] = A("f").Select(f => PowerLaw.At(1, f, 2.42)).ToArray() };
            case { } when id.StartsWith("gellan-ca-", StringComparison.Ordinal):
                {
                    double calcium = CalciumNeed.GellanCalciumMmolPerLitre(N("gellan_g_L")).Value;
                    NumberRange monovalent = IonDemand.GellanMonovalentMmolPerLitre(N("gellan_g_L")).Value;
                    return new()
                    {
                        ["carboxylate_mM"] = monovalent.Min / 10,
                        ["calcium_mM"] = calcium,
                        ["calcium_mg_L"] = calcium * CalciumNeed.CalciumGramsPerMol,
                        ["monovalent_mM"] = Both(monovalent),
                    };
                }

            case "alginate-stoich":
                return new() { ["calcium_g"] = IonDemand.AlginateCalcium(Mass.FromGrams(N("sodium_alginate_g"))).High!.Value.Grams };
            case { } when id.StartsWith("ca-", StringComparison.Ordinal):
                {
                    Reagent salt = Calcium(given.GetProperty("formula").GetString()!);
                    return new() { ["molar_mass"] = salt.MolarMassGramsPerMol, ["calcium_fraction"] = salt.CalciumPercent / 100 };
                }

            case "alginate-membrane":
                {
                    double bath = N("bath_CaCl2_g_L") / Reagents.CalciumChloride.MolarMassGramsPerMol * 1000;
                    double[] skin = [.. A("t_s").Select(t => IonDemand.AlginateSkin(bath, N("alginate_g_L"), Duration.FromSeconds(t)).Value!.Value.Millimeters)];
                    double bound = 1000 * CalciumNeed.AlginateCalciumGrams(N("alginate_g_L")) / CalciumNeed.CalciumGramsPerMol;
                    return new() { ["Cb_mol_m3"] = bath, ["N_mol_m3"] = bound, ["x_mm"] = skin, ["ratio_120_30"] = skin[2] / skin[0] };
                }

            case { } when id.StartsWith("lm-ca-", StringComparison.Ordinal):
                return new() { ["mg_Ca_per_g"] = A("R").Select(r => CalciumNeed.PectinCalciumMilligramsPerGram(100 * N("GA"), 100 * N("DE"), r).Value).ToArray() };
            case "pectin-ionisation":
                return new() { ["fraction"] = A("pH").Select(ph => PectinGel.IonisedPercent(ph, N("pK")) / 100).ToArray() };
            case "sag-grade":
                return new() { ["grade"] = A("sag_percent").Select(sag => PectinGel.GradeOf(Mass.FromGrams(N("pectin_g")), sag).Value).ToArray() };
            case "sag-dose":
                return new() { ["pectin_g"] = PectinGel.PectinFor(Mass.FromGrams(N("sugar_g")), new(GradeScale.Sag, N("grade"))).Grams };
            case "sag-modulus":
                return new() { ["G_Pa_slip"] = PectinGel.StandardModulus.Value.Max, ["G_Pa_no_slip"] = PectinGel.StandardModulus.Value.Min };
            case "pectin-hm-type":
                {
                    PectinType type = PectinGel.TypesOf(N("DM_percent")).Should().ContainSingle().Subject;
                    return new() { ["type"] = type.Name, ["setting_time_min"] = Both(type.SettingTime.Seconds).Select(s => s / 60).ToArray(), ["pH"] = Both(type.Ph) };
                }

            case "pectin-percolation":
                {
                    // The range is t ± its standard error; the sum of its limits and their difference give both back.
                    double[] range = Both(PectinGel.PercolationExponent.Value);
                    return new() { ["t"] = Math.Round((range[0] + range[1]) / 2, 12), ["se"] = Math.Round((range[1] - range[0]) / 2, 12) };
                }

            case "mc-salt-mix":
                return new() { ["T_C"] = SetAndMelt.MethylcelluloseInMixedSalts(100 * N("m1"), Celsius(N("T1_C")), Celsius(N("T2_C"))).DegreesCelsius };
            case "mc-citrate":
                return new() { ["T_C"] = new[] { Salted(false, false), Salted(true, false), Salted(false, true), Salted(true, true) } };
            case "mc-not-additive":
                {
                    double shifts = (Salted(false, false) - Salted(true, false)) + (Salted(false, false) - Salted(false, true));
                    return new() { ["sum_of_shifts_C"] = shifts, ["additive_prediction_C"] = Salted(false, false) - shifts, ["measured_C"] = Salted(true, true) };
                }

            case "care-food-class":
                return new() { ["matches"] = A("hardness_N_m2").Select(h => SwallowingHardness.ClassesOf(Pressure.FromPascals(h)).Select(c => c.ToString()["Class".Length..]).ToArray()).ToArray() };
            default:
                return LineOf(FitOf(given, law));
        }
    }

    private static double QuarterLoss(double celsius, double ph) => StrengthLoss.CarrageenanQuarterLoss(Celsius(celsius), ph).Value!.Value.Minutes;

    private static double Salted(bool citrate, bool tartrate) => SetAndMelt.Methylcellulose(citrate, tartrate).Value!.Value.DegreesCelsius;

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static double[] Both(NumberRange? range) => [range!.Value.Min!.Value, range.Value.Max!.Value];

    private static double[] Doubles(JsonElement list) => [.. list.EnumerateArray().Select(e => e.GetDouble())];

    private static Reagent Calcium(string formula) => formula switch
    {
        "CaCl2" => Reagents.CalciumChloride,
        "CaCl2.2H2O" => Reagents.CalciumChlorideDihydrate,
        "CaCO3" => Reagents.CalciumCarbonate,
        "CaSO4.2H2O" => Reagents.CalciumSulphateDihydrate,
        "C6H10CaO6.5H2O" => Reagents.CalciumLactatePentahydrate,
        "C12H22CaO14.H2O" => Reagents.CalciumGluconateMonohydrate,
        "Ca3(C6H5O7)2.4H2O" => Reagents.TricalciumCitrateTetrahydrate,
        _ => throw new ArgumentOutOfRangeException(nameof(formula)),
    };

    private static TrialFit PowerLawOf(double[] x, double[] y) => TrialFit.PowerLaw(x.Zip(y, (dose, strength) => new TrialPoint(dose, strength)));

    private static TrialFit FitOf(JsonElement given, string law)
    {
        double[] x = Doubles(given.GetProperty("x")), y = Doubles(given.GetProperty("y"));
        double[]? sd = given.TryGetProperty("sd", out JsonElement deviations) ? Doubles(deviations) : null;
        TrialPoint[] points = [.. x.Select((dose, i) => new TrialPoint(dose, y[i], sd?[i]))];
        return law.StartsWith("ln", StringComparison.Ordinal) ? TrialFit.PowerLaw(points) : TrialFit.Line(points);
    }

    /// <summary>A trial with so many degrees of freedom.</summary>
    private static TrialFit FitWith(int degreesOfFreedom) => TrialFit.Line(Enumerable.Range(1, degreesOfFreedom + 2).Select(i => new TrialPoint(i, i + (i % 2))));

    private static Dictionary<string, object?> LineOf(TrialFit fit)
    {
        double t = fit.StudentT(95), seSlope = Math.Sqrt(fit.SlopeVariance), seIntercept = Math.Sqrt(fit.InterceptVariance);
        double residual = fit.ResidualDeviation * fit.ResidualDeviation * fit.DegreesOfFreedom;
        return new()
        {
            ["n"] = fit.DegreesOfFreedom + 2,
            ["df"] = fit.DegreesOfFreedom,
            ["B0"] = fit.Intercept,
            ["B1"] = fit.Slope,
            ["intercept"] = fit.Intercept,
            ["slope"] = fit.Slope,
            ["A"] = Math.Exp(Math.Min(fit.Intercept, 700)),
            ["se_B0"] = seIntercept,
            ["se_B1"] = seSlope,
            ["se_intercept"] = seIntercept,
            ["se_slope"] = seSlope,
            ["r_squared"] = fit.RSquared,
            ["residual_sd"] = fit.ResidualDeviation,
            ["F"] = fit.Slope * fit.Slope / fit.SlopeVariance,
            ["residual_ss"] = residual,
            ["regression_ss"] = fit.Slope * fit.Slope / fit.SlopeVariance * fit.ResidualDeviation * fit.ResidualDeviation,
            ["t_975"] = t,
            ["ci95_slope"] = new[] { fit.Slope - (t * seSlope), fit.Slope + (t * seSlope) },
            ["ci95_intercept"] = new[] { fit.Intercept - (t * seIntercept), fit.Intercept + (t * seIntercept) },
        };
    }

    private static Dictionary<string, object?> ThroughOrigin(double[] x, double[] y)
    {
        var fit = new LeastSquares(Matrix<double>.Build.DenseOfColumnArrays(x), Vector<double>.Build.DenseOfArray(y));
        double total = y.Sum(v => v * v), regression = total - fit.ResidualSumOfSquares;
        return new()
        {
            ["B1"] = fit.Coefficients[0],
            ["se_B1"] = Math.Sqrt(fit.Covariance[0, 0]),
            ["residual_sd"] = fit.ResidualDeviation,
            ["r_squared_uncentred"] = regression / total,
            ["residual_ss"] = fit.ResidualSumOfSquares,
            ["regression_ss"] = regression,
            ["F"] = regression / fit.ResidualDeviation / fit.ResidualDeviation,
            ["df"] = fit.DegreesOfFreedom,
        };
    }

    private static void Matches(JsonElement expected, object? actual, JsonElement tolerance, string because)
    {
        switch (expected.ValueKind)
        {
            case JsonValueKind.Null:
                actual.Should().BeNull(because);
                break;
            case JsonValueKind.String:
                actual.Should().Be(expected.GetString(), because);
                break;
            case JsonValueKind.Array:
                object?[] items = [.. ((System.Collections.IEnumerable)actual!).Cast<object?>()];
                items.Should().HaveCount(expected.GetArrayLength(), because);
                foreach ((JsonElement item, int i) in expected.EnumerateArray().Select((e, i) => (e, i)))
                {
                    Matches(item, items[i], tolerance, because);
                }

                break;
            default:
                double value = Convert.ToDouble(actual, System.Globalization.CultureInfo.InvariantCulture);
                double allowed = tolerance.TryGetProperty("absolute", out JsonElement absolute) ? absolute.GetDouble()
                    : tolerance.TryGetProperty("relative", out JsonElement relative) ? relative.GetDouble() * Math.Abs(expected.GetDouble()) : 0;
                value.Should().BeApproximately(expected.GetDouble(), allowed, because);
                break;
        }
    }
}
