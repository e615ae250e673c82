using CsCheck;
using Hydrocolloid.Formulation.Gelation;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Gelation;

public class GradeTests
{
    private static readonly StrengthModel s_gelatin = StrengthModel.For(Hydrocolloids.GelatinTypeA);

    private static readonly StrengthModel s_agar = StrengthModel.For(Hydrocolloids.Agar);

    /// <summary>A model with a strength, a pair of its grades and a dose within its range.</summary>
    private static Gen<(StrengthModel Model, Grade From, Grade To, double Percent)> Cases
        => Gen.Select(Gen.Bool, Gen.Double[50, 1500], Gen.Double[50, 1500], Gen.Double[0, 1]).Select((isAgar, from, to, share) =>
        {
            StrengthModel model = isAgar ? s_agar : s_gelatin;
            double min = model.ValidPercent.Min!.Value, max = model.ValidPercent.Max!.Value;
            return (model, new Grade(model.Scale!.Value, from), new Grade(model.Scale.Value, to), min + (share * (max - min)));
        });

    [Fact]
    public void Weaker_gelatin_needs_more_by_the_square_root_and_both_rules_are_told()
    {
        // 2.6 · √(225/160) = 3.08; 2.6 · 225/160 = 3.66
        GradeChange change = s_gelatin.Substitute(Mass.FromGrams(2.6), Bloom(225), Bloom(160));

        change.Rule.Should().Be(GradeRule.StrengthCurve);
        change.Result.Value!.Value.Grams.Should().BeApproximately(3.08, 0.005);
        change.ByOtherRule!.Value.Grams.Should().BeApproximately(3.66, 0.005);
        change.ToString().Should().Be("2.6 g of 225 g Bloom is 3.08 g of 160 g Bloom by mass × √Bloom; 3.66 g by mass × Bloom");
        change.Result.Low!.Value.Grams.Should().BeLessThan(3.08);
        change.Result.High!.Value.Grams.Should().BeInRange(3.08, 3.66, "the straight ratio lies beyond what the exponent's range allows");
    }

    [Fact]
    public void Changing_a_grade_there_and_back_returns_the_mass()
        => Gen.Select(Cases, Gen.Double[0.001, 1000], Gen.Bool).Sample((c, grams, straight) =>
        {
            GradeRule rule = straight ? GradeRule.Proportional : GradeRule.StrengthCurve;
            Mass there = c.Model.Substitute(Mass.FromGrams(grams), c.From, c.To, rule).Result.Value!.Value;
            return Near(c.Model.Substitute(there, c.To, c.From, rule).Result.Value!.Value.Grams, grams);
        });

    [Fact]
    public void A_changed_grade_is_as_firm_as_before()
        => Cases.Sample(c =>
        {
            double percent = c.Model.Substitute(Mass.FromGrams(c.Percent), c.From, c.To).Result.Value!.Value.Grams;
            return percent > 100 || Near(c.Model.StrengthAt(c.To, percent).Value!.Value, c.Model.StrengthAt(c.From, c.Percent).Value!.Value);
        });

    [Fact]
    public void More_dose_is_never_softer_and_more_grade_is_never_softer()
        => Gen.Select(Cases, Gen.Double[1, 2]).Sample((c, more) =>
            c.Model.StrengthAt(c.From, c.Percent * more).Value >= c.Model.StrengthAt(c.From, c.Percent).Value
            && c.Model.StrengthAt(new(c.From.Scale, c.From.Value * more), c.Percent).Value >= c.Model.StrengthAt(c.From, c.Percent).Value);

    [Fact]
    public void Dose_for_the_strength_of_a_dose_is_that_dose()
        => Cases.Sample(c => Near(c.Model.DoseFor(c.From, c.Model.StrengthAt(c.From, c.Percent).Value!.Value).Value!.Value, c.Percent));

    [Fact]
    public void Grade_by_one_gel_of_the_lot_gives_that_gel_back()
        => Cases.Sample(c => Near(c.Model.GradeOf(c.Percent, c.Model.StrengthAt(c.From, c.Percent).Value!.Value).Value!.Value, c.From.Value));

    [Fact]
    public void Uncertainty_holds_the_value_and_vanishes_at_the_test_concentration()
    {
        Cases.Sample(c =>
        {
            Estimate<double> strength = c.Model.StrengthAt(c.From, c.Percent);
            return strength.Low <= strength.Value && strength.Value <= strength.High && strength.InRange;
        });
        Estimate<double> atTest = s_agar.StrengthAt(new(GradeScale.GelStrength, 900), 1.5);
        atTest.Low.Should().Be(900);
        atTest.High.Should().Be(900);
    }

    [Fact]
    public void Outside_its_range_a_strength_says_so()
    {
        s_gelatin.StrengthAt(Bloom(200), 1).Outside!.ToString().Should().Be("dose 1 % of the gel is outside 1.5–10");
        s_agar.DoseFor(new(GradeScale.GelStrength, 700), 5000).InRange.Should().BeFalse();
    }

    [Theory]
    [InlineData("carrageenan-kappa")]
    [InlineData("carrageenan-iota")]
    [InlineData("sodium-alginate")]
    [InlineData("gellan-low-acyl")]
    [InlineData("pectin-low-methoxyl")]
    [InlineData("pectin-high-methoxyl")]
    [InlineData("methylcellulose")]
    public void What_depends_on_more_than_dose_and_grade_gets_no_number(string id)
    {
        StrengthModel model = StrengthModel.For(Catalogue.BuiltIn.Get(id));
        Estimate<double> strength = model.StrengthAt(new(model.Scale ?? GradeScale.GelStrength, 150), 1);

        strength.Value.Should().BeNull();
        strength.Low.Should().BeNull();
        strength.Reliance.Should().Be(Reliance.QualitativeOnly);
        strength.Explanation.Should().NotBeEmpty();
        model.DoseFor(new(model.Scale ?? GradeScale.GelStrength, 150), 100).Value.Should().BeNull();
    }

    [Fact]
    public void Carrageenan_of_another_strength_is_not_converted_but_pectin_is_by_definition()
    {
        GradeChange kappa = StrengthModel.For(Hydrocolloids.CarrageenanKappa).Substitute(Mass.FromGrams(1), new(GradeScale.GelStrength, 800), new(GradeScale.GelStrength, 1200));
        kappa.Result.Value.Should().BeNull();
        kappa.ToString().Should().Contain("ion form");

        GradeChange pectin = StrengthModel.For(Hydrocolloids.PectinHighMethoxylRapidSet).Substitute(Mass.FromGrams(4), new(GradeScale.Sag, 150), new(GradeScale.Sag, 120));
        pectin.Result.Value!.Value.Grams.Should().BeApproximately(5, 1e-12);
        pectin.Result.Reliance.Should().Be(Reliance.Predictive);
    }

    [Fact]
    public void Own_grade_of_an_entry_has_its_model()
        => StrengthModel.For(Hydrocolloids.Agar.As("house-agar", "House agar")).Should().BeSameAs(s_agar);

    [Fact]
    public void A_grade_of_another_scale_is_refused()
        => FluentActions.Invoking(() => s_gelatin.StrengthAt(new(GradeScale.Sag, 150), 2)).Should().Throw<ArgumentException>().WithParameterName("grade");

    [Fact]
    public void Fish_gelatin_is_only_screened()
        => StrengthModel.For(Hydrocolloids.GelatinFish).StrengthAt(Bloom(200), 3).Reliance.Should().Be(Reliance.Screening);

    [Fact]
    public void Sheet_for_sheet_is_not_equal_firmness()
    {
        GelatinPiece[] sheets = [GelatinPiece.Titanium, GelatinPiece.Bronze, GelatinPiece.Silver, GelatinPiece.Gold, GelatinPiece.Platinum];

        sheets.Select(s => s.MassGrams).Should().Equal(5.0, 3.3, 2.5, 2.0, 1.7);
        sheets.Select(s => s.Bloom.ToString()).Should().Equal("100–120", "125–155", "160", "190–220", "235–265");
        sheets.Select(s => s.FirmnessAgainst(GelatinPiece.Platinum)).Should().BeInDescendingOrder();
        GelatinPiece.Bronze.FirmnessAgainst(GelatinPiece.Platinum).Should().BeApproximately(2.11, 0.005);
        GelatinPiece.Titanium.Source.IsRecalled.Should().BeTrue();
    }

    [Fact]
    public void Working_doses_of_gelatin_are_corrected_for_its_grade()
    {
        // 1.2-2.2 % at 225 g Bloom · √(225/160)
        Estimate<NumberRange> firm = WorkingDose.For(Hydrocolloids.GelatinTypeA.WithGrade(Bloom(160)), Texture.Firm)!;
        firm.Value!.Value.Min!.Value.Should().BeApproximately(1.2 * Math.Sqrt(225.0 / 160), 1e-12);
        firm.Value.Value.Max!.Value.Should().BeApproximately(2.2 * Math.Sqrt(225.0 / 160), 1e-12);
        firm.InRange.Should().BeFalse("the window starts under the 1.5 % the curve was made for");

        WorkingDose.JustSet(Hydrocolloids.GelatinTypeA.WithGrade(Bloom(225)))!.Value!.Value.Min.Should().Be(0.6);
        WorkingDose.For(Hydrocolloids.GelatinTypeA.WithGrade(Bloom(160)), Texture.FluidGel).Should().BeNull();
    }

    [Fact]
    public void Working_doses_are_as_catalogued_where_a_grade_or_a_relation_is_missing()
    {
        var agar = Hydrocolloids.Agar.WithGrade(new(GradeScale.GelStrength, 900));
        WorkingDose.For(agar, Texture.Firm)!.Value.Should().Be(new NumberRange(0.4, 0.7));
        WorkingDose.For(agar, Texture.Firm)!.Explanation.Should().Contain("the grade the window holds for is not stated");
        WorkingDose.For(agar, Texture.Firm, new(GradeScale.GelStrength, 700))!.Value!.Value.Max!.Value.Should().BeApproximately(0.7 * Math.Pow(700.0 / 900, 1 / 1.7), 1e-12);
        WorkingDose.For(Hydrocolloids.GelatinTypeB, Texture.Soft)!.Explanation.Should().Contain("the grade at hand is not stated");
        WorkingDose.For(Hydrocolloids.CarrageenanKappa.WithGrade(new(GradeScale.GelStrength, 900)), Texture.Firm)!.Explanation.Should().Contain("ion form");
        WorkingDose.For(Pantry.Water, Texture.Firm).Should().BeNull();
        FluentActions.Invoking(() => WorkingDose.For(agar, Texture.Firm, Bloom(200))).Should().Throw<ArgumentException>().WithParameterName("windowGrade");
    }

    [Fact]
    public void Units_of_firmness_convert_there_and_back()
        => Gen.Select(Gen.Double[0, 5000], Gen.Double[1, 100]).Sample((strength, millimetres) =>
        {
            Pressure pressure = Firmness.FromGramsPerSquareCentimetre(strength);
            Length probe = Length.FromMillimeters(millimetres);
            return Near(Firmness.InGramsPerSquareCentimetre(pressure), strength) && Near(Firmness.On(Firmness.ForceOf(pressure, probe), probe).Pascals, pressure.Pascals);
        });

    private static Grade Bloom(double grams) => new(GradeScale.Bloom, grams);

    // A handful of powers, each good to about 1e-15.
    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-12 * Math.Max(Math.Abs(a), Math.Abs(b));
}
