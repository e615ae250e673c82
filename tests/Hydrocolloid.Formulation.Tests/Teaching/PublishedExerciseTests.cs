using Hydrocolloid.Formulation.Teaching;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Tests.Teaching;

/// <summary>Worked examples that were printed, posed as exercises: the printed answer is the one that is marked right, to the digits printed.</summary>
public class PublishedExerciseTests
{
    /// <summary>Kind, level, the numbers fixed, the printed answer and its tolerance in the unit of the answer, and where it was printed (read in transcription unless marked recalled).</summary>
    public static TheoryData<string, string, int, string, double, double> Printed => new()
    {
        // mix-al-water: a university's solved calorimetry problem (justaaa.com, physics 334487): 0.297 kg of water and 0.153 kg of aluminium, c = 4186 and 900 J/(kg·K).
        { "mix-al-water", "joining", 2, "specific-heat-hot 0.9; specific-heat-cold 4.186; hot-mass 153; cold-mass 297; hot-temperature 85.1; cold-temperature 23.5", 29.64, 0.01 },
        // mix-steel-oil: Smith, Van Ness and Abbott, Introduction to Chemical Engineering Thermodynamics (2001), example 5.4: 40 kg of steel at 450 °C in 150 kg of oil at 25 °C, c = 0.5 and 2.5.
        { "mix-steel-oil", "joining", 2, "specific-heat-hot 0.5; specific-heat-cold 2.5; hot-mass 40; cold-mass 150; hot-temperature 450; cold-temperature 25", 46.52, 0.01 },
        // mix-hot-pan (recalled): OpenStax, University Physics, volume 2, section 1.4: 0.5 kg of aluminium pan at 150 °C, 0.25 kg of water at 20 °C.
        { "mix-hot-pan", "joining", 2, "specific-heat-hot 0.9; specific-heat-cold 4.186; hot-mass 500; cold-mass 250; hot-temperature 150; cold-temperature 20", 59.1, 0.05 },
        // newton-50-40: Brijlal and Subrahmanyam, Heat and Thermodynamics (2001), chapter 3: 70 to 50 °C in 4 min at 25 °C, then 50 to 40 °C.
        { "newton-50-40", "cooling-time", 1, "surroundings 25; first-reading 70; second-reading 50; minutes-between 4; target 40", 3.476, 0.001 },
        // boil-5000ft, boil-10000ft: Wikipedia, High-altitude cooking (2023), table by courtesy of NOAA; the table rounds feet and degrees, hence 0.25 K.
        { "boil-5000ft", "boiling", 1, "altitude 1524", 95, 0.25 },
        { "boil-10000ft", "boiling", 1, "altitude 3048", 89.8, 0.25 },
        // boil-2000ft to boil-15000ft: the same table.
        { "boil-2000ft", "boiling", 1, "altitude 610", 98, 0.25 },
        { "boil-6000ft", "boiling", 1, "altitude 1829", 94, 0.25 },
        { "boil-8000ft", "boiling", 1, "altitude 2438", 91.9, 0.25 },
        { "boil-12000ft", "boiling", 1, "altitude 3658", 87.6, 0.25 },
        { "boil-15000ft", "boiling", 1, "altitude 4572", 84.5, 0.25 },
        // PC-029: a cosmetics maker's blog (2013): 0.5 % on a balance of 0.1 g, within 5 %, needs a batch of 200 g.
        { "PC-029", "balance", 2, "division 0.1; dose 0.5; tolerance 5", 200, 1 },
        // PC-017: ourfood.nl, agar process page (in Dutch): it sets 500 g of liquid with 4.5 g of agar and calls it 0.9 %.
        { "PC-017", "dose", 1, "base-mass 500; dose 0.9", 4.5, 0.05 },
        // PC-017 the other way: 4.5 g of agar in 500 g of liquid is printed as 0.9 %.
        { "PC-017-percentage", "percentage", 1, "base-mass 500; agar-mass 4.5; gelatin-type-a-mass 4.5", 0.9, 0.001 },
        // PC-017: the 0.5 g of locust bean gum in the same 500 g is printed as 0.1 %.
        { "PC-017-gum", "percentage", 1, "base-mass 500; agar-mass 0.5; gelatin-type-a-mass 0.5", 0.1, 0.0001 },
        // PC-024: a teaching page on plates of agar: 26 plates of 20 mL take 520 mL (here as grams, nothing left behind), and 28 g of powder to the litre (14.56 g by the same proportion).
        { "PC-024", "portions", 2, "portions 26; portion-mass 20; left-each 0", 520, 0.5 },
        { "PC-024-powder", "dose", 1, "base-mass 520; dose 2.8", 14.56, 0.005 },
    };

    [Theory, MemberData(nameof(Printed))]
    public void Printed_answer_is_marked_right(string id, string kind, int level, string numbers, double printed, double tolerance)
    {
        Exercise exercise = MarkingTests.Make(kind, level, Parsed(numbers));

        exercise.Solution.Value.Should().BeApproximately(printed, tolerance, id);
        if (tolerance < exercise.Tolerance)
        {
            Marking.Mark(exercise, exercise.Form.TextOf(printed)).Outcome.Should().Be(MarkOutcome.Right, id);
        }
    }

    // PC-004: a cooking question-and-answer site (question 43794) prints 3.7 g of 160 Bloom for 2.6 g of 225 Bloom, by the straight ratio. The square-root rule gives 3.08 g: the printed answer is a known mistake, and is named.
    [Fact]
    public void A_printed_answer_by_the_straight_ratio_is_recognised()
    {
        Exercise exercise = MarkingTests.Make("bloom", 1, ("bloom-from", 225), ("bloom-to", 160), ("mass", 2.6));

        exercise.AnswerText.Should().Be("3.08 g");
        Marking.Mark(exercise, "3.66 g").Misconceptions.Should().Equal(Misconception.StraightRatio);
    }

    // mix-equal: Granet and Bluestein, Thermodynamics and Heat Power (2000), problem 4.14: equal heat capacities at 500 and 100 °F come to 300 °F.
    [Fact]
    public void A_printed_answer_in_Fahrenheit_is_marked_right()
    {
        Exercise exercise = ExerciseKind.Standard.First(k => k.Id == "joining").Generate(1, 1, ExerciseSettings.Default with
        {
            Units = UnitSystem.UsCustomary,
            Fixed = ValueList<Given>.From([.. Parsed("hot-mass 1000; cold-mass 1000; hot-temperature 500; cold-temperature 100").Select(v => new Given(v.Item1, v.Item2, ""))]),
        });

        exercise.AnswerText.Should().Be("300.0 °F");
        Marking.Mark(exercise, "300 °F").Outcome.Should().Be(MarkOutcome.Right);
        Marking.Mark(exercise, "148.9 °F").Misconceptions.Should().Contain(Misconception.FahrenheitAsCelsius);
    }

    // PC-020 (the portion and the loss are assumed there, not printed): a pastry worker's hundred portions of 100 g with a loss of 5 %: 10 526 g and not 10 500 g.
    [Fact]
    public void A_loss_is_divided_out_and_the_loss_added_is_recognised()
    {
        Exercise exercise = MarkingTests.Make("portions", 1, ("portions", 100), ("portion-mass", 100), ("loss", 5));

        exercise.Solution.Value.Should().BeApproximately(10_526.3, 0.1);
        MarkedAnswer added = Marking.Mark(exercise, "10500 g");
        added.Misconceptions.Should().Equal(Misconception.LossAdded);
        added.CreditPercent.Should().Be(50);
    }

    private static (string, double)[] Parsed(string numbers)
        => [.. numbers.Split("; ").Select(n => n.Split(' ')).Select(p => (p[0], QuantityText.ParseNumber(p[1])))];
}
