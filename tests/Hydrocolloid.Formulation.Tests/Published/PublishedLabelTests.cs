using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Declarations;
using Hydrocolloid.Formulation.Exchange;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>The checks of <c>label-checks.json</c>, which holds each one's source and how it was seen.</summary>
public class PublishedLabelTests
{
    private static readonly JsonElement s_document = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "label-checks.json"))).RootElement;

    public static TheoryData<string> Energy => Ids("energy");

    public static TheoryData<string> UsRounding => Ids("usRounding");

    public static TheoryData<string> EuRounding => Ids("euRounding");

    public static TheoryData<string> Gtins => Ids("gtins");

    public static TheoryData<string> CasNumbers => Ids("casNumbers");

    public static TheoryData<string> CsvGuards => Ids("csvGuards");

    [Theory, MemberData(nameof(Energy))]
    public void Energy_is_met(string id)
    {
        JsonElement check = Check("energy", id);
        double Part(string name) => check.TryGetProperty(name, out JsonElement part) ? part.GetDouble() : 0;
        double carbohydrate = Part("otherCarbohydrate") + Part("polyols") + Part("erythritol");
        double solids = carbohydrate + Part("sugars") + Part("fibre") + Part("protein") + Part("fat") + Part("ethanol") + Part("organicAcids");
        Ingredient food = Ingredient.Own("food", "Food").WithAllergens().WithComposition(Composition.Per100Grams(
            water: 100 - solids, sugars: Part("sugars"), otherCarbohydrate: carbohydrate, fibre: Part("fibre"), protein: Part("protein"), fat: Part("fat"), ash: 0,
            ethanol: Part("ethanol"), organicAcids: Part("organicAcids"), calcium: 0, potassium: 0, sodium: 0, magnesium: 0));
        Batch batch = Formula.Named("f").Base(b => b.Share(food, 100)).Build().ScaleTo(Yield.OfBase(Mass.FromGrams(100)));

        Declaration label = batch.Declare(new LabelPlan { Lines = ValueList<LineLabel>.From([new LineLabel("food") { PolyolsPercent = Part("polyols"), ErythritolPercent = Part("erythritol") }]) });

        Value(label, Nutrient.Kilojoules).Should().BeApproximately(check.GetProperty("kilojoules").GetDouble(), 1e-9);
        Value(label, Nutrient.Kilocalories).Should().BeApproximately(check.GetProperty("kilocalories").GetDouble(), 1e-9);
    }

    [Theory, MemberData(nameof(UsRounding))]
    public void Us_rounding_is_met(string id) => Rounded("usRounding", id, LabelRounding.Us);

    [Theory, MemberData(nameof(EuRounding))]
    public void Eu_rounding_is_met(string id) => Rounded("euRounding", id, LabelRounding.Eu);

    [Theory, MemberData(nameof(Gtins))]
    public void Check_digit_of_a_gtin_is_met(string id)
    {
        JsonElement check = Check("gtins", id);
        string body = check.GetProperty("body").GetString()!;
        char digit = check.GetProperty("digit").GetString()![0];

        Gtin.TryParse(body + digit, out Gtin? gtin, out _).Should().BeTrue();
        gtin!.Digits.Should().Be((body + digit).PadLeft(14, '0'));
        for (char other = '0'; other <= '9'; other++)
        {
            Gtin.TryParse(body + other, out _, out _).Should().Be(other == digit);
        }
    }

    [Theory, MemberData(nameof(CasNumbers))]
    public void Check_digit_of_a_cas_number_is_met(string id)
    {
        JsonElement check = Check("casNumbers", id);
        CasNumber.IsValid(check.GetProperty("number").GetString()).Should().Be(check.GetProperty("valid").GetBoolean());
    }

    [Theory, MemberData(nameof(CsvGuards))]
    public void Cell_is_safe_and_comes_back(string id)
    {
        JsonElement check = Check("csvGuards", id);
        string text = check.GetProperty("text").GetString()!;
        var csv = new CsvWriter(CsvDialect.Comma);
        csv.Text(text).EndRecord();

        string written = Encoding.UTF8.GetString(csv.ToBytes());

        written.Should().Be(check.GetProperty("cell").GetString() + "\r\n");
        CsvGuard.Off(CsvReader.Read(written, ',').Single().Fields.Single()).Should().Be(text);
    }

    [Fact]
    public void Every_check_is_cited()
    {
        foreach (JsonElement check in s_document.EnumerateObject().Where(m => m.Value.ValueKind == JsonValueKind.Array).SelectMany(m => m.Value.EnumerateArray()))
        {
            check.GetProperty("source").GetString().Should().NotBeNullOrWhiteSpace();
            check.GetProperty("seen").GetString().Should().BeOneOf("read", "recalled", "derived");
        }
    }

    private static TheoryData<string> Ids(string list) => [.. s_document.GetProperty(list).EnumerateArray().Select(c => c.GetProperty("id").GetString()!)];

    private static JsonElement Check(string list, string id) => s_document.GetProperty(list).EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);

    private static double Value(Declaration label, Nutrient kind) => label.Nutrition.Single(n => n.Kind == kind).Per100Grams;

    private static void Rounded(string list, string id, Func<Nutrient, double, string> round)
    {
        JsonElement check = Check(list, id);
        round(Enum.Parse<Nutrient>(check.GetProperty("nutrient").GetString()!), check.GetProperty("value").GetDouble()).Should().Be(check.GetProperty("expected").GetString());
    }
}
