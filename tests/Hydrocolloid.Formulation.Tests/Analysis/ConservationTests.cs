using CsCheck;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Analysis;

/// <summary>What goes into the pot is in the pot: formulas of random catalogue ingredients.</summary>
public class ConservationTests
{
    private static readonly Ingredient[] s_all = [.. Catalogue.BuiltIn.All];

    private static readonly Gen<(Ingredient Ingredient, double Parts)[]> s_mixes = Of(s_all);

    private static readonly Gen<(Ingredient Ingredient, double Parts)[]> s_foods = Of([.. s_all.Where(i => i.Composition is not null && i.Category is not ("salt" or "acid"))]);

    private static Gen<(Ingredient Ingredient, double Parts)[]> Of(Ingredient[] from) => Gen.Select(Gen.Int[0, from.Length - 1], Gen.Double[0.01, 10])
        .Array[1, 6].Select(parts => parts.GroupBy(p => p.Item1).Select(g => (from[g.Key], g.First().Item2)).ToArray());

    private static Temperature At(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static void Near(double actual, double expected, double relative = 1e-9) => actual.Should().BeApproximately(expected, 1e-9 + Math.Abs(expected) * relative);

    [Fact]
    public void Parts_of_the_lines_weighted_by_mass_are_the_parts_of_the_whole() => s_mixes.Sample(mix =>
    {
        MixContents whole = Contents.Of(mix);
        double mass = mix.Sum(m => m.Parts);
        MixContents[] alone = [.. mix.Select(m => Contents.Of(m.Ingredient))];

        for (int part = 0; part < Contents.Parts(whole).Length; part++)
        {
            Near(Contents.Parts(whole)[part].Value, mix.Select((m, i) => m.Parts / mass * Contents.Parts(alone[i])[part].Value).Sum());
        }

        for (int mineral = 0; mineral < 4; mineral++)
        {
            IonContent content = Contents.Minerals(whole)[mineral];
            Near(content.MilligramsPerKg.Value, mix.Select((m, i) => m.Parts / mass * Contents.Minerals(alone[i])[mineral].MilligramsPerKg.Value).Sum());
            Near(content.MmolPerKg, mix.Select((m, i) => m.Parts / mass * Contents.Minerals(alone[i])[mineral].MmolPerKg).Sum());
        }
    }, iter: 500);

    [Fact]
    public void Order_of_the_lines_does_not_matter() => s_mixes.Sample(mix =>
    {
        (string Name, Reckoned Value)[] forward = [.. Contents.All(Contents.Of(mix))];
        (string Name, Reckoned Value)[] backward = [.. Contents.All(Contents.Of([.. mix.Reverse()]))];

        forward.Length.Should().Be(backward.Length);
        for (int i = 0; i < forward.Length; i++)
        {
            string name = forward[i].Name;
            if (!double.IsNaN(forward[i].Value.Value) || !double.IsNaN(backward[i].Value.Value))
            {
                Near(backward[i].Value.Value, forward[i].Value.Value, name is "pH" or "free calcium" ? 1e-5 : 1e-9);
            }

            backward[i].Value.How.Should().Be(forward[i].Value.How, name);
            backward[i].Value.Without.Should().BeEquivalentTo(forward[i].Value.Without, name);
        }
    }, iter: 200);

    [Fact]
    public void Water_and_all_parts_of_foods_add_up_to_100_within_5() => s_foods.Sample(
        mix => Contents.Parts(Contents.Of(mix)).Sum(p => p.Value).Should().BeInRange(95, 105), iter: 1000);

    [Fact]
    public void Shares_of_one_ingredient_in_several_lines_are_that_ingredient() => Gen.Double[0.01, 1].Array[1, 8].Sample(parts =>
    {
        double sum = parts.Sum();
        MixContents contents = Formula.Named("waters").Base(b =>
        {
            for (int i = 0; i < parts.Length; i++)
            {
                string label = "water " + i;
                b.Share(Pantry.WaterDistilled, parts[i] / sum * 100, l => l.Labelled(label));
            }
        }).Build().Analyse().Assembled;

        Near(contents.Water.Value, 100);
        Near(contents.Ph!.Value, 5.8, 1e-4);
        Near(contents.SpecificHeatAt(At(20)).Value, 4.1766, 1e-4);
    }, iter: 300);

    [Fact]
    public void Without_pieces_the_continuous_mix_is_the_assembled_one() => s_mixes.Sample(mix =>
    {
        MixAnalysis analysis = Contents.Base(mix).Analyse();
        Contents.All(analysis.Continuous).Select(v => v.Value).Should().Equal(Contents.All(analysis.Assembled).Select(v => v.Value));
        analysis.Continuous.MassPerBase.Should().Be(analysis.Assembled.MassPerBase);
    }, iter: 100);

    [Fact]
    public void Values_lie_between_those_of_the_lines() => s_foods.Sample(mix =>
    {
        MixContents whole = Contents.Of(mix);
        MixContents[] alone = [.. mix.Select(m => Contents.Of(m.Ingredient))];
        void Between(Func<MixContents, double> of) => of(whole).Should().BeInRange(alone.Min(of) - 1e-6, alone.Max(of) + 1e-6);
        Between(c => c.Brix.Value);
        Between(c => c.DensityAt(At(20)).Value);
        Between(c => c.SpecificHeatAt(At(20)).Value);
    }, iter: 500);
}
