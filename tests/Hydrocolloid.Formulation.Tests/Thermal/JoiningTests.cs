using CsCheck;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Thermal;

public class JoiningTests
{
    private static readonly FoodShares s_juice = new(88, carbohydratePercent: 12), s_fruit = new(85, proteinPercent: 0.5, carbohydratePercent: 13, fibrePercent: 1.5), s_cream = new(60, 2, 35, 3);

    private static readonly Gen<FoodShares> s_shares = Gen.Int[0, 2].Select(i => new[] { s_juice, s_fruit, s_cream }[i]);

    private static readonly Gen<JoiningBody> s_foods = Gen.Select(Gen.Double[1, 5000], Gen.Double[0, 120], s_shares).Select((g, t, f) => Food(g, t, f));

    private static readonly Gen<JoiningBody[]> s_bodies = s_foods.Array[1, 5];

    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static JoiningBody Food(double grams, double celsius, FoodShares shares) => JoiningBody.Food(Mass.FromGrams(grams), At(celsius), shares);

    private static JoiningBody Bowl(double grams, double celsius) => JoiningBody.OfSpecificHeat(Mass.FromGrams(grams), At(celsius), VesselMaterials.StainlessSteel.Value);

    private static double Kilojoules(JoiningBody body, FoodShares shares, Temperature to)
        => body.Mass.Kilograms * FoodProperties.HeatBetween(shares, body.Temperature, to).Value.KilojoulesPerKilogram;

    [Fact]
    public void Result_lies_between_the_extremes()
        => s_bodies.Sample(bodies => Joining.Of(bodies).Temperature.DegreesCelsius is var t
            && t >= bodies.Min(b => b.Temperature.DegreesCelsius) - 1e-9 && t <= bodies.Max(b => b.Temperature.DegreesCelsius) + 1e-9);

    /// <summary>What the cold ones take up, the hot ones and the loss account for: by the enthalpies of the food properties.</summary>
    [Fact]
    public void Heat_is_conserved()
        => Gen.Select(Gen.Double[1, 5000], Gen.Double[40, 120], Gen.Double[1, 5000], Gen.Double[0, 40], Gen.Double[0, 1]).Sample((sol, hot, pieces, cold, part) =>
        {
            JoiningBody a = Food(sol, hot, s_juice), b = Food(pieces, cold, s_fruit), bowl = Bowl(800, 20);
            double lost = part * 0.3 * sol * 4 * hot / 1000;
            JoinedMix mix = Joining.Of([a, b, bowl], HeatLoss.Of(Energy.FromKilojoules(lost)));
            double taken = Kilojoules(a, s_juice, mix.Temperature) + Kilojoules(b, s_fruit, mix.Temperature) + (0.8 * 0.46 * (mix.Temperature.DegreesCelsius - 20));
            return Math.Abs(taken + lost) < 1e-6 * (sol + pieces);
        });

    [Fact]
    public void Loss_at_a_rate_is_the_heat_that_left()
        => Gen.Select(s_bodies, Gen.Double[0.1, 20], Gen.Double[-10, 60], Gen.Double[1, 3600]).Sample((bodies, rate, air, seconds) =>
        {
            JoinedMix without = Joining.Of(bodies), with = Joining.Of(bodies, HeatLoss.AtRate(rate, At(air), Duration.FromSeconds(seconds)));
            double t0 = without.Temperature.DegreesCelsius, t1 = with.Temperature.DegreesCelsius;
            (t1 >= Math.Min(t0, air) - 1e-9 && t1 <= Math.Max(t0, air) + 1e-9).Should().BeTrue("it goes towards the surroundings");
            Joining.Of(bodies, HeatLoss.Of(Energy.FromJoules(Math.Max(0, with.HeatLost.Joules)))).Temperature.DegreesCelsius.Should().BeApproximately(Math.Min(t0, t1), 1e-6 + Math.Max(0, t1 - t0));
            with.IsEstimate.Should().BeTrue();
        });

    [Fact]
    public void Time_to_cool_is_the_time_after_which_it_is_there()
        => Gen.Select(s_bodies, Gen.Double[0.1, 20], Gen.Double[-10, 25], Gen.Double[60, 7200]).Where((bodies, _, air, _) => Joining.Of(bodies).Temperature.DegreesCelsius > air + 5).Sample((bodies, rate, air, seconds) =>
        {
            JoinedMix warm = Joining.Of(bodies), cooled = Joining.Of(bodies, HeatLoss.AtRate(rate, At(air), Duration.FromSeconds(seconds)));
            return cooled.Temperature.DegreesCelsius < air + 1e-3
                || Math.Abs(warm.TimeToCool(cooled.Temperature, rate, At(air))!.Value.Seconds - seconds) < 1e-4 * seconds;
        });

    /// <summary>By hand: 1 kg of 4 kJ/(kg·K) from 80 to 40 °C at 20 °C and 2 W/K takes 4000/2·ln(60/20) = 2197 s.</summary>
    [Fact]
    public void Newtons_law_by_hand()
    {
        JoinedMix mix = Joining.Of([JoiningBody.OfSpecificHeat(Mass.FromKilograms(1), At(80), SpecificEntropy.FromKilojoulesPerKilogramKelvin(4))]);

        mix.TimeToCool(At(40), 2, At(20))!.Value.Seconds.Should().BeApproximately(2000 * Math.Log(3), 1e-6);
        mix.TimeToCool(At(90), 2, At(20))!.Value.Seconds.Should().Be(0);
        mix.TimeToCool(At(20), 2, At(20)).Should().BeNull("it never gets colder than the room");
        mix.TimeToCool(At(40), 0, At(20)).Should().BeNull();
    }

    [Fact]
    public void Temperature_needed_is_the_inverse_of_joining()
        => Gen.Select(s_foods, s_bodies, Gen.Double[0.01, 5], Gen.Double[0, 600], Gen.Double[1, 95]).Sample((body, others, rate, seconds, own) =>
        {
            var loss = HeatLoss.AtRate(rate, At(20), Duration.FromSeconds(seconds));
            Temperature target = Joining.Of([.. others, body.At(At(own))], loss).Temperature;
            NeededTemperature needed = Joining.TemperatureNeeded(body, others, target, loss);
            needed.Outcome.Should().Be(NeededOutcome.Possible);
            // A small body among large ones moves the mix little, so its own temperature is known as much less well as its heat is smaller.
            double part = body.Mass.Grams / (body.Mass.Grams + others.Sum(o => o.Mass.Grams));
            needed.Temperature.DegreesCelsius.Should().BeApproximately(own, 1e-8 / part + (1e-7 * Math.Exp(rate * seconds / 3)));
            needed.Mix.Temperature.DegreesCelsius.Should().BeApproximately(target.DegreesCelsius, 1e-6);
        });

    [Fact]
    public void Cold_share_is_the_inverse_of_joining()
        => Gen.Select(s_foods.Where(f => f.Mass.Grams > 100), Gen.Double[70, 100], Gen.Double[0, 30], Gen.Double[0.02, 0.98]).Sample((pieces, hotCelsius, coldCelsius, share) =>
        {
            JoiningBody hot = Food(1000, hotCelsius, s_juice), cold = Food(1000, coldCelsius, s_juice);
            Temperature target = Joining.Of([hot.OfMass(Mass.FromGrams(2000 * (1 - share))), cold.OfMass(Mass.FromGrams(2000 * share)), pieces]).Temperature;
            ColdShare found = Joining.LargestColdShare(hot, cold, [pieces], target);
            return found.Outcome == ColdShareOutcome.UpToShare && Math.Abs(found.ColdPercent - (100 * share)) < 1e-5;
        });

    [Fact]
    public void Impossible_targets_say_why()
    {
        JoiningBody sol = Food(200, 80, s_juice), pieces = Food(800, 5, s_fruit);

        NeededTemperature hot = Joining.TemperatureNeeded(sol, [pieces], At(45), boilsAt: At(93));
        NeededTemperature cold = Joining.TemperatureNeeded(pieces.OfMass(Mass.FromGrams(10)), [sol], At(45));
        ColdShare none = Joining.LargestColdShare(sol, sol.At(At(5)), [pieces], At(45));
        ColdShare all = Joining.LargestColdShare(sol.OfMass(Mass.FromGrams(50)), sol.OfMass(Mass.FromGrams(50)).At(At(5)), [pieces.At(At(70))], At(45));

        hot.Outcome.Should().Be(NeededOutcome.NeedsAboveBoiling);
        hot.ToString().Should().StartWith("Not even at 93.0 °C, the boil, does the mix reach 45.0 °C");
        cold.Outcome.Should().Be(NeededOutcome.NeedsBelowFreezing);
        cold.ToString().Should().StartWith("Even at 0.0 °C the mix stays above 45.0 °C");
        none.Should().Match<ColdShare>(s => s.Outcome == ColdShareOutcome.NotEnoughHeat && s.ColdPercent == 0);
        all.Should().Match<ColdShare>(s => s.Outcome == ColdShareOutcome.All && s.ColdPercent == 100);
        new[] { hot.Mix, cold.Mix, none.Mix, all.Mix }.Should().OnlyContain(m => m.Temperature.DegreesCelsius > 0 && m.Temperature.DegreesCelsius < 100);
    }

    /// <summary>Common practice, no source: pieces are warmed to about 38 °C before an agar sol, which sets at 32–43 °C, is poured over as much of them.</summary>
    [Fact]
    public void Pieces_warmed_to_38_degrees_keep_an_agar_sol_fluid_and_cold_ones_do_not()
    {
        JoiningBody sol = Food(500, 75, s_juice), pieces = Food(500, 5, s_fruit);
        Temperature setting = At(40);
        var margin = TemperatureDelta.FromKelvins(5);

        Joining.Of([sol, pieces]).Against(setting, margin).SetsTooEarly.Should().BeTrue();
        Joining.Of([sol, pieces.At(At(38))]).Against(setting, margin).SetsTooEarly.Should().BeFalse();
        Joining.TemperatureNeeded(pieces, [sol], At(45)).Temperature.DegreesCelsius.Should().BeInRange(5, 38);
    }

    /// <summary>mix-water-on-ice: 10 g of water on 1.2 kg of ice at -15 °C freezes, which is not modelled, and the result says so.</summary>
    [Fact]
    public void Mix_that_would_freeze_is_marked_out_of_range()
    {
        JoinedMix mix = Joining.Of([Food(10, 20, new FoodShares(100)), JoiningBody.Ice(Mass.FromKilograms(1.2), At(-15))]);

        mix.InRange.Should().BeFalse();
        mix.Outside!.Quantity.Should().Be("temperature");
        Joining.Of([Food(1000, 60, s_juice), JoiningBody.Ice(Mass.FromGrams(100), At(-18))]).InRange.Should().BeTrue();
    }

    [Fact]
    public void Misuse_is_refused()
    {
        FluentActions.Invoking(() => Joining.Of([])).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Joining.Of([default])).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Joining.Of(null!)).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => Food(10, -1, s_juice)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("temperature");
        FluentActions.Invoking(() => JoiningBody.Ice(Mass.FromGrams(10), At(1))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => JoiningBody.OfSpecificHeat(Mass.FromGrams(10), At(20), SpecificEntropy.FromJoulesPerKilogramKelvin(0))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Joining.Of([Food(10, 20, s_juice)], HeatLoss.Of(Energy.FromMegajoules(1)))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("loss");
        FluentActions.Invoking(() => HeatLoss.AtRate(double.NaN, At(20), Duration.FromSeconds(1))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Joining.LargestColdShare(Food(10, 20, s_juice), Food(10, 20, s_juice), [], At(10))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => Joining.Of([Food(10, 20, s_juice)]).Against(At(40), TemperatureDelta.FromKelvins(-1))).Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void Heat_between_two_temperatures_is_the_specific_heat_summed_up()
        => Gen.Select(s_shares, Gen.Double[0, 150], Gen.Double[0, 150]).Sample((food, from, to) =>
        {
            // Simpson's rule is exact for the quadratic specific heat.
            double Heat(double t) => FoodProperties.SpecificHeatOf(food, At(t)).Value.KilojoulesPerKilogramKelvin;
            double sum = (to - from) / 6 * (Heat(from) + (4 * Heat((from + to) / 2)) + Heat(to));
            return Math.Abs(FoodProperties.HeatBetween(food, At(from), At(to)).Value.KilojoulesPerKilogram - sum) < 1e-8;
        });

    [Fact]
    public void Heat_between_says_when_either_end_is_out_of_range()
    {
        FoodProperties.HeatBetween(s_juice, At(-1), At(50)).InRange.Should().BeFalse();
        FoodProperties.HeatBetween(s_juice, At(50), At(151)).InRange.Should().BeFalse();
        FoodProperties.HeatBetween(s_juice, At(50), At(150)).InRange.Should().BeTrue();
    }
}
