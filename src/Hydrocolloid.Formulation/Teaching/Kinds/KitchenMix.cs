using Hydrocolloid.Formulation.Internal;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>The formula of an exercise, drawn or a teacher's own, with the line that is asked for; and the mass of that line, with or without mistakes.</summary>
internal sealed class KitchenMix(Formula formula, string label)
{
    private static readonly Ingredient[] s_bases = [Pantry.Water, Pantry.PearJuice, Pantry.AppleJuice, Pantry.CucumberJuice, Pantry.WholeMilk];

    public static readonly Ingredient[] UsualAgents =
        [Hydrocolloids.Agar, Hydrocolloids.GelatinTypeA, Hydrocolloids.GellanLowAcyl, Hydrocolloids.CarrageenanKappa, Hydrocolloids.CarrageenanIota];

    private readonly Dictionary<(double Percent, DoseReferenceKind Reference, bool SugarForgotten, Yield Yield, Losses Losses), WorkedSolution?> _solved = [];

    public Formula Formula { get; } = formula;

    public string Label { get; } = label;

    public FormulaLine Line => Formula.Line(Label);

    public string Name => InText(Line.Ingredient);

    /// <summary>A base, sugar (and from the second level of some kinds salt), and an agent on a reference; or a teacher's own.</summary>
    public static KitchenMix? Draw(ExerciseDraw draw, DoseReference reference, bool sugar = true, bool salt = false)
    {
        if (!draw.Settings.Formulas.IsEmpty)
        {
            Formula own = draw.Pick(draw.Settings.Formulas);
            FormulaLine[] doses = [.. own.Lines.Where(l => !l.IsBase && l.Dose.Reference.Kind != DoseReferenceKind.Line
                && l.Dose.Reference.Kind == DoseReferenceKind.Water == (reference.Kind == DoseReferenceKind.Water)
                && (draw.Settings.Agents.IsEmpty || draw.Settings.Agents.Any(a => a.Id == l.Ingredient.Id)))];
            if (doses.Length == 0)
            {
                return null;
            }

            FormulaLine line = draw.Pick(doses);
            draw.State("dose", line.Dose.PercentByMass, "%");
            draw.Name("line", line.Label);
            return new KitchenMix(own, line.Label);
        }

        if (draw.Agent(UsualAgents) is not { } agent)
        {
            return null;
        }

        Ingredient liquid = draw.Pick(s_bases);
        draw.Name("base", liquid.Id);
        FormulaBuilder builder = Formula.Named("Exercise").Base(b => b.Share(liquid, 100));
        if (sugar)
        {
            double sugarPercent = draw.Number("sugar", 5, 30, draw.Settings.WithCalculator ? 1 : 5, "%");
            double saltPercent = salt ? draw.Number("salt", 0.5, 1.5, 0.5, "%") : 0;
            builder = builder.Then("season", p =>
            {
                p.Add(Pantry.Sucrose, Dose.Percent(sugarPercent).OfBase);
                if (salt)
                {
                    p.Add(Pantry.Salt, Dose.Percent(saltPercent).OfBase);
                }
            });
        }

        double percent = draw.Dose("dose", agent);
        return new KitchenMix(builder.Then("gel", p => p.Add(agent, Dose.Percent(percent).Of(reference))).Build(), agent.Id);
    }

    /// <summary>The lines after the base in words.</summary>
    public string Additions => string.Join("; ", Formula.Lines.Where(l => !l.IsBase).Select(l => $"{InText(l.Ingredient)}, {l.Dose}"));

    /// <summary>The base in words.</summary>
    public string BaseName => Formula.Base.Parts.Count == 1 ? InText(Formula.Base.Parts[0].Ingredient) : "the base";

    /// <summary>A name inside a sentence: "gelatin, type A".</summary>
    public static string InText(Ingredient ingredient) => char.ToLowerInvariant(ingredient.Name[0]) + ingredient.Name.Substring(1);

    /// <summary>The lines after the base weighed out for a base, in whole tenths of a gram, each stated; null if one is too small for that.</summary>
    public (FormulaLine Line, double Grams)[]? Weighed(ExerciseDraw draw, double baseGrams, Func<FormulaLine, bool> which)
    {
        FormulaLine[] additions = [.. Formula.Lines.Where(l => !l.IsBase && which(l))];
        var weighed = new (FormulaLine Line, double Grams)[additions.Length];
        for (int i = 0; i < additions.Length; i++)
        {
            double grams = Numbers.RoundHalfAway(Formula.Proportions.MassOf(additions[i]) * baseGrams, 1);
            if (grams <= 0)
            {
                return null;
            }

            weighed[i] = (additions[i], draw.State(additions[i].Label + "-mass", grams, "g"));
        }

        return weighed;
    }

    /// <summary>The formula that those weights make.</summary>
    public Formula FromWeights(double baseGrams, (FormulaLine Line, double Grams)[] weighed)
    {
        FormulaBuilder builder = Formula.Named("Weighed").Base(b =>
        {
            foreach (BasePart part in Formula.Base.Parts)
            {
                b.Weigh(part.Ingredient, UnitsNet.Mass.FromGrams(part.PercentOfBase / 100 * baseGrams), l => l.Labelled(part.Label));
            }
        });
        foreach (IGrouping<int, (FormulaLine Line, double Grams)> phase in weighed.GroupBy(w => w.Line.PhaseIndex))
        {
            builder = builder.Then(Formula.Phases[phase.Key].Name, p =>
            {
                foreach ((FormulaLine line, double grams) in phase)
                {
                    p.Weigh(line.Ingredient, UnitsNet.Mass.FromGrams(grams), DoseReference.Base, l => l.Labelled(line.Label));
                }
            });
        }

        return builder.Build();
    }

    /// <summary>How much water each line before the one asked for holds, in words; empty if one is not known.</summary>
    public string WaterText(ExerciseDraw draw)
    {
        FormulaLine[] before = [.. Formula.Lines.Where(l => l.PhaseIndex < Line.PhaseIndex)];
        return before.Any(l => l.Ingredient.WaterPercent is null) ? ""
            : string.Join("; ", before.Select(l => $"{InText(l.Ingredient)} {Numbers.Significant(draw.State(l.Label + "-water", l.Ingredient.WaterPercent!.Value, "%"), 6)} %"));
    }

    /// <summary>The mistakes about a dose that can be made here.</summary>
    public Misconception[] DoseMistakes(params Misconception[] more)
    {
        DoseReferenceKind kind = Line.Dose.Reference.Kind;
        var all = new List<Misconception> { DecimalPlace, NotPerHundred };
        if (kind != DoseReferenceKind.Base)
        {
            all.Add(PercentOfBase);
        }

        if (kind == DoseReferenceKind.Base)
        {
            all.Add(PercentOfTotal);
        }

        if (kind == DoseReferenceKind.Preceding)
        {
            all.Add(PercentOfTotal);
            if (IsSugared)
            {
                all.Add(ForgotSugar);
            }
        }

        if (kind == DoseReferenceKind.Total)
        {
            all.Add(PercentOfPreceding);
        }

        if (kind == DoseReferenceKind.Water)
        {
            all.Add(PercentOfPreceding);
        }

        all.AddRange(more);
        return [.. all];
    }

    /// <summary>The mass of the line at a size; null where the mistakes do not go together or leave no formula.</summary>
    public WorkedSolution? Mass(Yield yield, Losses losses, Func<Misconception, bool> made, params SolutionStep[] conversion)
    {
        DoseReference[] wrong = [.. References(made)];
        if (wrong.Length > 1 || (wrong.Length > 0 && (made(ForgotSugar) || made(RoundedEarly))))
        {
            return null;
        }

        double percent = made(DecimalPlace) ? Line.Dose.PercentByMass / 10 : Line.Dose.PercentByMass;
        DoseReference reference = wrong.Length > 0 ? wrong[0] : Line.Dose.Reference;
        // Mistakes made after the dose is weighed out share its derivation.
        var key = (percent, reference.Kind, made(ForgotSugar), yield, losses);
        if (!_solved.TryGetValue(key, out WorkedSolution? weighed))
        {
            weighed = Weighed(Dose.Percent(percent).Of(reference), made(ForgotSugar), yield, losses);
            _solved.Add(key, weighed);
        }

        if (weighed is null)
        {
            return null;
        }

        WorkedSolution solution = weighed.After(conversion);
        if (made(RoundedEarly))
        {
            // What the percentage is taken of, cut to two digits before it is used.
            double whole = solution.Value / percent * 100, rounded = TwoDigits(whole);
            solution = solution.Then(new SolutionStep("Rounded on the way.", Label, $"{Numbers.Significant(percent, 6)}/100 × {Numbers.Exact(rounded)} g", percent / 100 * rounded, "g"));
        }

        return made(NotPerHundred)
            ? solution.Then(new SolutionStep("The percentage used as it stands.", Label, $"100 × {Numbers.Significant(solution.Value, 6)} g", solution.Value * 100, "g"))
            : solution;
    }

    private WorkedSolution? Weighed(Dose dose, bool sugarForgotten, Yield yield, Losses losses)
    {
        try
        {
            Formula asMade = dose == Line.Dose ? Formula : Formula.WithDose(Label, dose);
            asMade = sugarForgotten ? asMade.Without(Pantry.Sucrose.Id) : asMade;
            return asMade.TryScaleTo(yield, losses, out Batch? batch, out _) ? WorkedSolution.From(batch.Explain(Label)) : null;
        }
        catch (FormulaException)
        {
            return null;
        }
    }

    private bool IsSugared => Formula.FindLine(Pantry.Sucrose.Id) is { IsBase: false } sugar && sugar.PhaseIndex < Line.PhaseIndex && Label != sugar.Label;

    private static double TwoDigits(double value)
    {
        double unit = Math.Pow(10, Math.Floor(Math.Log10(value)) - 1);
        return Math.Round(value / unit, MidpointRounding.AwayFromZero) * unit;
    }

    private static IEnumerable<DoseReference> References(Func<Misconception, bool> made)
    {
        if (made(PercentOfBase))
        {
            yield return DoseReference.Base;
        }

        if (made(PercentOfPreceding))
        {
            yield return DoseReference.Preceding;
        }

        if (made(PercentOfTotal))
        {
            yield return DoseReference.Total;
        }
    }
}
