using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Formulas;

/// <summary>One test for each problem id of building a formula and of expressing a dose.</summary>
public class FormulaProblemTests
{
    private static FormulaBuilder Water => Formula.Named("f").Base(b => b.Share(Pantry.Water, 100));

    private static FormulaBuilder WaterAnd(Ingredient ingredient, Dose dose) => Water.Then("gel", p => p.Add(ingredient, dose));

    private static FormulaProblem Only(FormulaBuilder builder)
    {
        builder.TryBuild(out Formula? formula, out ValueList<FormulaProblem> problems).Should().BeFalse();
        formula.Should().BeNull();
        return problems.Should().ContainSingle().Subject;
    }

    private static void Is(FormulaProblem problem, string id, string pointer, string message, string? line = null, double? value = null, double? limit = null)
    {
        problem.Message.Should().Be(message);
        (problem.Id, problem.Pointer, problem.Line).Should().Be((id, pointer, line));
        problem.Value.Should().Be(value);
        problem.Limit.Should().Be(limit);
        problem.ToString().Should().Be($"{pointer}: {message}");
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \t")]
    public void Formula_without_a_name(string name)
        => Is(Only(Water.Named(name)), "name-missing", "/name", "The formula has no name.");

    [Fact]
    public void Same_ingredient_in_two_lines()
        => Is(Only(WaterAnd(Pantry.Water, Dose.Percent(5).OfBase)), "line-repeated", "/phases/0/add/0",
            "'water' stands in two lines (/base/0 and here): put them together, or give one of them a label of its own.", "water");

    [Fact]
    public void Formula_without_a_base()
        => Is(Only(Formula.Named("f")), "base-empty", "/base", "The base is empty: it needs at least one part.");

    [Fact]
    public void Base_that_weighs_nothing()
        => Is(Only(Formula.Named("f").Base(b => b.Weigh(Pantry.Water, Mass.Zero))), "base-empty", "/base",
            "The base weighs nothing: its parts must weigh more than 0 g together.", null, 0, 0);

    [Fact]
    public void Base_of_shares_and_weights()
        => Is(Only(Formula.Named("f").Base(b => b.Share(Pantry.Water, 100).Weigh(Pantry.PearJuice, Mass.FromGrams(1)))), "base-mixed", "/base",
            "The base mixes shares and weights: state all its parts in one of the two.");

    [Theory]
    [InlineData(-1, "-1", 0)]
    [InlineData(101, "101", 100)]
    [InlineData(double.NaN, "NaN", 100)]
    [InlineData(double.PositiveInfinity, "Infinity", 100)]
    public void Share_that_cannot_be(double percent, string text, double limit)
        => Is(Only(Formula.Named("f").Base(b => b.Share(Pantry.Water, percent))), "share-invalid", "/base/0/percent",
            $"The share of water is {text} %; it must be between 0 % and 100 % of the base.", "water", percent, limit);

    [Fact]
    public void Shares_that_miss_100_percent()
        => Is(Only(Formula.Named("f").Base(b => b.Share(Pantry.Water, 60).Share(Pantry.PearJuice, 39.5))), "base-shares", "/base",
            "The shares of the base add up to 99.5 %; they must add up to 100 %.", null, 99.5, 100);

    [Fact]
    public void Shares_may_miss_100_percent_by_the_noise_of_adding()
    {
        Formula formula = Formula.Named("f")
            .Base(b => b.Share(Pantry.Water, 100.0 / 3).Share(Pantry.PearJuice, 100.0 / 3).Share(Pantry.AppleJuice, 33.33333333))
            .Build();

        formula.OfBase(900).Lines.Sum(l => l.Mass.Grams).Should().BeApproximately(900, 1e-10);
    }

    [Fact]
    public void Phase_without_a_name()
        => Is(Only(Water.Then(" ", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfBase))), "phase-name", "/phases/0/name", "Phase 1 has no name.");

    [Fact]
    public void Phase_name_used_twice()
        => Is(Only(WaterAnd(Hydrocolloids.Agar, Dose.Percent(1).OfBase).Then("gel", p => p.Add(Pantry.Salt, Dose.Percent(1).OfBase))),
            "phase-name", "/phases/1/name", "The phase name 'gel' is used twice.");

    [Fact]
    public void Phase_that_adds_nothing()
        => Is(Only(Water.Then("gel", _ => { })), "phase-empty", "/phases/0/add", "The phase 'gel' adds nothing.");

    [Fact]
    public void Carrier_that_is_not_a_line()
        => Is(Only(Water.Process(new ProcessPlan { Carriers = ValueList<string>.From(["water", "milk"]) })), "carrier-unknown", "/process/carriers/1",
            "The carrier 'milk' is not a line of the formula.", "milk");

    [Fact]
    public void Carrier_that_is_pieces()
        => Is(Only(Formula.Named("f").Base(b => b.Share(Pantry.Water, 50).Share(Pantry.Pear, 50, l => l.Pieces()))
                .Process(new ProcessPlan { Carriers = ValueList<string>.From(["pear"]) })),
            "carrier-pieces", "/process/carriers/0", "The carrier 'pear' is pieces; only a liquid can carry a hydrocolloid.", "pear");

    [Theory]
    [InlineData(-0.5, "-0.5")]
    [InlineData(double.NaN, "NaN")]
    [InlineData(double.NegativeInfinity, "-Infinity")]
    public void Dose_that_cannot_be(double percent, string text)
        => Is(Only(WaterAnd(Hydrocolloids.Agar, Dose.Percent(percent).OfPreceding)), "dose-invalid", "/phases/0/add/0/percent",
            $"The dose of agar is {text} % of everything so far; it must be 0 % or more.", "agar", percent, 0);

    [Fact]
    public void Dose_of_the_whole_total()
        => Is(Only(WaterAnd(Hydrocolloids.Agar, Dose.Percent(100).OfTotal)), "dose-too-large", "/phases/0/add/0/percent",
            "The dose of agar is 100 % of the total; it must stay below 100 %.", "agar", 100, 100);

    [Fact]
    public void Dose_beyond_the_bound()
        => Is(Only(WaterAnd(Hydrocolloids.Agar, Dose.Percent(2e6).OfBase)), "dose-too-large", "/phases/0/add/0/percent",
            "The dose of agar is 2000000 % of the base; at most 1000000 % are possible.", "agar", 2e6, 1e6);

    [Fact]
    public void Weight_beyond_the_bound_of_a_dose()
        => Is(Only(Formula.Named("f").Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(1)))
                .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(20_000), DoseReference.Base))), "dose-too-large", "/phases/0/add/0",
            "The dose of agar is 2000000 % of the base; at most 1000000 % are possible.", "agar", 2e6, 1e6);

    [Fact]
    public void Doses_that_claim_more_than_the_total()
        => Is(Only(Water.Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(50).OfTotal).Add(Pantry.Sucrose, Dose.Percent(75).OfTotal))),
            "total-shares", "/phases", "The lines dosed on the total claim 125 % of it; they must stay below 100 %: agar 50 %, sucrose 75 %.", null, 125, 100);

    [Fact]
    public void Total_beyond_the_bound()
        => Is(Only(Water
                .Then("1", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1e6).OfBase))
                .Then("2", p => p.Add(Pantry.Sucrose, Dose.Percent(1e6).Of(Hydrocolloids.Agar)))
                .Then("3", p => p.Add(Pantry.Salt, Dose.Percent(1e4).Of(Pantry.Sucrose)))),
            "total-too-large", "/phases", "All lines together are 10100010001 times the base; at most 1000000000 times are possible.", null, 10_100_010_001, 1e9);

    [Fact]
    public void Formula_of_pieces_only()
        => Is(Only(Formula.Named("f").Base(b => b.Share(Pantry.Pear, 100, l => l.Pieces()))), "mix-empty", "/base",
            "There is no mix that could gel: what is not pieces weighs 0 times the base; at least 1E-09 times is needed.", null, 0, 1e-9);

    [Fact]
    public void Dose_of_water_that_is_not_known()
        => Is(Only(Formula.Named("f").Base(b => b.Share(Mixes.Dry("mystery"), 100)).Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfWater))),
            "water-unknown", "/phases/0/add/0/of", "agar is dosed on the water so far, but the water content of mystery is unknown.", "agar");

    [Fact]
    public void Dose_of_water_where_there_is_none()
        => Is(Only(Formula.Named("f").Base(b => b.Share(Mixes.Dry("oil").WithComposition(Composition.Per100Grams(water: 0, fat: 100)), 100))
                .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfWater))),
            "reference-empty", "/phases/0/add/0/of", "agar is dosed on the water so far, but there is none.", "agar", 0, 0);

    [Fact]
    public void Weight_as_a_percentage_of_nothing()
        => Is(Only(Formula.Named("f").Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(100)))
                .Then("gel", p => p.Weigh(Pantry.Salt, Mass.Zero, DoseReference.Base).Weigh(Hydrocolloids.Agar, Mass.FromGrams(1), DoseReference.Line("salt")))),
            "reference-empty", "/phases/0/add/1/of", "agar is weighed as a percentage of salt, which weighs nothing.", "agar", 0, 0);

    [Fact]
    public void Weight_beside_a_base_of_shares()
        => Is(Only(Water.Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(3), DoseReference.Base))),
            "weight-without-base", "/phases/0/add/0", "agar is given by weight, but the base is not.", "agar", 3);

    [Fact]
    public void Dose_of_a_line_that_is_not_there()
        => Is(Only(WaterAnd(Hydrocolloids.Agar, Dose.Percent(1).OfLine("milk"))), "reference-unknown", "/phases/0/add/0/of",
            "agar is dosed on 'milk', which is not a line of the formula.", "agar");

    [Fact]
    public void Dose_of_a_later_line()
        => Is(Only(Water.Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).Of(Pantry.Salt)).Add(Pantry.Salt, Dose.Percent(1).OfBase))),
            "reference-later", "/phases/0/add/0/of", "agar is dosed on 'salt', which comes later; it can only be dosed on an earlier line.", "agar");

    [Fact]
    public void Dose_of_the_line_itself()
        => Is(Only(WaterAnd(Hydrocolloids.Agar, Dose.Percent(1).Of(Hydrocolloids.Agar))), "reference-later", "/phases/0/add/0/of",
            "agar is dosed on itself; it can only be dosed on an earlier line.", "agar");

    [Fact]
    public void All_problems_are_reported_together()
    {
        FormulaBuilder builder = Formula.Named("")
            .Base(b => b.Share(Pantry.Water, 120).Share(Pantry.Water, -5))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(-1).OfBase).Add(Pantry.Salt, Dose.Percent(1).OfLine("milk")))
            .Then("gel", _ => { })
            .Process(new ProcessPlan { Carriers = ValueList<string>.From(["cream"]) });
        builder.TryBuild(out _, out ValueList<FormulaProblem> problems).Should().BeFalse();

        problems.Select(p => p.Id).Should().Equal(
            "name-missing", "line-repeated", "share-invalid", "share-invalid", "phase-name", "phase-empty", "carrier-unknown", "dose-invalid", "reference-unknown");
        builder.Invoking(b => b.Build()).Should().Throw<FormulaException>().Which.Problems.Should().Equal(problems);
    }

    [Fact]
    public void Exception_says_all_problems_with_their_places()
        => Formula.Named("pear jelly")
            .Base(b => b.Share(Pantry.PearJuice, 90))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(-0.3).OfTotal))
            .Invoking(b => b.Build())
            .Should().Throw<FormulaException>().Which.Message.Should().Be(
                "The formula 'pear jelly' cannot be:\n"
                + "/base: The shares of the base add up to 90 %; they must add up to 100 %.\n"
                + "/phases/0/add/0/percent: The dose of agar is -0.3 % of the total; it must be 0 % or more.");

    [Fact]
    public void Expressing_on_a_line_that_is_not_there()
        => IsOfExpress("agar", DoseReference.Line("milk"), "reference-unknown", "/phases/1/add/0", "'milk' is not a line of the formula.");

    [Theory]
    [InlineData("locust-bean-gum")]
    [InlineData("agar")]
    public void Expressing_on_a_line_that_does_not_come_before(string other)
        => IsOfExpress("agar", DoseReference.Line(other), "reference-later", "/phases/1/add/0", $"'{other}' does not come before agar.");

    [Fact]
    public void Expressing_a_part_of_the_base_on_what_precedes()
    {
        IsOfExpress("pear-juice", DoseReference.Preceding, "reference-empty", "/base/0", "pear-juice is part of the base: nothing comes before it.", 0, 0);
        IsOfExpress("pear-juice", DoseReference.Water, "reference-empty", "/base/0", "pear-juice is part of the base: nothing comes before it.", 0, 0);
    }

    [Fact]
    public void Expressing_on_a_line_that_weighs_nothing()
    {
        Formula formula = Water.Then("gel", p => p.Add(Pantry.Salt, Dose.Percent(0).OfBase).Add(Hydrocolloids.Agar, Dose.Percent(1).OfBase)).Build();

        FormulaProblem problem = formula.Invoking(f => f.Express("agar", DoseReference.Line("salt"))).Should().Throw<FormulaException>().Which.Problems.Single();
        Is(problem, "reference-empty", "/phases/0/add/1", "salt weighs nothing, and nothing has no percentages.", "agar", 0, 0);
    }

    [Fact]
    public void Expressing_on_a_line_so_small_that_the_percentage_overflows()
    {
        Formula formula = Water.Then("gel", p => p.Add(Pantry.Salt, Dose.Percent(1e-310).OfBase).Add(Hydrocolloids.Agar, Dose.Percent(1).OfBase)).Build();

        formula.Invoking(f => f.Express("agar", DoseReference.Line("salt"))).Should().Throw<FormulaException>()
            .Which.Problems.Single().Id.Should().Be("reference-empty");
    }

    [Fact]
    public void Expressing_on_water_that_is_not_known()
    {
        Formula formula = Formula.Named("f").Base(b => b.Share(Mixes.Dry("mystery"), 100))
            .Then("gel", p => p.Add(Hydrocolloids.Agar, Dose.Percent(1).OfBase)).Build();

        FormulaProblem problem = formula.Invoking(f => f.Express("agar", DoseReference.Water)).Should().Throw<FormulaException>().Which.Problems.Single();
        Is(problem, "water-unknown", "/phases/0/add/0", "The water content of a line before it is unknown.", "agar");
    }

    private static void IsOfExpress(string label, DoseReference reference, string id, string pointer, string message, double? value = null, double? limit = null)
    {
        FormulaException exception = Mixes.TwoStage().Invoking(f => f.Express(label, reference)).Should().Throw<FormulaException>().Which;
        Is(exception.Problems.Single(), id, pointer, message, label, value, limit);
        exception.Message.Should().StartWith($"The dose of '{label}' on {reference} cannot be:\n");
    }
}
