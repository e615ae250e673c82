using CsCheck;
using Hydrocolloid.Formulation.Tests.Properties;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Batches;

public class BalanceTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static Balance Step(double grams) => Balance.WithDivision(G(grams));

    /// <summary>OIML R 76-1:2006, table 3: the least load of each class, and the ends of its ranges.</summary>
    [Theory]
    [InlineData(BalanceClass.Special, 0.001, 50, 0.1)]
    [InlineData(BalanceClass.High, 0.001, 0.1, 0.02)]
    [InlineData(BalanceClass.High, 0.05, 5000, 1)]
    [InlineData(BalanceClass.High, 0.1, 500, 5)]
    [InlineData(BalanceClass.Medium, 0.1, 10, 2)]
    [InlineData(BalanceClass.Medium, 1, 10_000, 20)]
    [InlineData(BalanceClass.Medium, 5, 2500, 100)]
    [InlineData(BalanceClass.Ordinary, 5, 5000, 50)]
    public void Class_sets_the_minimum_load(BalanceClass @class, double division, double capacity, double leastLoad)
        => Balance.OfClass(@class, G(division), G(capacity)).MinimumLoad.Grams.Should().BeApproximately(leastLoad, 1e-12);

    [Theory]
    [InlineData(BalanceClass.Special, 0.001, 49)]
    [InlineData(BalanceClass.High, 0.05, 5001)]
    [InlineData(BalanceClass.High, 0.1, 499)]
    [InlineData(BalanceClass.High, 0.07, 70)]
    [InlineData(BalanceClass.Medium, 0.01, 10)]
    [InlineData(BalanceClass.Medium, 1, 10_001)]
    [InlineData(BalanceClass.Ordinary, 1, 500)]
    [InlineData(BalanceClass.Ordinary, 5, 5005)]
    public void Class_that_has_no_such_balance_is_refused(BalanceClass @class, double division, double capacity)
        => FluentActions.Invoking(() => Balance.OfClass(@class, G(division), G(capacity))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("A balance of class I*");

    /// <summary>OIML R 76-1:2006, table 6, at and just above the end of each row (class II from 5 000 e: the 1995 UK table misprints 20 000).</summary>
    [Theory]
    [InlineData(BalanceClass.Special, 0.001, 500, 50, 0.0005)]
    [InlineData(BalanceClass.Special, 0.001, 500, 50.001, 0.001)]
    [InlineData(BalanceClass.Special, 0.001, 500, 200.001, 0.0015)]
    [InlineData(BalanceClass.High, 0.01, 1000, 50, 0.005)]
    [InlineData(BalanceClass.High, 0.01, 1000, 50.01, 0.01)]
    [InlineData(BalanceClass.High, 0.01, 1000, 200.01, 0.015)]
    [InlineData(BalanceClass.Medium, 1, 6000, 500, 0.5)]
    [InlineData(BalanceClass.Medium, 1, 6000, 501, 1)]
    [InlineData(BalanceClass.Medium, 1, 6000, 2000, 1)]
    [InlineData(BalanceClass.Medium, 1, 6000, 2001, 1.5)]
    [InlineData(BalanceClass.Ordinary, 10, 5000, 500, 5)]
    [InlineData(BalanceClass.Ordinary, 10, 5000, 2010, 15)]
    public void Permissible_error_steps_with_the_load_and_doubles_in_service(BalanceClass @class, double division, double capacity, double load, double error)
    {
        Balance balance = Balance.OfClass(@class, G(division), G(capacity));

        balance.PermissibleError(G(load))!.Value.Grams.Should().BeApproximately(error, 1e-12);
        balance.PermissibleError(G(load), inService: true)!.Value.Grams.Should().BeApproximately(2 * error, 1e-12);
    }

    [Fact]
    public void Verification_interval_may_be_coarser_than_the_display()
    {
        Balance balance = Balance.OfClass(BalanceClass.High, G(0.01), G(1000), G(0.1));

        (balance.VerificationInterval.Grams, balance.MinimumLoad.Grams).Should().Be((0.1, 5));
        balance.PermissibleError(G(500))!.Value.Grams.Should().BeApproximately(0.05, 1e-12);
        FluentActions.Invoking(() => Balance.OfClass(BalanceClass.High, G(0.1), G(1000), G(0.01))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => balance.PermissibleError(G(1001))).Should().Throw<ArgumentOutOfRangeException>();
        Step(1).PermissibleError(G(500)).Should().BeNull();
    }

    /// <summary>2 × 0.41 d / t, as derived from USP chapter 41: 820 d for 0.10 %, 82 d for 1 %, 41 d for 2 %, 16.4 d for 5 %.</summary>
    [Theory]
    [InlineData(1, 0.1, 820)]
    [InlineData(0.001, 1, 0.082)]
    [InlineData(0.01, 1, 0.82)]
    [InlineData(0.1, 2, 4.1)]
    [InlineData(1, 1, 82)]
    [InlineData(1, 2, 41)]
    [InlineData(1, 5, 16.4)]
    public void Smallest_weight_by_repeatability(double division, double tolerance, double grams)
        => Step(division).SmallestWithin(tolerance, MinimumWeightRule.Repeatability).Grams.Should().BeApproximately(grams, 1e-12);

    /// <summary>The example of USP chapter 41: s = 0.15 mg, smallest weight 0.3 g at 0.10 %; below 0.41 d the floor counts.</summary>
    [Theory]
    [InlineData(0.00015, 0.3)]
    [InlineData(0.00001, 0.082)]
    public void Measured_repeatability_counts_if_it_is_above_the_floor(double s, double grams)
        => (Step(0.0001) with { Repeatability = G(s) }).SmallestWithin(0.1, MinimumWeightRule.Repeatability).Grams.Should().BeApproximately(grams, 1e-12);

    [Fact]
    public void Nothing_below_the_minimum_load_is_weighed()
        => (Step(0.1) with { MinimumLoad = G(5) }).SmallestWithin(5).Grams.Should().Be(5);

    [Fact]
    public void Impossible_balances_are_refused()
    {
        FluentActions.Invoking(() => Step(1) with { Capacity = G(0.5) }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Step(1) with { MinimumLoad = G(-1) }).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Step(1).SmallestWithin(5, (MinimumWeightRule)2)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Balance.OfClass((BalanceClass)4, G(1), G(1000))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Smallest_batch_counts_the_rounding_of_what_a_dose_is_taken_on()
    {
        // Of 100 g the salt is 10 g, the least that is within 5 %. The sugar, 10.5 g, shows as 11 g, and the base of 40.4 + 40.4 + 19.2 g as 99 g:
        // 11.1 % instead of 10.5 %, 5.8 % too much.
        Formula formula = Formula.Named("f").Base(b => b.Share(Pantry.Water, 40.4).Share(Pantry.PearJuice, 40.4).Share(Pantry.AppleJuice, 19.2))
            .Then("season", p => p.Add(Pantry.Sucrose, Dose.Percent(10.5).OfBase).Add(Pantry.Salt, Dose.Percent(10).OfBase)).Build();
        Mass each = G(100);

        formula.ScaleTo(Yield.OfBase(each)).WeighOn(Step(1)).Warnings.Should().NotBeEmpty("each mass is within 5 %, but not every dose");
        Mass smallest = Step(1).SmallestBatch(formula);
        smallest.Grams.Should().BeGreaterThan(each.Grams);
        formula.ScaleTo(Yield.OfBase(smallest)).WeighOn(Step(1)).Warnings.Should().BeEmpty();
    }

    [Fact]
    public void Smallest_batch_of_any_formula_has_no_warning()
        => Gen.Select(RandomFormulas.Possible, Gen.OneOf<double>(0.01, 0.1, 1), Gen.Double[1, 20]).Sample((formula, division, tolerance) =>
        {
            Mass smallest = Step(division).SmallestBatch(formula, tolerance);
            return !formula.ScaleTo(Yield.OfBase(smallest), Losses.None).WeighOn(Step(division), tolerance).Warnings.Any();
        });
}
