using System.Globalization;
using CsCheck;
using Hydrocolloid.Formulation.Teaching;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Tests.Teaching;

public class MarkingTests
{
    private static readonly NumberFormatInfo s_comma = new() { NumberDecimalSeparator = "," };

    /// <summary>1000 g of water, 10 % sugar, 1 % salt, 0.3 % agar of everything so far: 1110 g and 3.33 g, as in docs/concepts.md.</summary>
    private static readonly Exercise s_board = Make("two-stage", 2, ("base-mass", 1000), ("sugar", 10), ("salt", 1), ("dose", 0.3));

    private static readonly Dictionary<string, Exercise> s_ofEachKind = ExerciseKind.Standard.ToDictionary(k => k.Id, k => k.Generate(1, 1));

    [Theory]
    [InlineData("3.33 g")]
    [InlineData("3330 mg")]
    [InlineData("0.00333 kg")]
    [InlineData("3.330 g")]
    [InlineData("3.335 g")] // rounded on the way, inside the tolerance of one unit of the last digit
    public void Right_answers_are_right_in_any_unit(string answer) => Marking.Mark(s_board, answer).Outcome.Should().Be(MarkOutcome.Right);

    [Fact]
    public void Decimal_comma_is_read_where_it_is_declared()
    {
        Marking.Mark(s_board, "3,33 g", s_comma).Outcome.Should().Be(MarkOutcome.Right);
        Marking.Mark(s_board, "3,33 g").Outcome.Should().Be(MarkOutcome.AskedAgain);
        Marking.Mark(s_board, "3.33 g", s_comma).Outcome.Should().Be(MarkOutcome.AskedAgain);
    }

    // Worked by hand: 0.3/100 of 1000, of 1010 (salt only), of 1110/0.997; 0.03/100 of 1110; 0.3 × 1110; 1110 rounded to 1100.
    [Theory]
    [InlineData("3 g", "percent-of-base")]
    [InlineData("3.03 g", "forgot-sugar")]
    [InlineData("0.333 g", "decimal-place")]
    [InlineData("333 g", "not-per-hundred")]
    [InlineData("3.30 g", "rounded-early")]
    public void A_wrong_number_names_its_mistake(string answer, string misconception)
    {
        MarkedAnswer marked = Marking.Mark(s_board, answer);

        marked.Outcome.Should().Be(MarkOutcome.Wrong);
        marked.Misconceptions.Select(m => m.Id).Should().Equal(misconception);
        marked.CreditPercent.Should().BeLessThan(100);
    }

    [Fact]
    public void Total_for_everything_so_far_differs_less_than_the_tolerance_and_is_not_offered()
        // 1110 · 0.3/99.7 = 3.340 against 3.33: within one unit of the last digit of each.
        => s_board.Slips.Should().NotContain(s => s.Misconceptions.Contains(Misconception.PercentOfTotal) && s.Misconceptions.Count == 1);

    [Fact]
    public void An_answer_rounded_too_far_is_nearly_right()
    {
        // 0.5 % of 1250 g and nothing else is 6.25 g; 6.3 g has one digit less than asked for.
        Exercise exercise = Make("dose", 1, ("base-mass", 1250), ("dose", 0.5));

        MarkedAnswer marked = Marking.Mark(exercise, "6.3 g");

        exercise.AnswerText.Should().Be("6.25 g");
        marked.Outcome.Should().Be(MarkOutcome.Wrong);
        marked.CreditPercent.Should().Be(50);
        marked.ToString().Should().Contain("rounded too far");
    }

    [Fact]
    public void Two_mistakes_together_are_recognised()
        // 0.03 % of the base: both the decimal point and the reference.
        => Marking.Mark(s_board, "0.3 g").Misconceptions.Should().BeEquivalentTo([Misconception.DecimalPlace, Misconception.PercentOfBase]);

    [Fact]
    public void The_step_where_the_ways_part_is_shown()
    {
        MarkedAnswer marked = Marking.Mark(s_board, "3.03 g");

        marked.PartsAt!.Quantity.Should().Be("sucrose");
        marked.ToString().Should().Contain("Here the ways part");
    }

    [Fact]
    public void Working_earns_credit_by_steps()
    {
        // Of the four worked steps, sucrose, salt, everything before the gel and the agar, the three on the way are written down.
        Marking.Mark(s_board, "5 g", working: ["100 g", "10 g", "1110 g"]).CreditPercent.Should().Be(75);
        Marking.Mark(s_board, "5 g", working: ["nonsense"]).CreditPercent.Should().Be(0);
        Marking.Mark(s_board, "5 g").CreditPercent.Should().Be(0);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("3.33")]
    [InlineData("3.33 mL")]
    [InlineData("3.33 blorps")]
    [InlineData("about 3 g")]
    [InlineData("3 g or 4 g")]
    [InlineData("3.33 g 4 g")]
    [InlineData("10^400 g")]
    [InlineData("1e400 g")]
    [InlineData("-3.33 g")]
    [InlineData("٣٫٣٣ g")]
    [InlineData("三 g")]
    [InlineData("3.33.3 g")]
    [InlineData("NaN g")]
    [InlineData("∞ g")]
    [InlineData("3 tsp")]
    [InlineData("\0\uD800 g")]
    public void What_cannot_be_read_is_asked_for_politely(string? answer)
    {
        MarkedAnswer marked = Marking.Mark(s_board, answer);

        marked.Outcome.Should().Be(MarkOutcome.AskedAgain);
        marked.CreditPercent.Should().Be(0);
        marked.ToString().Should().StartWith("Please");
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("the first")]
    [InlineData("about b")]
    [InlineData("a z")]
    [InlineData("а, б")] // Cyrillic
    [InlineData("10^400")]
    [InlineData("٣")]
    [InlineData("\0\uD800")]
    public void Options_that_cannot_be_read_are_asked_for_politely(string? answer)
    {
        foreach (ExerciseKind kind in ExerciseKind.Standard.Where(k => k.Generate(1, 1).Form.Shape != AnswerShape.Number))
        {
            MarkedAnswer marked = Marking.Mark(kind.Generate(1, 1), answer, working: [answer ?? "", "about 3", "10^400 g"]);

            marked.Outcome.Should().Be(MarkOutcome.AskedAgain, kind.Id);
            marked.ToString().Should().StartWith("Please");
        }
    }

    [Fact]
    public void Nothing_a_student_writes_throws()
        => Gen.String.Sample(text =>
        {
            foreach (ExerciseKind kind in ExerciseKind.Standard)
            {
                Marking.Mark(s_ofEachKind[kind.Id], text, working: [text]).Feedback.Should().NotBeEmpty();
            }
        }, iter: 300);

    [Fact]
    public void A_very_long_answer_is_asked_again() => Marking.Mark(s_board, new string('9', 100_000)).Outcome.Should().Be(MarkOutcome.AskedAgain);

    [Fact]
    public void Options_are_read_by_letter_and_part_of_an_order_earns_its_part()
    {
        Exercise order = ExerciseKind.Standard.First(k => k.Id == "most-agent").Generate(5, 1);
        string[] letters = order.AnswerText.Split(", ");

        Marking.Mark(order, order.AnswerText.ToUpperInvariant()).Outcome.Should().Be(MarkOutcome.Right);
        MarkedAnswer swapped = Marking.Mark(order, $"{letters[1]} {letters[0]} {letters[2]}");
        swapped.Outcome.Should().Be(MarkOutcome.Wrong);
        swapped.CreditPercent.Should().BeApproximately(100.0 / 3, 1e-9);
        Marking.Mark(order, "a, a, b").Outcome.Should().Be(MarkOutcome.AskedAgain);
        Marking.Mark(order, "a").Outcome.Should().Be(MarkOutcome.AskedAgain);
    }

    [Fact]
    public void A_percentage_without_its_sign_is_asked_again()
    {
        Exercise percentage = ExerciseKind.Standard.First(k => k.Id == "percentage").Generate(1, 1);

        Marking.Mark(percentage, percentage.AnswerText.Replace(" %", "", StringComparison.Ordinal)).Outcome.Should().Be(MarkOutcome.AskedAgain);
    }

    [Fact]
    public void A_school_adds_a_kind_and_a_misconception()
    {
        var doubled = new Misconception("doubled", "the answer doubled", "Once is enough.", e => e.Solution.Value * 2);
        var halves = new ExerciseKind("halves", "Half of a mass", 1, draw =>
        {
            double grams = draw.Number("mass", 100, 900, 100, "g");
            return new ExerciseDraft($"What is half of {grams} g?", AnswerForm.Number(QuantityKind.Mass, "g"), made => made(Misconception.NotPerHundred) ? null
                : WorkedSolution.Of(new SolutionStep("Divide by two.", "half", $"{grams} g / 2", grams / 2, "g")), Misconception.NotPerHundred);
        });
        ExerciseSet set = ExerciseSet.Generate(3, 2, ExerciseSettings.Default with { Kinds = ValueList<ExerciseKind>.From([halves]), Misconceptions = ValueList<Misconception>.From([doubled]) });

        set.Exercises.Should().OnlyContain(e => Marking.Mark(e, e.Form.TextOf(e.Solution.Value * 2), null, null).Misconceptions.Contains(doubled));
    }

    internal static Exercise Make(string kind, int level, params (string Key, double Value)[] values)
        => ExerciseKind.Standard.First(k => k.Id == kind).Generate(7, level, ExerciseSettings.Default with
        {
            Agents = ValueList<Ingredient>.From([Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA]),
            Fixed = ValueList<Given>.From(values.Select(v => new Given(v.Key, v.Value, ""))),
        });
}
