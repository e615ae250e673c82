using System.Diagnostics;
using System.Text;
using Hydrocolloid.Formulation.Serialization;

namespace Hydrocolloid.Formulation.Tests.Serialization;

public class FormulaJsonRefusalTests
{
    public static TheoryData<string, string, string> Refused => new()
    {
        { "", "syntax", "" },
        { "[]", "value-type", "" },
        { "null", "value-type", "" },
        { "{}", "format-unknown", "/format" },
        { """{"format":"hydrocolloid-catalogue","version":1}""", "format-unknown", "/format" },
        { """{"format":"hydrocolloid-formula"}""", "version-unknown", "/version" },
        { """{"format":"hydrocolloid-formula","version":"1"}""", "version-unknown", "/version" },
        { """{"format":"hydrocolloid-formula","version":1.0}""", "version-unknown", "/version" },
        { """{"format":"hydrocolloid-formula","version":0}""", "version-unknown", "/version" },
        { """{"format":"hydrocolloid-formula","version":2,"dishes":{"deep":[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]}}""", "version-newer", "/version" },
        { """{"dishes":[],"version":2,"format":"hydrocolloid-formula"}""", "version-newer", "/version" },
        { Documents.With() + "x", "syntax", "" },
        { Documents.With(members: ",\"name\":\"again\""), "member-repeated", "/name" },
        { Documents.With(members: ",\"format\":\"hydrocolloid-formula\""), "member-repeated", "/format" },
        { Documents.With(members: ",\"Name\":1"), "member-unknown", "/Name" },
        { Documents.With(members: ",\"a/b~c\":1"), "member-unknown", "/a~1b~0c" },
        { Documents.With(members: ",\"process\":null"), "value-type", "/process" },
        { Documents.With(members: ",\"extensions\":null"), "value-type", "/extensions" },
        { Documents.With(members: ",\"extensions\":[]"), "value-type", "/extensions" },
        { Documents.With(members: ",\"extensions\":{\"a\":{\"b\":1,\"b\":2}}"), "member-repeated", "/extensions/a/b" },
        { Documents.With(members: ",\"extensions\":{\"a\":\"\\ud800\"}"), "text-invalid", "" },
        { Documents.With(members: ",\"extensions\":{\"\\udc00\":1}"), "text-invalid", "" },
        { Documents.With(line: ",\"note\":\"x\""), "member-unknown", "/phases/0/add/0/note" },
        { Documents.With(part: ",\"of\":\"base\""), "member-unknown", "/base/0/of" },
        { Documents.With(line: ",\"form\":\"lumps\""), "word-unknown", "/phases/0/add/0/form" },
        { Documents.With(line: ",\"form\":null"), "value-type", "/phases/0/add/0/form" },
        { Documents.With(line: ",\"label\":\"a\",\"label\":\"b\""), "member-repeated", "/phases/0/add/0/label" },
        { Documents.With(line: ",\"measured\":null"), "value-type", "/phases/0/add/0/measured" },
        { Documents.With(line: ",\"measured\":{\"ph\":3,\"ph\":3}"), "member-repeated", "/phases/0/add/0/measured/ph" },
        { Documents.With(line: ",\"extensions\":{\"a\":1,\"a\":1}"), "member-repeated", "/phases/0/add/0/extensions/a" },
        { Documents.With(line: ",\"extensions\":null"), "value-type", "/phases/0/add/0/extensions" },
        { Documents.With(line: ",\"temperature\":{\"value\":4,\"value\":4,\"unit\":\"Cel\"}"), "member-repeated", "/phases/0/add/0/temperature/value" },
        { Documents.With(line: ",\"temperature\":{\"value\":4,\"unit\":\"Cel\",\"at\":1}"), "member-unknown", "/phases/0/add/0/temperature/at" },
        { Documents.With().Replace(",\"of\":\"base\"", "", StringComparison.Ordinal), "member-missing", "/phases/0/add/0/of" },
        { Documents.With().Replace("\"percent\":100", "\"form\":\"mix\"", StringComparison.Ordinal), "member-missing", "/base/0/percent" },
        { Documents.With(line: ",\"label\":\" \""), "text-blank", "/phases/0/add/0/label" },
        { Documents.With(line: ",\"temperature\":12"), "value-type", "/phases/0/add/0/temperature" },
        { Documents.With(line: ",\"temperature\":{\"value\":12,\"unit\":\"°C\"}"), "unit-unknown", "/phases/0/add/0/temperature/unit" },
        { Documents.With(line: ",\"temperature\":{\"value\":12,\"unit\":\"g\"}"), "unit-unknown", "/phases/0/add/0/temperature/unit" },
        { Documents.With(line: ",\"temperature\":{\"value\":-300,\"unit\":\"Cel\"}"), "number-range", "/phases/0/add/0/temperature/value" },
        { Documents.With(line: ",\"temperature\":{\"value\":1e400,\"unit\":\"K\"}"), "number-range", "/phases/0/add/0/temperature/value" },
        { Documents.With(line: ",\"measured\":{\"ph\":15}"), "number-range", "/phases/0/add/0/measured/ph" },
        { Documents.With(line: ",\"measured\":{\"ph\":null}"), "value-type", "/phases/0/add/0/measured/ph" },
        { Documents.With(percent: "\"1\""), "value-type", "/phases/0/add/0/percent" },
        { Documents.With(percent: "1e308"), "dose-too-large", "/phases/0/add/0/percent" },
        { Documents.With(percent: "1e400"), "dose-too-large", "/phases/0/add/0/percent" },
        { Documents.With(percent: "-1"), "dose-invalid", "/phases/0/add/0/percent" },
        { Documents.With(percent: "[]"), "value-type", "/phases/0/add/0/percent" },
        { Documents.With(of: "null"), "value-type", "/phases/0/add/0/of" },
        { Documents.With(of: "\"all\""), "word-unknown", "/phases/0/add/0/of" },
        { Documents.With(of: "{}"), "value-type", "/phases/0/add/0/of" },
        { Documents.With(of: "{\"line\":\"\"}"), "text-blank", "/phases/0/add/0/of/line" },
        { Documents.With(of: "{\"line\":1}"), "value-type", "/phases/0/add/0/of/line" },
        { Documents.With(of: "{\"line\":\"a\",\"line\":\"a\"}"), "value-type", "/phases/0/add/0/of" },
        { Documents.With(of: "{\"ingredient\":\"agar\"}"), "reference-later", "/phases/0/add/0/of" },
        { Documents.With(of: "{\"ingredient\":\"juice\"}", part: ",\"label\":\"juice\""), "reference-unclear", "/phases/0/add/0/of" },
        { Documents.With(members: ",\"process\":{\"losses\":{\"transfer\":{\"percent\":100}}}"), "number-range", "/process/losses/transfer/percent" },
        { Documents.With(members: ",\"process\":{\"losses\":{\"transfer\":{}}}"), "loss-unclear", "/process/losses/transfer" },
        { Documents.With(members: ",\"process\":{\"losses\":{\"transfer\":{\"value\":3}}}"), "loss-unclear", "/process/losses/transfer" },
        { Documents.With(members: ",\"process\":{\"losses\":{\"transfer\":{\"percent\":1,\"unit\":\"g\"}}}"), "loss-unclear", "/process/losses/transfer" },
        { Documents.With(members: ",\"process\":{\"losses\":{\"toppedUp\":null}}"), "value-type", "/process/losses/toppedUp" },
        { Documents.With(members: ",\"process\":{\"carriers\":[null]}"), "value-type", "/process/carriers/0" },
        { Documents.With(members: ",\"process\":{\"carriers\":[\"water\"]}"), "carrier-unknown", "/process/carriers/0" },
        { Documents.With(members: ",\"process\":{\"cooling\":[{\"name\":\"bench\"}]}"), "member-missing", "/process/cooling/0/temperature" },
        { Documents.With(members: ",\"process\":{\"mould\":{\"name\":\"\"}}"), "text-blank", "/process/mould/name" },
        { Documents.With(members: ",\"service\":{\"covered\":null}"), "value-type", "/service/covered" },
        { Documents.With(members: ",\"service\":{\"texture\":\"hard\"}"), "word-unknown", "/service/texture" },
        { Documents.With(members: ",\"service\":{\"portion\":{\"value\":0,\"unit\":\"g\"}}"), "number-range", "/service/portion/value" },
        { Documents.With(members: ",\"ingredients\":[null]"), "value-type", "/ingredients/0" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"house-salt\",\"name\":\"House salt\"}]"), "ingredient-unused", "/ingredients/0" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\"}]"), "member-missing", "/ingredients/0/name" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"nothing\",\"name\":\"x\"}]"), "like-unknown", "/ingredients/0/like" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\"},{\"id\":\"agar\",\"like\":\"agar\"}]"), "ingredient-repeated", "/ingredients/1/id" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"vegan\":true}]"), "diet-unclear", "/ingredients/0/vegan" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"allergens\":[\"milk\",\"milk\"]}]"), "allergen-repeated", "/ingredients/0/allergens/1" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"compositionPer100g\":{\"water\":90,\"sugars\":90}}]"), "composition-sum", "/ingredients/0/compositionPer100g" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"grade\":{\"scale\":\"bloom\",\"value\":0}}]"), "number-range", "/ingredients/0/grade/value" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"compositionPer100g\":{\"water\":90,\"calcium\":20000}}]"), "composition-sum", "/ingredients/0/compositionPer100g" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"category\":\"juicy\"}]"), "word-unknown", "/ingredients/0/category" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"titratableAcidity\":{\"percent\":101,\"as\":\"malic\"}}]"), "number-range", "/ingredients/0/titratableAcidity/percent" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"titratableAcidity\":{\"percent\":1,\"as\":\"quinic\"}}]"), "word-unknown", "/ingredients/0/titratableAcidity/as" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"tannin\":\"much\"}]"), "word-unknown", "/ingredients/0/tannin" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"protease\":{\"enzyme\":\"bromelain\"}}]"), "member-missing", "/ingredients/0/protease/active" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"protease\":{\"enzyme\":\"bromelain\",\"active\":true,\"disputed\":1}}]"), "value-type", "/ingredients/0/protease/disputed" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"synonyms\":[\"Kanten\",\"Kanten\"]}]"), "synonym-repeated", "/ingredients/0/synonyms/1" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"synonyms\":[\" \"]}]"), "text-blank", "/ingredients/0/synonyms/0" },
        { Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"milkProtein\":{\"casein\":1,\"whey\":true}}]"), "value-type", "/ingredients/0/milkProtein/casein" },
        { Documents.With().Replace("beetroot-juice", "Beetroot", StringComparison.Ordinal), "id-invalid", "/base/0/ingredient" },
        { Documents.With().Replace("[{\"ing", "[null,{\"ing", StringComparison.Ordinal), "value-type", "/base/0" },
    };

    [Theory, MemberData(nameof(Refused))]
    public void What_is_not_a_formula_is_refused_with_its_reason_and_place(string json, string id, string pointer)
    {
        IReadOnlyList<FormulaJsonProblem> problems = Documents.ProblemsOf(json);

        problems.Should().Contain(p => p.Id == id && p.Pointer == pointer, string.Join("\n", problems));
        problems.Should().OnlyContain(p => p.LineNumber >= 1 && p.BytePositionInLine >= 0 && p.ByteOffset <= Encoding.UTF8.GetByteCount(json) && p.Message.Length > 0);
        problems.Should().OnlyContain(p => !p.Message.Contains("Hydrocolloid.Formulation"));
        FormulaJsonException thrown = FluentActions.Invoking(() => FormulaJson.Read(json)).Should().Throw<FormulaJsonException>().Which;
        thrown.Problems.Should().Equal(problems);
        thrown.Message.Should().ContainAll(problems.Select(p => p.Message));
    }

    [Fact]
    public void What_must_be_above_nothing_is_told_so()
        => Documents.ProblemsOf(Documents.With(members: ",\"ingredients\":[{\"id\":\"agar\",\"like\":\"agar\",\"grade\":{\"scale\":\"bloom\",\"value\":0}}]")).Single().Message
            .Should().Be("Must be above 0 bloom and at most 100000 bloom, but is 0 bloom.");

    [Fact]
    public void All_faults_of_shape_are_reported_together_and_all_faults_of_meaning_too()
    {
        Documents.ProblemsOf(Documents.With(percent: "\"1\"", of: "\"all\"", part: ",\"lable\":\"x\"", members: ",\"phasen\":[]"))
            .Select(p => p.Pointer).Should().BeEquivalentTo("/base/0/lable", "/phases/0/add/0/percent", "/phases/0/add/0/of", "/phasen");
        Documents.ProblemsOf(Documents.With(percent: "-1", line: ",\"form\":\"x\"", members: ",\"service\":{\"texture\":\"y\"},\"process\":{\"castAt\":{\"value\":1,\"unit\":\"g\"}}"))
            .Select(p => p.Pointer).Should().BeEquivalentTo("/phases/0/add/0/percent", "/phases/0/add/0/form", "/service/texture", "/process/castAt/unit");
    }

    [Fact]
    public void The_place_is_the_first_byte_of_the_value()
    {
        string json = Documents.Layers.ReplaceLineEndings("\n").Replace("0.25", "-0.25", StringComparison.Ordinal);

        FormulaJsonProblem problem = Documents.ProblemsOf(json).Single();

        int offset = json.IndexOf("-0.25", StringComparison.Ordinal);
        problem.Pointer.Should().Be("/phases/1/add/0/percent");
        problem.ByteOffset.Should().Be(offset);
        problem.LineNumber.Should().Be(json[..offset].Count(c => c == '\n') + 1);
        problem.BytePositionInLine.Should().Be(offset - json.LastIndexOf('\n', offset) - 1);
        problem.Cause!.Value.Should().Be(-0.25);
        problem.ToString().Should().StartWith("/phases/1/add/0/percent (line ");
    }

    [Fact]
    public void Bytes_that_are_not_UTF8_and_halves_of_characters_are_placed()
    {
        byte[] bytes = Encoding.UTF8.GetBytes(Documents.With());
        foreach (byte[] wrong in new byte[][] { [0xFF], [0xC0, 0x80], [0xE0, 0x80, 0x80], [0xED, 0xA0, 0x80], [0xF4, 0x90, 0x80, 0x80], [0xC3], [0xE2, 0x82] })
        {
            FormulaJson.TryRead([.. bytes[..60], .. wrong, .. bytes[60..]], out _, out ValueList<FormulaJsonProblem> problems).Should().BeFalse();
            (problems.Single().Id, problems.Single().ByteOffset).Should().Be(("text-invalid", 60));
        }

        FormulaJsonProblem problem = Documents.ProblemsOf("{\"é\n\ud800\"}").Single();
        (problem.Id, problem.ByteOffset, problem.LineNumber, problem.BytePositionInLine).Should().Be(("text-invalid", 5, 2, 0));
    }

    [Fact]
    public void Every_truncation_is_refused()
    {
        byte[] bytes = Encoding.UTF8.GetBytes(Documents.BlocksOfThePage()[1].TrimEnd());
        for (int i = 0; i < bytes.Length; i++)
        {
            FormulaJson.TryRead(bytes.AsSpan(0, i), out _, out ValueList<FormulaJsonProblem> problems).Should().BeFalse();
            problems.Single().ByteOffset.Should().BeInRange(0, i);
        }
    }

    [Fact]
    public void Deep_nesting_is_refused_without_harm()
    {
        foreach (string open in new[] { "[", "{\"a\":" })
        {
            string deep = string.Concat(Enumerable.Repeat(open, 50_000));
            Documents.ProblemsOf(deep).Single().Id.Should().Be(open is "[" ? "value-type" : "too-deep");
            Documents.ProblemsOf(Documents.With(members: ",\"extensions\":{\"a\":" + deep)).Single().Id.Should().Be("too-deep");
        }
    }

    [Fact]
    public void A_hundred_thousand_lines_are_read_and_written_in_seconds()
    {
        string lines = string.Join(',', Enumerable.Range(0, 100_000).Select(i => $$"""{"ingredient":"sucrose","percent":0.001,"of":{"ingredient":"beetroot-juice"},"label":"s{{i}}"}"""));
        string json = $$"""{"format":"hydrocolloid-formula","version":1,"name":"n","base":[{"ingredient":"beetroot-juice","percent":100}],"phases":[{"name":"p","add":[{{lines}}]}]}""";
        var clock = Stopwatch.StartNew();

        Formula formula = FormulaJson.Read(json);
        FormulaJson.Read(FormulaJson.WriteUtf8(formula)).Lines.Count.Should().Be(100_001);
        Documents.ProblemsOf(json.Replace("0.001", "-1", StringComparison.Ordinal)).Count.Should().Be(100_000);

        clock.Elapsed.Should().BeLessThan(TimeSpan.FromSeconds(30));
    }

    [Fact]
    public void Only_null_arguments_throw_something_else()
    {
        FluentActions.Invoking(() => FormulaJson.Read((string)null!)).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => FormulaJson.Read((Stream)null!)).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => FormulaJson.Read("", null!)).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => FormulaJson.Write((Formula)null!)).Should().Throw<ArgumentNullException>();
    }
}
