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

    private static readonly XNamespace s_qti = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

    // What an item here consists of: element, attributes, children in order. Elements and their order: the XSD of QTI 2.2 as summed up in a public note (read), under the names of QTI 3.0
    // as public example items have them (read); required of the root are identifier, title and time-dependent. What is not in this table must not come up.
    private static readonly Dictionary<string, (string Attributes, string Children)> s_grammar = new(StringComparer.Ordinal)
    {
        ["qti-assessment-item"] = ("identifier title adaptive time-dependent lang schemaLocation", "^qti-response-declaration qti-outcome-declaration qti-item-body qti-response-processing $"),
        ["qti-response-declaration"] = ("identifier cardinality base-type", "^qti-correct-response $"),
        ["qti-correct-response"] = ("", "^(qti-value )+$"),
        ["qti-value"] = ("", "^$"),
        ["qti-outcome-declaration"] = ("identifier cardinality base-type", "^qti-default-value $"),
        ["qti-default-value"] = ("", "^qti-value $"),
        ["qti-item-body"] = ("", "^((p )+|qti-choice-interaction |qti-order-interaction )$"),
        ["p"] = ("", "^(qti-text-entry-interaction )?$"),
        ["qti-text-entry-interaction"] = ("response-identifier expected-length", "^$"),
        ["qti-choice-interaction"] = ("response-identifier shuffle max-choices", "^qti-prompt (qti-simple-choice ){2,}$"),
        ["qti-order-interaction"] = ("response-identifier shuffle", "^qti-prompt (qti-simple-choice ){2,}$"),
        ["qti-prompt"] = ("", "^$"),
        ["qti-simple-choice"] = ("identifier", "^$"),
        ["qti-response-processing"] = ("template", "^$|^qti-response-condition $"),
        ["qti-response-condition"] = ("", "^qti-response-if $"),
        ["qti-response-if"] = ("", "^qti-equal qti-set-outcome-value $"),
        ["qti-equal"] = ("tolerance-mode tolerance", "^qti-variable qti-correct $"),
        ["qti-variable"] = ("identifier", "^$"),
        ["qti-correct"] = ("identifier", "^$"),
        ["qti-set-outcome-value"] = ("identifier", "^qti-base-value $"),
        ["qti-base-value"] = ("base-type", "^$"),
    };

    [Fact]
    public void Qti_items_have_the_elements_and_attributes_of_the_standard_in_their_order()
    {
        foreach ((Exercise exercise, int i) in ExerciseSet.Generate(78, 200).Exercises.Select((e, i) => (e, i)))
        {
            XElement item = XDocument.Parse(ExerciseQti.ToItem(exercise, "item-" + i)).Root!;

            item.Name.Should().Be(s_qti + "qti-assessment-item");
            foreach (XElement element in item.DescendantsAndSelf())
            {
                element.Name.Namespace.Should().Be(s_qti);
                (string attributes, string children) = s_grammar[element.Name.LocalName];
                element.Attributes().Where(a => !a.IsNamespaceDeclaration).Select(a => a.Name.LocalName).Should().BeSubsetOf(attributes.Split(' '), element.Name.LocalName);
                string.Concat(element.Elements().Select(e => e.Name.LocalName + " ")).Should().MatchRegex(children, element.Name.LocalName);
            }

            item.Attributes().Where(a => a.Name.Namespace == XNamespace.None).Select(a => a.Name.LocalName).Should().Contain(["identifier", "title", "time-dependent"]);
        }
    }

    // The information model of QTI 3.0 as a public validator's documentation quotes it (read): an interaction is bound to a declared response variable of the base type and cardinality that it
    // asks for; match_correct needs RESPONSE with a correct response and SCORE; choices have different identifiers, and a correct response names choices of its interaction; values are of their base type.
    [Fact]
    public void Qti_items_hold_together_as_the_standard_asks()
    {
        foreach ((Exercise exercise, int i) in ExerciseSet.Generate(78, 200).Exercises.Select((e, i) => (e, i)))
        {
            XElement item = XDocument.Parse(ExerciseQti.ToItem(exercise, "item-" + i)).Root!;
            XElement response = item.Element(s_qti + "qti-response-declaration")!, score = item.Element(s_qti + "qti-outcome-declaration")!, processing = item.Element(s_qti + "qti-response-processing")!;
            XElement interaction = item.Descendants().Single(e => e.Attribute("response-identifier") is not null);
            string[] correct = [.. response.Descendants(s_qti + "qti-value").Select(v => v.Value)];
            string[] choices = [.. interaction.Elements(s_qti + "qti-simple-choice").Select(c => c.Attribute("identifier")!.Value)];

            interaction.Attribute("response-identifier")!.Value.Should().Be(response.Attribute("identifier")!.Value).And.Be("RESPONSE");
            score.Attribute("identifier")!.Value.Should().Be("SCORE");
            (response.Attribute("base-type")!.Value + " " + response.Attribute("cardinality")!.Value).Should().Be(interaction.Name.LocalName switch
            {
                "qti-text-entry-interaction" => "float single",
                "qti-order-interaction" => "identifier ordered",
                _ => interaction.Attribute("max-choices")!.Value == "1" ? "identifier single" : "identifier multiple",
            });
            choices.Should().OnlyHaveUniqueItems();
            choices.Where(c => !System.Text.RegularExpressions.Regex.IsMatch(c, "^[A-Za-z_][A-Za-z0-9_.-]*$")).Should().BeEmpty();
            if (exercise.Form.Shape == AnswerShape.Number)
            {
                double.Parse(correct.Single(), System.Globalization.CultureInfo.InvariantCulture).Should().Be(exercise.Solution.Value);
                XElement equal = processing.Descendants(s_qti + "qti-equal").Single();
                equal.Attribute("tolerance-mode")!.Value.Should().Be("absolute");
                equal.Attribute("tolerance")!.Value.Split(' ').Select(t => double.Parse(t, System.Globalization.CultureInfo.InvariantCulture)).Should().Equal(exercise.Tolerance, exercise.Tolerance);
                equal.Elements().Should().OnlyContain(e => e.Attribute("identifier")!.Value == "RESPONSE");
            }
            else
            {
                processing.Attribute("template")!.Value.Should().Be("https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml");
                correct.Should().BeSubsetOf(choices).And.HaveCount(exercise.Form.Shape == AnswerShape.Order ? choices.Length : exercise.Solution.Keys.Count);
            }
        }
    }

    [Fact]
    public void The_body_of_a_qti_item_does_not_say_the_answer()
    {
        foreach (Exercise exercise in ExerciseSet.Generate(78, 200).Exercises)
        {
            XElement body = XDocument.Parse(ExerciseQti.ToItem(exercise, "item")).Root!.Element(s_qti + "qti-item-body")!;
            if (exercise.Form.Shape == AnswerShape.Number)
            {
                body.Value.Should().NotContain(" " + exercise.AnswerText + " ");
            }
            else
            {
                body.Descendants(s_qti + "qti-simple-choice").Select(c => c.Attribute("identifier")!.Value).Should().Equal(exercise.Form.Options.Select((_, i) => "choice-" + (char)('a' + i)));
                body.Descendants(s_qti + "qti-simple-choice").Select(c => c.Value).Should().Equal(exercise.Form.Options.Select(o => o.Text));
            }
        }
    }

    [Fact]
    public void What_a_question_names_is_data_too()
    {
        using var document = JsonDocument.Parse(ExerciseJson.WriteForStudents(s_set));
        JsonElement[] exercises = [.. document.RootElement.GetProperty("exercises").EnumerateArray()];
        string[] agents = [.. exercises.SelectMany(e => e.GetProperty("things").EnumerateArray()).Where(t => t.GetProperty("key").GetString() is "agent" or "base" or "liquid").Select(t => t.GetProperty("id").GetString()!)];

        agents.Where(id => !Catalogue.BuiltIn.TryGet(id, out _)).Should().BeEmpty();
        agents.Should().NotBeEmpty();
        exercises.Should().OnlyContain(e => e.GetProperty("givens").GetArrayLength() + e.GetProperty("things").GetArrayLength() > 0);
    }

    [Fact]
    public void An_identifier_that_is_none_is_refused()
        => FluentActions.Invoking(() => ExerciseQti.ToItem(s_set.Exercises[0], "1 item")).Should().Throw<ArgumentException>();
}
