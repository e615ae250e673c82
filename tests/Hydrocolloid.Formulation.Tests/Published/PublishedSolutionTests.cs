using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Tests.Chemistry;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

public class PublishedSolutionTests
{
    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    /// <summary>rho-ethanol-10abv, rho-ethanol-20abv, rho-ethanol-30abv, rho-ethanol-40abv, rho-ethanol-50abv, rho-ethanol-60abv, rho-ethanol-70abv, rho-ethanol-80abv, rho-ethanol-90abv, rho-ethanol-96abv, rho-ethanol-100abv: a pharmacy's dilution sheet after OIML R 22, kg/m³ at 20 °C to two decimals: 0.01.</summary>
    [Theory]
    [InlineData(10, 984.71), InlineData(20, 973.56), InlineData(30, 962.21), InlineData(40, 948.05), InlineData(50, 930.14), InlineData(60, 909.11)]
    [InlineData(70, 885.56), InlineData(80, 859.27), InlineData(90, 829.18), InlineData(96, 807.42), InlineData(100, 789.24)]
    public void Density_of_spirit(double abv, double density)
        => EthanolWater.DensityOf(EthanolWater.PercentByMass(abv), At(20)).Value.KilogramsPerCubicMeter.Should().BeApproximately(density, 0.01);

    /// <summary>oiml-p0-t20, oiml-p1-t20, oiml-p0-t0, oiml-p1-t0, oiml-p0.5-t20: the verification list of a public-domain implementation of R 22, kg/m³ within 0.0001.</summary>
    [Theory]
    [InlineData(0, 20, 998.20123), InlineData(100, 20, 789.2391233), InlineData(0, 0, 999.8369332), InlineData(100, 0, 806.2151206), InlineData(50, 20, 913.770595)]
    public void Density_by_the_general_formula(double percentByMass, double celsius, double density)
        => EthanolWater.DensityOf(percentByMass, At(celsius)).Value.KilogramsPerCubicMeter.Should().BeApproximately(density, 1e-4);

    /// <summary>oiml-pure-ethanol-40C: the lower density limit stated by a page on R 22.</summary>
    [Fact]
    public void Density_of_ethanol_at_40() => EthanolWater.DensityOf(100, At(40)).Value.KilogramsPerCubicMeter.Should().BeApproximately(771.93, 0.01);

    /// <summary>abv-to-mass-40, abv-to-mass-12, abv-to-mass-15, abv-to-mass-5, abv-to-mass-96: R 22 [recalled] for 40 and 96, worked out from it for the others.</summary>
    [Theory]
    [InlineData(40, 33.3, 0.02), InlineData(12, 9.641, 0.01), InlineData(15, 12.093, 0.01), InlineData(5, 3.982, 0.01), InlineData(96, 93.84, 0.02)]
    public void Mass_of_alcohol_by_volume(double abv, double percentByMass, double tolerance)
        => EthanolWater.PercentByMass(abv).Should().BeApproximately(percentByMass, tolerance);

    /// <summary>rho-sucrose-0, rho-sucrose-10, rho-sucrose-20, rho-sucrose-30, rho-sucrose-40, rho-sucrose-50, rho-sucrose-60, rho-sucrose-66, rho-sucrose-70, rho-sucrose-80, rho-sucrose-84: CRC Handbook, concentrative properties of sucrose, kg/m³ at 20 °C; the fit holds 0.18, tolerance 0.3.</summary>
    [Theory]
    [InlineData(0, 998.2), InlineData(10, 1038.1), InlineData(20, 1081), InlineData(30, 1127), InlineData(40, 1176.5), InlineData(50, 1229.5)]
    [InlineData(60, 1286.4), InlineData(66, 1322.4), InlineData(70, 1347.2), InlineData(80, 1411.7), InlineData(84, 1438.3)]
    public void Density_of_syrup(double brix, double density)
        => SucroseWater.DensityOf(brix).Value.KilogramsPerCubicMeter.Should().BeApproximately(density, 0.3);

    /// <summary>sucrose-gl-50, sucrose-solubility-20 and sucrose-solubility-100 (Mohos 2010).</summary>
    [Fact]
    public void Sugar_per_litre_and_solubility()
    {
        SucroseWater.GramsPerLitre(50).Value.Should().BeApproximately(614.8, 0.2);
        SucroseWater.SolubilityPercent(At(20)).Value.Should().BeApproximately(67.09, 0.02);
        SucroseWater.SolubilityPercent(At(100)).Value.Should().BeApproximately(82.97, 0.02);
        SucroseWater.SolubilityPercent(At(101)).InRange.Should().BeFalse();
    }

    /// <summary>rho-water-25, rho-water-30, rho-water-40, rho-water-60, rho-water-80, rho-water-100: standard values of the CRC Handbook [recalled] against Kell 1975: 0.01.</summary>
    [Theory]
    [InlineData(25, 997.05), InlineData(30, 995.65), InlineData(40, 992.22), InlineData(60, 983.2), InlineData(80, 971.8), InlineData(100, 958.36)]
    public void Density_of_water(double celsius, double density)
        => WaterDensity.At(At(celsius)).Value.KilogramsPerCubicMeter.Should().BeApproximately(density, 0.01);

    /// <summary>rho-water-20-two-equations: Kell against A1 of OIML R 22, 0.005.</summary>
    [Fact]
    public void Two_equations_of_water_agree()
        => WaterDensity.At(At(20)).Value.KilogramsPerCubicMeter.Should().BeApproximately(EthanolWater.DensityOf(0, At(20)).Value.KilogramsPerCubicMeter, 0.005);

    /// <summary>aw-sucrose-10, aw-sucrose-30, aw-sucrose-50, aw-sucrose-60, aw-glycerol-50: Norrish worked out, 0.0001; for sucrose the equation of Starzak and Peacock agrees within 0.001.</summary>
    [Theory]
    [InlineData("sucrose", 10, 0.994), InlineData("sucrose", 30, 0.9749), InlineData("sucrose", 50, 0.9348), InlineData("sucrose", 60, 0.8953)]
    [InlineData("glycerol", 50, 0.8108), InlineData("glucose", 60, 0.8369), InlineData("sorbitol", 40, 0.9322)]
    public void Water_activity_of_one_solute(string name, double percentByMass, double activity)
    {
        SoluteAmount[] alone = [new(SolutionTests.Solutes.Single(s => s.Name == name), 100 * percentByMass / (100 - percentByMass))];

        WaterActivity.Norrish(alone).Value.Should().BeApproximately(activity, 1e-4);
        WaterActivity.Ross(alone).Value.Should().BeApproximately(activity, 1e-4);
    }

    /// <summary>aw-nacl-6m: Robinson and Stokes 1965 in a manual of an instrument, 0.760 ± 0.001; aw-nacl-1m: Robinson and Stokes [recalled], 0.9669 ± 0.0003.</summary>
    [Theory]
    [InlineData(6, 0.760, 0.001), InlineData(1, 0.9669, 0.0003)]
    public void Water_activity_of_salt(double molPerKg, double activity, double tolerance)
        => WaterActivity.Ross([new SoluteAmount(Solute.SodiumChloride, molPerKg * 5.844)]).Value.Should().BeApproximately(activity, tolerance);

    /// <summary>phi-nacl-6m: 1.271 ± 0.004.</summary>
    [Fact]
    public void Osmotic_coefficient_of_salt() => WaterActivity.OsmoticCoefficientOfSalt(6).Should().BeApproximately(1.271, 0.004);
}
