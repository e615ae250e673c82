using CsCheck;
using Hydrocolloid.Formulation.Tests.Formulas;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Properties;

public class RobustnessProperties
{
    private static readonly Gen<(int, double)[][]> s_phases = Gen.Select(Gen.Int[0, 4], RandomFormulas.AnyDouble).Array[0, 3].Array[0, 3];

    [Fact]
    public void Draft_of_any_doubles_is_built_or_refused_with_problems_and_every_result_is_finite()
        => Gen.Select(RandomFormulas.AnyDouble.Array[0, 3], s_phases, Gen.Bool).Sample((shares, phases, whole) =>
        {
            FormulaBuilder builder = RandomFormulas.Draft(whole ? [100] : shares, phases);
            if (!builder.TryBuild(out Formula? formula, out ValueList<FormulaProblem> problems))
            {
                Refuses<FormulaException>(() => builder.Build());
                return problems.Count > 0 && problems.All(p => p.Id.Length > 0 && p.Message.Length > 0);
            }

            return problems.IsEmpty && IsFinite(formula) && formula.Equals(formula.ToBuilder().Build());
        }, iter: 20_000);

    [Fact]
    public void Any_yield_and_losses_give_a_finite_batch_or_a_refusal()
        => Gen.Select(RandomFormulas.Possible, RandomFormulas.AnyDouble, RandomFormulas.AnyDouble, RandomFormulas.AnyDouble, Gen.Int[0, 3], Gen.Bool)
            .Sample((formula, grams, evaporation, trimming, basis, toppedUp) =>
            {
                try
                {
                    Mass mass = Mass.FromGrams(grams);
                    Yield yield = basis switch
                    {
                        0 => Yield.Finished(mass),
                        1 => Yield.Assembled(mass),
                        2 => Yield.OfBase(mass),
                        _ => Yield.FromStocks(new Stock("part-0", mass)),
                    };
                    var losses = new Losses { Evaporation = Loss.Percent(evaporation), Trimming = Loss.Of(Mass.FromGrams(trimming)), ToppedUp = toppedUp };
                    Batch batch = formula.ScaleTo(yield, losses);
                    WeighSheet sheet = batch.WeighOn(Balance.WithDivision(Mass.FromGrams(0.1)));
                    return double.IsFinite(batch.AssembledMass.Grams) && batch.FinishedMass.Grams > 0 && batch.EvaporatedWater.Grams >= 0
                        && batch.Lines.All(l => double.IsFinite(l.Mass.Grams) && l.Mass.Grams >= 0)
                        && sheet.Lines.All(l => double.IsFinite(l.RoundedDose?.PercentByMass ?? 0) && double.IsFinite(l.ErrorPercent ?? 0));
                }
                catch (Exception e) when (e is FormulaException or ArgumentException)
                {
                    return true;
                }
            }, iter: 10_000);

    [Fact]
    public void Weights_of_any_size_are_built_or_refused()
        => Gen.Select(RandomFormulas.AnyDouble, RandomFormulas.AnyDouble, Gen.Int[0, 3]).Sample((water, agent, kind) =>
        {
            try
            {
                Formula formula = Formula.Named("weighed").Base(b => b.Weigh(Pantry.Water, Mass.FromGrams(water)))
                    .Then("gel", p => p.Weigh(Hydrocolloids.Agar, Mass.FromGrams(agent), RandomFormulas.Reference(kind))).Build();
                return IsFinite(formula) && formula.WithName("other").Lines.Equals(formula.Lines);
            }
            catch (Exception e) when (e is FormulaException or ArgumentException)
            {
                return true;
            }
        });

    [Fact]
    public void Expressing_on_any_reference_is_finite_or_refused()
        => Gen.Select(s_phases, Gen.Int[0, 4]).Sample((phases, kind) =>
        {
            if (!RandomFormulas.Draft([100], phases).TryBuild(out Formula? formula, out _))
            {
                return true;
            }

            return formula.Lines.All(line =>
            {
                try
                {
                    return double.IsFinite(formula.Express(line.Label, RandomFormulas.Reference(kind)).PercentByMass);
                }
                catch (FormulaException)
                {
                    return true;
                }
            });
        }, iter: 10_000);

    private static bool IsFinite(Formula formula)
    {
        Proportions p = formula.Proportions;
        return double.IsFinite(p.Total) && double.IsFinite(p.ContinuousMix) && double.IsFinite(p.ContinuousWater ?? 0)
            && formula.Lines.All(l => double.IsFinite(l.Dose.PercentByMass) && double.IsFinite(p.MassOf(l)) && p.MassOf(l) >= 0
                && double.IsFinite(p.PercentOfTotal(l)) && double.IsFinite(p.PercentOfContinuousMix(l)) && double.IsFinite(p.PercentOfContinuousWater(l) ?? 0))
            && Enumerable.Range(0, formula.Phases.Count + 1).All(i => double.IsFinite(p.PrecedingMass(i)) && double.IsFinite(p.PrecedingWater(i) ?? 0));
    }

    private static void Refuses<T>(Action act)
        where T : Exception
        => act.Should().Throw<T>();
}
