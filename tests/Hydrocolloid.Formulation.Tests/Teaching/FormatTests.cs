using System.Text.Json;
using System.Xml.Linq;
using Hydrocolloid.Formulation.Teaching;

namespace Hydrocolloid.Formulation.Tests.Teaching;

public class FormatTests
{
    private static readonly ExerciseSet s_set = ExerciseSet.Generate(77, 60);

    [Fact]
    public void A_students_document_never_has_the_answer()
    {
        using var document = JsonDocument.Parse(ExerciseJson.WriteForStudents(s_set));
        JsonElement[] exercises = [.. document.RootElement.GetProperty("exercises").EnumerateArray()];

        exercises.Should().HaveCount(60);
        foreach ((JsonElement written, Exercise exercise) in exercises.Zip(s_set.Exercises))
        {
            written.EnumerateObject().Select(p => p.Name).Should().Equal("kind", "level", "question", "givens", "things", "asked");
            written.GetProperty("asked").EnumerateObject().Select(p => p.Name).Should().BeSubsetOf(["shape", "quantity", "unit", "digits", "decimals", "options"]);
            if (exercise.Form.Shape == AnswerShape.Number)
            {
                exercise.Question.Should().NotContain(" " + exercise.AnswerText + " ");
            }
            else
            {
                written.GetProperty("asked").GetProperty("options").EnumerateArray().Should().OnlyContain(o => o.GetProperty("key").GetString()!.Length == 1);
            }
        }

        document.RootElement.EnumerateObject().Select(p => p.Name).Should().Equal("format", "version", "exercises");
    }

    [Fact]
    public void A_key_reads_back_as_an_equal_set_that_marks_the_same()
    {
        ExerciseSet read = ExerciseJson.ReadKey(ExerciseJson.WriteKey(s_set));

        read.Should().Be(s_set);
        ExerciseJson.WriteKey(read).Should().Be(ExerciseJson.WriteKey(s_set));
    }

    [Fact]
    public void An_answer_sheet_reads_back_and_marks()
    {
        var sheet = new AnswerSheet("student 7", ValueList<StudentAnswer>.From(s_set.Exercises.Select((e, i) => new StudentAnswer(i + 1, e.AnswerText.Replace('.', e.Form.Shape == AnswerShape.Number ? ',' : '.'), ValueList<string>.From(["1 g"])))), ",");
        AnswerSheet read = ExerciseJson.ReadAnswers(ExerciseJson.WriteAnswers(sheet));

        read.Should().Be(sheet);
        MarkedSheet marked = Marking.Mark(s_set, read);
        marked.CreditPercent.Should().Be(100);
        ExerciseJson.WriteMarked(marked).Should().Contain("\"creditPercent\": 100");
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("""{"format":"hydrocolloid-exercise-key","version":2,"exercises":[]}""")]
    [InlineData("""{"format":"hydrocolloid-exercise-key","version":1}""")]
    [InlineData("""{"format":"hydrocolloid-exercise-key","version":1,"exercises":[{}]}""")]
    [InlineData("""{"format":"hydrocolloid-exercises","version":1,"exercises":[]}""")]
    [InlineData("""{"format":"hydrocolloid-exercise-key","version":1e99,"exercises":[]}""")]
    public void What_is_no_key_is_refused_with_a_reason(string json)
        => FluentActions.Invoking(() => ExerciseJson.ReadKey(json)).Should().Throw<FormatException>();

    [Theory]
    [InlineData("""{"format":"hydrocolloid-answers","version":1,"student":null,"answers":[]}""")]
    [InlineData("""{"format":"hydrocolloid-answers","version":1,"student":"x","answers":[{"exercise":1,"answer":"1 g"},{"exercise":1,"answer":"2 g"}]}""")]
    [InlineData("""{"format":"hydrocolloid-answers","version":1,"student":"x","decimalSign":";","answers":[]}""")]
    public void What_is_no_answer_sheet_is_refused_with_a_reason(string json)
        => FluentActions.Invoking(() => ExerciseJson.ReadAnswers(json)).Should().Throw<FormatException>();

    [Fact]
    public void Html_is_well_formed_and_keeps_the_answers_back()
    {
        string html = ExerciseSheet.ToHtml(s_set, "Gels <1> & more");

        XDocument.Parse(html.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal).Replace("<meta charset=\"utf-8\">", "", StringComparison.Ordinal)).Descendants("h1").Single().Value.Should().Be("Gels <1> & more");
        html.Should().NotContain("<pre>").And.NotContain("http").And.NotContain("<script");
        ExerciseSheet.ToHtml(s_set, "Gels", withSolutions: true).Should().Contain("<pre>");
        ExerciseSheet.ToMarkdown(s_set, "Gels").Should().NotContain("rounded to");
    }

    // The rules of QTI 3.0 as recalled: declarations, then body, then processing; the value of a float or of an identifier that stands among the choices.
    [Fact]
    public void Qti_items_hold_to_the_rules()
    {
        XNamespace qti = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";
        foreach ((Exercise exercise, int i) in s_set.Exercises.Select((e, i) => (e, i)))
        {
            XElement item = XDocument.Parse(ExerciseQti.ToItem(exercise, "item-" + i)).Root!;

            item.Name.Should().Be(qti + "qti-assessment-item");
            item.Elements().Select(e => e.Name.LocalName).Should().Equal("qti-response-declaration", "qti-outcome-declaration", "qti-item-body", "qti-response-processing");
            string[] correct = [.. item.Descendants(qti + "qti-correct-response").Elements().Select(v => v.Value)];
            if (exercise.Form.Shape == AnswerShape.Number)
            {
                item.Descendants(qti + "qti-text-entry-interaction").Should().ContainSingle();
                double.Parse(correct.Single(), System.Globalization.CultureInfo.InvariantCulture).Should().Be(exercise.Solution.Value);
                item.Descendants(qti + "qti-equal").Single().Attribute("tolerance-mode")!.Value.Should().Be("absolute");
            }
            else
            {
                correct.Should().HaveCount(exercise.Solution.Keys.Count).And.BeSubsetOf(item.Descendants(qti + "qti-simple-choice").Select(c => c.Attribute("identifier")!.Value));
            }
        }
    }

    [Fact]
    public void An_identifier_that_is_none_is_refused()
        => FluentActions.Invoking(() => ExerciseQti.ToItem(s_set.Exercises[0], "1 item")).Should().Throw<ArgumentException>();
}
