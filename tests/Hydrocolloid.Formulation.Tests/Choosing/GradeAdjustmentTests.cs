using CsCheck;
using Hydrocolloid.Formulation.Choosing;
using Hydrocolloid.Formulation.Gelation;
using Hydrocolloid.Formulation.Serialization;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Choosing;

public class GradeAdjustmentTests
{
    private static readonly Grade s_powder = new(GradeScale.Bloom, 225);
    private static readonly Grade s_silver = new(GradeScale.Bloom, 160);

    /// <summary>100 g of water with 2.6 g of 225 g Bloom.</summary>
    private static Formula Jelly => Formula.Named("jelly").Base(b => b.Share(Pantry.Water, 100))
        .Then("gel", p => p.Add(Hydrocolloids.GelatinTypeA.WithGrade(s_powder), Dose.Percent(2.6).OfBase, l => l.Labelled("gelatin"))).Build();

    [Fact, Trait("Case", "PC-004")]
    public void Powder_becomes_leaf_by_the_square_root_and_the_straight_ratio_is_told()
    {
        // 2.6 · √(225/160) = 3.083; 2.6 · 225/160 = 3.656, tolerances of the case 0.5 %
        GradeAdjustment leaf = Jelly.AdjustGrade("gelatin", s_silver);

        leaf.Rule.Should().Be(GradeRule.StrengthCurve);
        leaf.Dose!.PercentByMass.Should().BeApproximately(3.083, 3.083 * 0.005);
        leaf.DoseByOtherRule!.PercentByMass.Should().BeApproximately(3.656, 3.656 * 0.005);
        leaf.ToString().Should().Be("2.6 g of 225 g Bloom is 3.08 g of 160 g Bloom by mass × √Bloom; 3.66 g by mass × Bloom");
        leaf.Derivation!.ToText().Should().Be("1. base = 100 g (given)\n2. gelatin = 2.6 % of the base = 2.6/100 × 100 g = 2.6 g\n3. gelatin of 160 g Bloom = 2.6 g × √(225/160) = 3.08322 g\n");
        leaf.Formula!.Line("gelatin").Ingredient.Grade.Should().Be(s_silver);

        GradeAdjustment straight = Jelly.AdjustGrade("gelatin", s_silver, GradeRule.Proportional);
        straight.Dose!.PercentByMass.Should().BeApproximately(3.656, 3.656 * 0.005);
        straight.DoseByOtherRule!.PercentByMass.Should().BeApproximately(3.083, 3.083 * 0.005);
        straight.Explanation.Should().Contain("by mass × Bloom; 3.08 g by mass × √Bloom");
    }

    [Fact]
    public void Adjusting_there_and_back_returns_the_formula()
        => Gen.Select(Gen.Int[0, 2], Gen.Double[50, 1000], Gen.Double[50, 1000], Gen.Double[0.01, 5], Gen.Int[0, 3], Gen.Bool).Sample((which, from, to, percent, reference, straight) =>
        {
            (Ingredient agent, GradeScale scale) = which switch
            {
                0 => (Hydrocolloids.GelatinTypeA, GradeScale.Bloom),
                1 => (Hydrocolloids.Agar, GradeScale.GelStrength),
                _ => (Hydrocolloids.PectinHighMethoxylRapidSet, GradeScale.Sag),
            };
            DosePercent stated = Dose.Percent(percent);
            Dose dose = reference switch { 0 => stated.OfBase, 1 => stated.OfPreceding, 2 => stated.OfTotal, _ => stated.OfWater };
            GradeRule rule = straight ? GradeRule.Proportional : GradeRule.StrengthCurve;
            Formula formula = DosingTests.WithPieces(agent.WithGrade(new(scale, from)), dose);
            Formula there = formula.AdjustGrade("agent", new(scale, to), rule).Formula!;
            Formula back = there.AdjustGrade("agent", new(scale, from), rule).Formula!;
            return back.Line("agent").Ingredient.Equals(formula.Line("agent").Ingredient)
                && Math.Abs(back.Line("agent").Dose.PercentByMass / percent - 1) < 1e-9
                && Math.Abs(there.Proportions.MassOf(there.Line("agent")) * 100 / formula.AdjustGrade("agent", new(scale, to), rule).Masses.Result.Value!.Value.Grams - 1) < 1e-9;
        });

    /// <summary>Sheets and their masses of the leaf table, LEAF-TEACH (titanium and the packet recalled); 14 g of 200 g Bloom by weight, mass × √Bloom: 14·√(200/mid)/mass.</summary>
    [Theory]
    [InlineData("bronze", 3.3, 140, 5.071)]
    [InlineData("silver", 2.5, 160, 6.261)]
    [InlineData("gold", 2.0, 205, 6.914)]
    [InlineData("platinum", 1.7, 250, 7.366)]
    [InlineData("titanium", 5.0, 110, 3.776)]
    [InlineData("packet", 7.0, 237.5, 1.835)]
    public void Sheets_are_counted_by_weight_for_their_grade(string name, double mass, double middleBloom, double count)
    {
        GelatinPiece piece = name switch
        {
            "bronze" => GelatinPiece.Bronze,
            "silver" => GelatinPiece.Silver,
            "gold" => GelatinPiece.Gold,
            "platinum" => GelatinPiece.Platinum,
            "titanium" => GelatinPiece.Titanium,
            _ => GelatinPiece.PowderPacket,
        };
        piece.MassGrams.Should().Be(mass);
        piece.Grade.Value.Should().Be(middleBloom);

        Formula formula = Jelly.WithDose("gelatin", Dose.Percent(1.4).OfBase);
        SheetAdjustment sheets = formula.AdjustSheets("gelatin", piece, Mass.FromKilograms(1), from: new(GradeScale.Bloom, 200));

        sheets.Count.Should().BeApproximately(count, 0.001);
        sheets.WholeSheets.Should().Be((int)Math.Round(count));
        sheets.FirmnessOfWholeSheets.Should().BeApproximately(Math.Pow(Math.Round(count) / count, 2), 0.002, "firmness goes with the square of the dose");
        sheets.Adjustment.Formula!.Line("gelatin").Ingredient.Grade.Should().Be(piece.Grade);
        (sheets.CountByOtherRule * mass * middleBloom).Should().BeApproximately(14 * 200, 1e-9);
    }

    [Fact]
    public void Carrageenan_is_not_converted_and_says_why()
    {
        Formula formula = DosingTests.WithPieces(Hydrocolloids.CarrageenanKappa.WithGrade(new(GradeScale.GelStrength, 800)), Dose.Percent(0.6).OfBase);
        GradeAdjustment none = formula.AdjustGrade("agent", new(GradeScale.GelStrength, 1200));

        none.Formula.Should().BeNull();
        none.Dose.Should().BeNull();
        none.Explanation.Should().Contain("ion form");
    }

    [Fact]
    public void Adjusted_formula_is_kept_with_its_grade_in_json()
    {
        Formula leaf = Jelly.AdjustGrade("gelatin", s_silver).Formula!;
        FormulaJson.Read(FormulaJson.Write(leaf)).Should().Be(leaf);
    }

    [Fact]
    public void What_cannot_be_adjusted_is_refused()
    {
        Formula plain = DosingTests.WithPieces(Hydrocolloids.GelatinTypeA, Dose.Percent(2).OfBase);
        FluentActions.Invoking(() => plain.AdjustGrade("agent", s_silver)).Should().Throw<ArgumentException>().WithMessage("'agent' states no grade*").WithParameterName("from");
        FluentActions.Invoking(() => Jelly.AdjustGrade("gelatin", new(GradeScale.Sag, 150))).Should().Throw<ArgumentException>().WithMessage("*scale*");
        FluentActions.Invoking(() => Jelly.AdjustGrade("gelatin", s_silver, (GradeRule)2)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Jelly.AdjustGrade("gelatin", new(GradeScale.Bloom, 0.5))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Jelly.AdjustSheets("gelatin", GelatinPiece.Gold, Mass.Zero)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => DosingTests.WithPieces(Hydrocolloids.Agar, Dose.Percent(1).OfBase).AdjustSheets("agent", GelatinPiece.Gold, Mass.FromGrams(100), from: s_silver))
            .Should().Throw<ArgumentException>().WithMessage("'agent' is not gelatin.*");
    }
}
