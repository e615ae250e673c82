using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Tests.Analysis;
using Hydrocolloid.Formulation.Tests.Formulas;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>Cases of calcium, alcohol and concentrations met by cooks and programmers in public threads; the trait holds the case's id. Tolerances are relative.</summary>
public class PractitionerContentCaseTests
{
    private static void Near(double actual, double expected, double tolerance) => actual.Should().BeApproximately(expected, Math.Abs(expected) * tolerance);

    private static MixContents Water(Ingredient salt, double gramsPerKg) => Formula.Named("case").Base(b => b.Share(Pantry.WaterDistilled, 100))
        .Then("salt", p => p.Add(salt, Dose.Percent(gramsPerKg / 10).OfBase)).Build().Analyse().Assembled;

    /// <summary>Laboratory thread, 2014: gellan in 0.5 L of deionised water needs 4 mmol/L of calcium, 0.294 g of the dihydrate.</summary>
    [Fact, Trait("Case", "PC-008")]
    public void Calcium_chloride_for_half_a_litre_of_gellan()
    {
        Near(4e-3 * 0.5 * Reagents.CalciumChlorideDihydrate.MolarMassGramsPerMol, 0.294, 0.01);
        // half a litre weighs 0.499 kg
        MixContents mix = Water(Pantry.CalciumChloride, 0.294 / 0.499);
        Near(mix.Calcium.MmolPerKg, 4, 0.01);
        Near(mix.FreeCalcium!.Value, 4, 0.02);
        Contents.Of(Pantry.WaterDistilled).Calcium.MmolPerKg.Should().Be(0);
    }

    /// <summary>Cook's question: "10 % calcium" on a label of cranberry juice is 100 mg in 240 mL, not a tenth of the juice.</summary>
    [Fact, Trait("Case", "PC-009")]
    public void Ten_percent_of_the_daily_value_is_ten_millimoles()
    {
        double milligramsPerLitre = 0.10 * 1000 / 0.240;
        double mmol = milligramsPerLitre / 40.078;

        Near(milligramsPerLitre, 416.7, 0.01);
        Near(mmol, 10.4, 0.01);
        Near(mmol * Reagents.TrisodiumCitrateDihydrate.MolarMassGramsPerMol / 1000, 3.06, 0.02);
        // the same juice as an own lot of 1.00 kg/L
        MixContents juice = Contents.Of(Mixes.Dry("juice").WithComposition(Composition.Per100Grams(water: 88, sugars: 12, calcium: milligramsPerLitre / 10)));
        Near(juice.Calcium.MmolPerKg, 10.4, 0.01);
        // by equilibrium one citrate for one calcium leaves a part free
        Water(Pantry.CalciumChloride, 10.4e-3 * 147.01).FreeCalcium!.Value.Should().BeApproximately(10.4, 0.2);
    }

    /// <summary>Discussion, 2025: milk holds 1.2 g/L of calcium [recalled], 29.9 mmol/L; the catalogue's milk at its own density within 5 %.</summary>
    [Fact, Trait("Case", "PC-010")]
    public void Milk_holds_thirty_millimoles_of_calcium()
    {
        Near(1200 / 40.078, 29.9, 0.02);
        MixContents milk = Contents.Of(Pantry.WholeMilk);
        Near(milk.Calcium.MmolPerKg * milk.DensityAt(Temperature.FromDegreesCelsius(20)).Value / 1000, 29.9, 0.05);
        milk.FreeCalcium!.How.Should().Be(ReckonedHow.Estimated, "casein binds most of it");
        milk.FreeCalcium.By.Should().Contain("casein");
    }

    /// <summary>Konjac maker, 2020: 10 g of bicarbonate are more moles than the alkali of 3 g of slaked lime, and still too weak.</summary>
    [Fact, Trait("Case", "PC-015")]
    public void Bicarbonate_has_the_moles_but_not_the_strength()
    {
        Near(10 / Reagents.SodiumBicarbonate.MolarMassGramsPerMol, 0.119, 0.01);
        // slaked lime, 74.093 g/mol, is not a reagent of the library
        Near(2 * 3 / 74.093, 0.081, 0.01);
        Near(3 / 74.093 / 0.9 * 1000, 45.0, 0.01);
        double ph = AcidBaseSystem.Of([], default, 100).Add(Reagents.SodiumBicarbonate, 10).Solve().PH;
        ph.Should().BeApproximately(8.2, 0.15).And.BeLessThan(10);
    }

    /// <summary>Party page: 5 volumes of 40 % spirit and 3 of water, 25 % vol when contraction is ignored, which is under 1 point.</summary>
    [Fact, Trait("Case", "PC-028")]
    public void Five_of_spirit_and_three_of_water_are_a_quarter_alcohol()
    {
        Mass spirit = EthanolWater.MassOf(Volume.FromMilliliters(500), 40);
        Mass water = EthanolWater.MassOf(Volume.FromMilliliters(300), 0);

        double blend = EthanolWater.Blend(spirit, 40, water, 0).EthanolPercentByVolume;
        blend.Should().BeApproximately(25, 1).And.BeGreaterThan(25, "the blend takes less room than its parts");
        Contents.Of((Pantry.Spirit40, spirit.Grams), (Pantry.WaterDistilled, water.Grams)).AlcoholByVolume.Value.Should().BeApproximately(25, 0.2);
        // the ceiling of three quarters spirit, and the same quarter from 50 % spirit, one to one
        EthanolWater.Blend(EthanolWater.MassOf(Volume.FromMilliliters(750), 40), 40, EthanolWater.MassOf(Volume.FromMilliliters(250), 0), 0).EthanolPercentByVolume.Should().BeApproximately(30, 1);
        EthanolWater.Blend(EthanolWater.MassOf(Volume.FromMilliliters(500), 50), 50, EthanolWater.MassOf(Volume.FromMilliliters(500), 0), 0).EthanolPercentByVolume.Should().BeApproximately(25, 1);
    }

    /// <summary>Issue on a unit converter, 2018: 0.5 mg/mL is a percentage by weight only with a density.</summary>
    [Theory, Trait("Case", "PC-036")]
    [InlineData("1 g/mL", 0.05), InlineData("1.3 g/mL", 0.0385)]
    public void Milligrams_per_millilitre_need_a_density_to_become_percent(string density, double percent)
    {
        double solution = (Volume.FromMilliliters(1) * QuantityText.ParseDensity(density)).Milligrams;
        Formula formula = Formula.Named("case").Base(b => b.Weigh(Mixes.Dry("liquid"), Mass.FromMilligrams(solution - 0.5)).Weigh(Mixes.Dry("solute"), Mass.FromMilligrams(0.5))).Build();

        Near(formula.Express("solute", DoseReference.Total).PercentByMass, percent, 0.001);
        Near(QuantityText.ParseDensity("0.5 kg/m³").GramsPerLiter, 0.5, 1e-9);
    }
}
