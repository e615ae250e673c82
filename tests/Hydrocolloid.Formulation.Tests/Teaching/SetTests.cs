using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Teaching;

namespace Hydrocolloid.Formulation.Tests.Teaching;

public class SetTests
{
    private const string Stored = "tests/Hydrocolloid.Formulation.Tests/Teaching/set-of-seed-2026.md";

    /// <summary>The stored page was written once; both builds of the library must write it again.</summary>
    [Fact]
    public void The_same_seed_gives_the_stored_set_on_every_target()
    {
        string page = ExerciseSheet.ToMarkdown(ExerciseSet.Generate(2026, 20), "Set of seed 2026", withSolutions: true);
        if (Environment.GetEnvironmentVariable("UPDATE_DOCS") == "1")
        {
            File.WriteAllText(Path.Combine(Repository.Root, Stored), page);
        }

        page.Should().Be(Repository.Read(Stored));
    }

    [Fact]
    public void A_set_has_no_repeats_and_goes_from_easy_to_hard()
    {
        ExerciseSet set = ExerciseSet.Generate(11, 200);

        set.Exercises.Select(e => e.Question + e.Form.Options).Should().OnlyHaveUniqueItems();
        set.Exercises.Select(e => e.Level).Should().BeInAscendingOrder();
        set.Exercises.Select(e => e.Kind).Distinct().Should().HaveCountGreaterThan(15);
        set.Exercises.Select(e => e.Level).Distinct().Should().HaveCount(3);
    }

    [Fact]
    public void The_same_seed_gives_an_equal_set_and_another_seed_another()
    {
        ExerciseSet.Generate(4, 30).Should().Be(ExerciseSet.Generate(4, 30));
        ExerciseSet.Generate(5, 30).Should().NotBe(ExerciseSet.Generate(4, 30));
    }

    [Fact]
    public void Only_the_agents_allowed_are_met()
    {
        ExerciseSet set = ExerciseSet.Generate(1, 40, ExerciseSettings.Default with { Agents = ValueList<Ingredient>.From([Hydrocolloids.GellanLowAcyl]) });

        foreach (string other in new[] { "agar", "gelatin", "carrageenan" })
        {
            set.Exercises.Should().NotContain(e => e.Question.Contains(other, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void A_teachers_formula_gives_exercises_about_it()
    {
        Formula own = FormulaJson.Read(Repository.Read("examples/data/cucumber-mint-layer.json"));

        ExerciseSet set = ExerciseSet.Generate(1, 12, ExerciseSettings.Default with { Formulas = ValueList<Formula>.From([own]) });

        string[] names = [.. own.Lines.Where(l => !l.IsBase).Select(l => l.Ingredient.Name.ToLowerInvariant())];
        set.Exercises.Should().OnlyContain(e => names.Any(n => e.Question.Contains(n)) || e.Kind == "portions");
        set.Exercises.Should().OnlyContain(e => Marking.Mark(e, e.AnswerText, null, null).Outcome == MarkOutcome.Right);
    }

    [Fact]
    public void Without_a_calculator_the_numbers_are_round()
    {
        ExerciseSet set = ExerciseSet.Generate(1, 30, ExerciseSettings.Default with { WithCalculator = false });

        set.Exercises.SelectMany(e => e.Givens).Where(g => g.Key == "base-mass").Should().OnlyContain(g => g.Value % 10 == 0);
        set.Exercises.Should().OnlyContain(e => !ExerciseKind.Standard.First(k => k.Id == e.Kind).NeedsCalculator);
    }

    [Fact]
    public void Us_units_state_ounces_and_fahrenheit()
        => ExerciseSet.Generate(1, 60, ExerciseSettings.Default with { Units = UnitSystem.UsCustomary }).Exercises.SelectMany(e => e.Givens).Select(g => g.Unit).Should().Contain(["oz", "°F"]);

    [Fact]
    public void Too_many_are_refused_with_how_many_there_are()
        => FluentActions.Invoking(() => ExerciseSet.Generate(1, 500, ExerciseSettings.Default with { Kinds = ValueList<ExerciseKind>.From(ExerciseKind.Standard.Where(k => k.Id == "boil-hot-enough")) }))
            .Should().Throw<ArgumentException>().WithMessage("The settings allow only * different exercises.*");

    [Fact]
    public void Ids_of_kinds_and_misconceptions_are_unique()
        => ExerciseKind.Standard.Select(k => k.Id).Should().OnlyHaveUniqueItems();

    [Fact]
    public void Hints_on_options_do_not_name_the_right_one()
    {
        foreach (Exercise exercise in ExerciseSet.Generate(8, 200).Exercises.Where(e => e.Form.Shape is AnswerShape.Choice or AnswerShape.List))
        {
            exercise.Hints.Should().NotBeEmpty(exercise.Question);
            foreach (AnswerOption right in exercise.Form.Options.Where(o => exercise.Solution.Keys.Contains(o.Key) && !exercise.Hints.Any(h => exercise.Form.Options.Any(other => other.Key != o.Key && h.Contains(other.Text, StringComparison.Ordinal)))))
            {
                exercise.Hints.Should().NotContain(h => h.Contains(right.Text, StringComparison.Ordinal), exercise.Question);
            }
        }
    }

    [Fact]
    public void Hints_go_step_by_step_and_keep_the_answer_back()
    {
        foreach (Exercise exercise in ExerciseSet.Generate(8, 60).Exercises.Where(e => e.Form.Shape == AnswerShape.Number))
        {
            exercise.Hints.Count.Should().BeGreaterThanOrEqualTo(2);
            exercise.Hints.Should().NotContain(h => h.Contains("= " + exercise.AnswerText, StringComparison.Ordinal));
            exercise.SolutionText().Should().Contain(exercise.AnswerText).And.Contain("rounded");
        }
    }
}
