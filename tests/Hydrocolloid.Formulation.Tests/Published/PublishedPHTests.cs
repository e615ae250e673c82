using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Tests.Chemistry;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>
/// pH of published solutions. The citrate table of Gomori (Methods Enzymol 1:138, 1955) is not among them: each of its rows is 0.15 to 0.38 pH above
/// what the thermodynamic constants allow (46.5 + 3.5 mL holds 0.21 mol of sodium per mol of citrate, which cannot give pH 3.0), and it contradicts the NBS citrate standard.
/// </summary>
public class PublishedPHTests
{
    private static AcidBaseSystem Solution(double sodium, double potassium, params AcidAmount[] acids)
        => AcidBaseSystem.Of(acids, new StrongIons { SodiumMolPerKg = sodium, PotassiumMolPerKg = potassium });

    /// <summary>Primary standards in mol/kg of water at 25 °C. Tolerance 0.02 pH: a Davies solver with these constants is known to hold 0.012.</summary>
    public static TheoryData<string, string, double, double, double, double> Standards => new()
    {
        { "potassium tetroxalate", "oxalic acid", 0.1, 0, 0.05, 1.679 }, // IUPAC 2002 [recalled]; JIS Z 8802: 1.68
        { "potassium hydrogen tartrate, saturated", "tartaric acid", 0.0341, 0, 0.0341, 3.557 }, // IUPAC 2002 [recalled]
        { "potassium dihydrogen citrate", "citric acid", 0.05, 0, 0.05, 3.776 }, // Staples, Bates: J Res NBS 73A:37, 1969
        { "potassium hydrogen phthalate", "phthalic acid", 0.05, 0, 0.05, 4.005 }, // Hamer, Pinching, Acree: J Res NBS 36:47, 1946
        { "equimolal phosphate", "phosphoric acid", 0.05, 0.05, 0.025, 6.865 }, // IUPAC 2002 [recalled]; JIS Z 8802: 6.86
        { "phosphate 1:3.5", "phosphoric acid", 0.039125, 0.06086, 0.008695, 7.413 }, // IUPAC 2002 [recalled]
        { "borax", "boric acid", 0.04, 0.02, 0, 9.18 }, // Staples, Bates 1969
        { "carbonate", "carbonic acid", 0.05, 0.075, 0, 10.012 }, // Staples, Bates 1969
    };

    [Theory, MemberData(nameof(Standards))]
    public void Primary_standards_have_their_pH(string name, string acid, double acidMolPerKg, double sodium, double potassium, double pH)
    {
        AcidBaseState state = Solution(sodium, potassium, new AcidAmount(Acids.All.Single(a => a.Name == acid), acidMolPerKg)).Solve();

        state.PH.Should().BeApproximately(pH, 0.02, name);
        state.InRange.Should().BeTrue();
    }

    /// <summary>McIlvaine: J Biol Chem 49:183, 1921: mL of 0.2 mol/L Na2HPO4 and pH; the rest to 20 mL is 0.1 mol/L citric acid.</summary>
    private static readonly (double PH, double Phosphate)[] s_mcIlvaine =
    [
        (2.2, 0.4), (2.4, 1.24), (2.6, 2.18), (2.8, 3.17), (3.0, 4.11), (3.2, 4.94), (3.4, 5.7), (3.6, 6.44), (3.8, 7.1), (4.0, 7.71),
        (4.2, 8.28), (4.4, 8.82), (4.6, 9.35), (4.8, 9.86), (5.0, 10.3), (5.2, 10.72), (5.4, 11.15), (5.6, 11.6), (5.8, 12.09), (6.0, 12.63),
        (6.2, 13.22), (6.4, 13.85), (6.6, 14.55), (6.8, 15.45), (7.0, 16.47), (7.2, 17.39), (7.4, 18.17), (7.6, 18.73), (7.8, 19.15), (8.0, 19.45),
    ];

    /// <summary>
    /// The table is of the colorimetric age and reaches ionic strength 0.58, past the range of Davies; pairs of sodium with citrate and phosphate are not modelled. The
    /// measured spread is rms 0.13 with a bias of +0.03 to +0.19, so 0.14 and 0.20 hold it; without activity correction the error is 0.5 rms, 0.74 at most.
    /// </summary>
    [Fact]
    public void McIlvaine_buffers_within_their_spread()
    {
        double[] misses = [.. s_mcIlvaine.Select(row => Solution(0.4 * row.Phosphate / 20, 0,
            new AcidAmount(Acids.Phosphoric, 0.2 * row.Phosphate / 20), new AcidAmount(Acids.Citric, 0.1 * (20 - row.Phosphate) / 20)).Solve().PH - row.PH)];

        Math.Sqrt(misses.Average(m => m * m)).Should().BeApproximately(0.13, 0.01);
        misses.Should().OnlyContain(m => m > 0 && m < 0.20);
    }

    [Fact]
    public void Beyond_the_range_of_Davies_the_result_says_so()
    {
        AcidBaseState state = Solution(0.4 * 19.45 / 20, 0, new AcidAmount(Acids.Phosphoric, 0.2 * 19.45 / 20), new AcidAmount(Acids.Citric, 0.1 * 0.55 / 20)).Solve();

        state.IonicStrengthMolPerKgWater.Should().BeApproximately(0.584, 0.001);
        state.InRange.Should().BeFalse();
        state.Outside!.ToString().Should().Be("ionic strength 0.5835 mol/kg of water is outside 0–0.5");
    }

    /// <summary>Walpole's acetate buffers, 0.1 mol/L, 200 mL, as in Pearse 1980: mL of acid, pH. The published table is 0.04 rms from Davies; tolerance 0.08.</summary>
    [Theory]
    [InlineData(185, 3.6), InlineData(176, 3.8), InlineData(164, 4.0), InlineData(147, 4.2), InlineData(126, 4.4), InlineData(102, 4.6)]
    [InlineData(80, 4.8), InlineData(59, 5.0), InlineData(42, 5.2), InlineData(29, 5.4), InlineData(19, 5.6)]
    public void Acetate_buffers(double acidMillilitres, double pH)
        => Solution(0.1 * (200 - acidMillilitres) / 200, 0, new AcidAmount(Acids.Acetic, 0.1)).Solve().PH.Should().BeApproximately(pH, 0.08);

    /// <summary>0.1 mol/L citric acid and trisodium citrate, mixed and not diluted: a common laboratory table [recalled]. Tolerance 0.10, of which 0.08 is used.</summary>
    [Theory]
    [InlineData(82, 3.0), InlineData(68.5, 3.6), InlineData(59, 4.0), InlineData(44.5, 4.6), InlineData(35, 5.0), InlineData(21, 5.6), InlineData(8, 6.2)]
    public void Citrate_buffers_of_a_recalled_table(double acidMillilitres, double pH)
        => Solution(0.3 * (100 - acidMillilitres) / 100, 0, new AcidAmount(Acids.Citric, 0.1)).Solve().PH.Should().BeApproximately(pH, 0.10);

    /// <summary>
    /// Acids alone, mol/L. Published calculations to 0.01 (pH of common acids and bases, A. Giri, 2019) are of ideal solutions: activities add up to
    /// 0.02 for phosphoric acid, hence 0.02. Measured values, one decimal, are the Merck Index's [recalled]: 0.06.
    /// </summary>
    [Theory]
    [InlineData("citric acid", 0.1, 2.08, 0.02), InlineData("citric acid", 0.01, 2.62, 0.02), InlineData("citric acid", 0.001, 3.24, 0.02)]
    [InlineData("acetic acid", 0.1, 2.88, 0.02), InlineData("acetic acid", 0.01, 3.39, 0.02), InlineData("acetic acid", 1.0, 2.4, 0.06)]
    [InlineData("lactic acid", 0.1, 2.44, 0.02), InlineData("lactic acid", 0.01, 2.96, 0.02)]
    [InlineData("phosphoric acid", 0.1, 1.63, 0.02), InlineData("phosphoric acid", 0.01, 2.26, 0.02)]
    [InlineData("carbonic acid", 0.01, 4.18, 0.02), InlineData("carbonic acid", 0.001, 4.68, 0.02)]
    [InlineData("tartaric acid", 0.05, 2.2, 0.06), InlineData("malic acid", 0.07458, 2.34, 0.06), InlineData("malic acid", 0.007458, 2.8, 0.06)]
    public void Acids_alone(string acid, double molPerKg, double pH, double tolerance)
        => Solution(0, 0, new AcidAmount(Acids.All.Single(a => a.Name == acid), molPerKg)).Solve().PH.Should().BeApproximately(pH, tolerance);

    /// <summary>Half of pKw 13.997 (MINTEQA2 version 4).</summary>
    [Fact]
    public void Pure_water_is_neutral() => AcidBaseSystem.Water.Solve().PH.Should().BeApproximately(13.997 / 2, 1e-6);

    /// <summary>
    /// Calcium chloride and citrate at a held pH in mmol/kg: regression values worked out beside this library from the same constants (MINTEQA2 version 4,
    /// Davies, no solids, no sodium pairs), so the tolerance is their last digit.
    /// </summary>
    [Theory]
    [InlineData(3, 10, 5, 9.759, 0.0445), InlineData(4, 10, 5, 8.371, 0.0410), InlineData(5, 10, 5, 5.910, 0.0335), InlineData(7, 10, 5, 5.102, 0.0306)]
    [InlineData(4, 10, 20, 5.854, 0.0818), InlineData(7, 10, 20, 0.242, 0.0900), InlineData(7, 1.5, 10, 0.029, 0.0543)]
    public void Calcium_citrate_speciation(double pH, double calcium, double citrate, double free, double ionicStrength)
    {
        AcidBaseState state = AcidBaseSystem.Of([new AcidAmount(Acids.Citric, citrate / 1000)],
            new StrongIons { CalciumMolPerKg = calcium / 1000, ChlorideMolPerKg = calcium / 500, SodiumMolPerKg = 3 * citrate / 1000 }).SolveAt(pH);

        state.FreeCalciumMmolPerKgWater.Should().BeApproximately(free, 0.002);
        double bound = Enumerable.Range(0, 4).Sum(n => state.CalciumComplexMmolPerKgWater(Acids.Citric, n));
        (bound + state.FreeCalciumMmolPerKgWater).Should().BeApproximately(calcium, 1e-9);
        // The printed ionic strengths leave out the hydrogen ions and what balances them.
        (state.IonicStrengthMolPerKgWater - state.HydrogenMolPerKgWater).Should().BeApproximately(ionicStrength, 0.0001);
    }

    /// <summary>0.3 % trisodium citrate dihydrate is 10.2 mmol/kg; one to one with calcium, 5 mmol/kg free takes 15.2. The equilibrium at pH 7 leaves 3 % of the citrate without calcium, hence 0.4.</summary>
    [Fact]
    public void Calcium_for_5_free_beside_citrate()
    {
        AcidBaseSystem citrate = AcidBaseSystem.Water.Add(Reagents.TrisodiumCitrateDihydrate, 3);

        DoseResult dose = citrate.DoseToFreeCalcium(Reagents.CalciumChlorideDihydrate, 5, heldPH: 7);

        dose.Outcome.Should().Be(DoseOutcome.Reached);
        (dose.GramsPerKg / 147.008 * 1000).Should().BeApproximately(15.2, 0.4);
        dose.State.FreeCalciumMmolPerKgWater.Should().BeApproximately(5, 1e-6);
        dose.State.SaturationIndex(CalciumSolid.Citrate).Should().BeGreaterThan(0, "such a liquid is supersaturated with calcium citrate at pH 7");
    }

    /// <summary>Calcium in salts: n · 40.078/M with standard atomic weights [recalled], relative tolerance 0.001.</summary>
    [Theory]
    [InlineData("CaCl2", 36.11346), InlineData("CaCl2.2H2O", 27.26246), InlineData("CaCO3", 40.04356), InlineData("CaSO4.2H2O", 23.27897)]
    [InlineData("CaC6H10O6.5H2O", 12.99997), InlineData("CaC12H22O14.H2O", 8.938261), InlineData("Ca3(C6H5O7)2.4H2O", 21.07549)]
    public void Calcium_in_salts(string formula, double percent)
        => ReagentTests.All.Single(r => r.MolecularFormula == formula).CalciumPercent.Should().BeApproximately(percent, percent * 1e-3);

    /// <summary>alginate-stoich, gellan-ca-2, -5, -10 (Tang, Tung, Zeng 1996), lm-ca-… (Mechanism of gel formation by low methoxyl pectins); relative tolerance 0.001.</summary>
    [Fact]
    public void Calcium_of_gelling_agents()
    {
        CalciumNeed.AlginateCalciumGrams(1).Should().BeApproximately(0.10115304, 1e-4);
        CalciumNeed.GellanCalciumMmolPerLitre(2).Value.Should().BeApproximately(1.5466756, 1.5e-3);
        CalciumNeed.GellanCalciumMmolPerLitre(5).Value.Should().BeApproximately(3.8666889, 3.8e-3);
        CalciumNeed.GellanCalciumMmolPerLitre(10).Value.Should().BeApproximately(7.7333779, 7.7e-3);
        CalciumNeed.GellanCalciumMmolPerLitre(20).InRange.Should().BeFalse();
        CalciumNeed.PectinCalciumMilligramsPerGram(80, 35, 0.4).Value.Should().BeApproximately(23.665781, 0.02);
        CalciumNeed.PectinCalciumMilligramsPerGram(80, 30, 0.5).Value.Should().BeApproximately(31.857782, 0.03);
        CalciumNeed.PectinCalciumMilligramsPerGram(65, 40, 0.5).Value.Should().BeApproximately(22.18667, 0.02);
        CalciumNeed.PectinCalciumMilligramsPerGram(65, 60, 0.5).InRange.Should().BeFalse();
    }
}
