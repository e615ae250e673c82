using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Formulas;

/// <summary>Values made twice from the same content are equal and hash alike; a change of any part makes them differ.</summary>
public class ValueEqualityTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    public static TheoryData<string> Kinds => [.. s_pairs.Keys];

    private static readonly Dictionary<string, (Func<object> Make, object[] Others)> s_pairs = new()
    {
        ["Formula"] = (() => Mixes.TwoStage(), [Mixes.TwoStage(p => p.OfTotal), Mixes.TwoStage().WithName("x"), Mixes.TwoStage().WithProcess(new ProcessPlan { CastAt = Temperature.FromDegreesCelsius(60) }),
            Mixes.TwoStage().WithService(new ServicePlan { Frozen = true }), Mixes.TwoStage().WithExtensions(ExtensionData.Parse("{}"))]),
        ["FormulaLine"] = (() => Mixes.TwoStage().Line("agar"), [Mixes.TwoStage().Line("sucrose")]),
        ["Dose"] = (() => Dose.Percent(0.3).OfPreceding, [Dose.Percent(0.3).OfBase, Dose.Percent(0.31).OfPreceding]),
        ["DosePercent"] = (() => Dose.Percent(0.3), [Dose.Percent(0.4)]),
        ["DoseReference"] = (() => DoseReference.Line("agar"), [DoseReference.Line("salt"), DoseReference.Base]),
        ["Yield"] = (() => Yield.Portions(3, G(50)), [Yield.Portions(3, G(50), YieldBasis.Base), Yield.Finished(G(150)), Yield.Portions(4, G(50))]),
        ["Yield from stocks"] = (() => Yield.FromStocks(new Stock("a", G(1))), [Yield.FromStocks(new Stock("a", G(2)))]),
        ["Stock"] = (() => new Stock("a", G(1)), [new Stock("b", G(1))]),
        ["Loss"] = (() => Loss.Percent(5), [Loss.Of(G(5)), Loss.None]),
        ["Losses"] = (() => new Losses { Evaporation = Loss.Percent(5), ToppedUp = true }, [new Losses { Evaporation = Loss.Percent(5) }, Losses.None]),
        ["Balance"] = (() => Balance.WithDivision(G(0.1)), [Balance.WithDivision(G(0.2)), Balance.WithDivision(G(0.1)) with { Capacity = G(500) }, Balance.WithDivision(G(0.1)) with { MinimumLoad = G(2) }, Balance.WithDivision(G(0.1)) with { Repeatability = G(0.1) }]),
        ["Balance of a class"] = (() => Balance.OfClass(BalanceClass.Medium, G(1), G(5000)), [Balance.OfClass(BalanceClass.Medium, G(1), G(6000)), Balance.OfClass(BalanceClass.High, G(1), G(5000)), Balance.OfClass(BalanceClass.Medium, G(1), G(5000), G(2))]),
        ["StepWeighing"] = (() => new StepWeighing(LossStep.Transfer, G(100), G(95)), [new StepWeighing(LossStep.Trimming, G(100), G(95)), new StepWeighing(LossStep.Transfer, G(100), G(96))]),
        ["LearnedLosses"] = (() => LearnedLosses.From([new StepWeighing(LossStep.Transfer, G(100), G(95))]), [LearnedLosses.From([new StepWeighing(LossStep.Transfer, G(200), G(190))])]),
        ["WeighingSetup"] = (() => new WeighingSetup(Balance.WithDivision(G(1))) { Batches = 3 }, [new WeighingSetup(Balance.WithDivision(G(1))), new WeighingSetup(Balance.WithDivision(G(1))) { Batches = 3, TolerancePercent = 2 }, new WeighingSetup(Balance.WithDivision(G(1))) { Batches = 3, Rule = MinimumWeightRule.HalfDivision }]),
        ["BalanceReading"] = (() => Mixes.Simple().OfBase(1000).PlanWeighing(new WeighingSetup(Balance.WithDivision(G(0.1)))).Lines[1].Reading!, [Mixes.Simple().OfBase(2000).PlanWeighing(new WeighingSetup(Balance.WithDivision(G(0.1)))).Lines[1].Reading!]),
        ["BatchLine"] = (() => Mixes.Simple().OfBase(10).Lines[1], [Mixes.Simple().OfBase(11).Lines[1]]),
        ["WeighLine"] = (() => Mixes.Simple().OfBase(10).WeighOn(Balance.WithDivision(G(1))).Lines[1], [Mixes.Simple().OfBase(10).WeighOn(Balance.WithDivision(G(0.1))).Lines[0]]),
        ["ProcessPlan"] = (() => new ProcessPlan { Carriers = ValueList<string>.From(["a"]), Altitude = Length.FromMeters(9), Mould = new MouldPlan("m", Volume.FromMilliliters(9)) },
            [new ProcessPlan { Carriers = ValueList<string>.From(["b"]) }, ProcessPlan.None]),
        ["ServicePlan"] = (() => new ServicePlan { Texture = Texture.Soft, Portion = G(80) }, [new ServicePlan { Texture = Texture.Firm, Portion = G(80) }, ServicePlan.None]),
        ["CoolingStage"] = (() => new CoolingStage("bench", Temperature.FromDegreesCelsius(20), Duration.FromMinutes(5)), [new CoolingStage("bench", Temperature.FromDegreesCelsius(20))]),
        ["MouldPlan"] = (() => new MouldPlan("m"), [new MouldPlan("m", Volume.FromLiters(1))]),
        ["LineDetails"] = (() => new LineDetails { Label = "a", Measured = new Measurements { Ph = 4 } }, [new LineDetails { Label = "a" }, LineDetails.None]),
        ["Ingredient"] = (() => Ingredient.Own("own", "Own").WithPh(4).WithBrix(12).WithDensity(Density.FromKilogramsPerCubicMeter(1050)).WithAllergens(Allergen.Milk, Allergen.Eggs),
            [Ingredient.Own("own", "Own"), Ingredient.Own("own", "Other").WithPh(4), Ingredient.Own("own", "Own").WithPh(4.1)]),
        ["Built-in ingredient"] = (() => Hydrocolloids.Agar, [Hydrocolloids.Agar.WithGrade(new Grade(GradeScale.GelStrength, 900)), Hydrocolloids.Agar.As("agar", "Agar")]),
        ["Grade"] = (() => new Grade(GradeScale.Bloom, 200), [new Grade(GradeScale.Sag, 200)]),
        ["Composition"] = (() => Composition.Per100Grams(water: 90, sugars: 9), [Composition.Per100Grams(water: 90)]),
        ["ExtensionData"] = (() => ExtensionData.Parse("{\"a\": 1, \"b\": [2]}"), [ExtensionData.Parse("{\"a\": 1, \"b\": [3]}"), ExtensionData.Parse("{}")]),
        ["Citation"] = (() => new Citation(new Source("s", "Title", SourceKind.Paper), "p. 1"), [new Citation(new Source("s", "Title", SourceKind.Paper), "p. 2"), Citation.CommonPractice]),
        ["Cited"] = (() => new Cited<double>(1, Citation.Measured), [new Cited<double>(2, Citation.Measured), new Cited<double>(1, Citation.CommonPractice)]),
        ["NumberRange"] = (() => new NumberRange(1, 2), [new NumberRange(1, null), default(NumberRange)]),
        ["TemperatureRange"] = (() => new TemperatureRange(Temperature.FromDegreesCelsius(1), null), [default(TemperatureRange)]),
        ["DurationRange"] = (() => new DurationRange(Duration.FromMinutes(1), Duration.FromMinutes(2)), [new DurationRange(Duration.FromMinutes(1), null)]),
        ["ValueList"] = (() => ValueList<string>.From(["a", "b"]), [ValueList<string>.From(["b", "a"]), ValueList<string>.From(["a"]), ValueList<string>.Empty]),
        ["Derivation"] = (() => Mixes.TwoStage().Explain("agar"), [Mixes.TwoStage().Explain("sucrose")]),
        ["FormulaProblem"] = (() => Problem(60), [Problem(61)]),
    };

    [Theory, MemberData(nameof(Kinds))]
    public void Same_content_is_equal_and_hashes_alike(string kind)
    {
        (Func<object> make, object[] others) = s_pairs[kind];
        object one = make(), two = make();

        one.Equals(two).Should().BeTrue();
        two.Equals(one).Should().BeTrue();
        one.GetHashCode().Should().Be(two.GetHashCode());
        one.ToString()!.Should().Be(two.ToString()).And.NotBeNullOrEmpty();
        one.Equals("text").Should().BeFalse();
        one.Equals((object?)null).Should().BeFalse();
        foreach (object other in others)
        {
            one!.Equals(other).Should().BeFalse();
            other.Equals(one).Should().BeFalse();
        }
    }

    [Fact]
    public void Member_order_of_extension_data_does_not_count()
        => ExtensionData.Parse("{\"a\":1,\"b\":2}").Should().Be(ExtensionData.Parse("{\"b\":2,\"a\":1}"));

    [Fact]
    public void Same_mass_in_another_unit_is_equal()
    {
        Yield.OfBase(Mass.FromKilograms(1)).Should().Be(Yield.OfBase(G(1000)));
        new Stock("a", Mass.FromMilligrams(1500)).Should().Be(new Stock("a", G(1.5)));
    }

    [Fact]
    public void Minus_zero_is_zero()
    {
        Dose.Percent(-0.0).OfBase.ToString().Should().Be("0 % of the base");
        Loss.Percent(-0.0).Should().Be(Loss.None);
        new NumberRange(-0.0, null).ToString().Should().Be("0 or more");
    }

    [Fact]
    public void Empty_list_and_default_list_are_one()
    {
        ValueList<int> none = ValueList<int>.From([]);

        (none == default).Should().BeTrue();
        (none != ValueList<int>.From([1])).Should().BeTrue();
        (none.Count, none.IsEmpty, none.ToString()).Should().Be((0, true, ""));
        none.ToImmutableArray().Should().BeEmpty();
        none.Should().BeEmpty();
        FluentActions.Invoking(() => ValueList<int>.From([1])[1]).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => ValueList<int>.From([1])[-1]).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void List_copies_what_it_is_made_from()
    {
        int[] items = [1, 2];
        ValueList<int> list = ValueList<int>.From(items);
        items[0] = 9;

        list.Should().Equal(1, 2);
    }

    private static FormulaProblem Problem(double share)
    {
        Formula.Named("f").Base(b => b.Share(Pantry.Water, share)).TryBuild(out _, out ValueList<FormulaProblem> problems);
        return problems[0];
    }
}
