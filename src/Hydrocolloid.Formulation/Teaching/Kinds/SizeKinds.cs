using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;
using static Hydrocolloid.Formulation.Teaching.Misconception;

namespace Hydrocolloid.Formulation.Teaching.Kinds;

/// <summary>Batches to a size: portions, moulds, the ingredient that runs out, what a balance can show.</summary>
internal static class SizeKinds
{
    public static ExerciseKind[] All =>
    [
        new("portions", "Portions and losses", 3, Portions, usesFormula: true),
        new("moulds", "Filling moulds", 2, Moulds, needsCalculator: true),
        new("limiting", "The ingredient that runs out first", 2, Limiting, usesFormula: true),
        new("balance", "What a balance can show", 2, OnBalance, usesFormula: true),
    ];

    private static readonly AnswerForm s_grams = AnswerForm.Number(QuantityKind.Mass, "g", 4);

    private static string G(double grams) => Numbers.Significant(grams, 6) + " g";

    // 1: a loss in per cent; 2: so much left in each mould; 3: the agent for portions with a loss.
    private static ExerciseDraft? Portions(ExerciseDraw draw)
    {
        if (KitchenMix.Draw(draw, DoseReference.Preceding) is not { } mix)
        {
            return null;
        }

        int count = (int)draw.Number("portions", 12, 120, draw.Settings.WithCalculator ? 6 : 10, "");
        double each = draw.Number("portion-mass", 25, 90, 5, "g");
        var portions = UnitsNet.Mass.FromGrams(each);
        string start = $"You need {Numbers.Exact(count)} finished portions of {Numbers.Exact(each)} g.";
        if (draw.Level == 2)
        {
            double left = draw.Number("left-each", 1, 5, 1, "g");
            return count == each ? null : new ExerciseDraft(
                start + $" Each portion leaves {G(left)} of gel behind in its mould. What mass must be made in all?", s_grams,
                made =>
                {
                    double n = made(SwappedPortions) ? each : count, m = made(SwappedPortions) ? count : each, kept = made(LossForgotten) ? 0 : left;
                    Batch batch = mix.Formula.ScaleTo(Yield.Portions((int)n, UnitsNet.Mass.FromGrams(m)), new Losses { Trimming = Loss.Of(UnitsNet.Mass.FromGrams(n * kept)) });
                    return WorkedSolution.Of(
                        new SolutionStep("Each portion needs what is served and what stays behind.", "each", $"{G(m)} + {G(kept)}", m + kept, "g"),
                        new SolutionStep("Multiply by how many there are.", "assembled", $"{Numbers.Exact(n)} × {G(m + kept)}", batch.AssembledMass.Grams, "g"));
                }, LossForgotten, SwappedPortions);
        }

        double loss = draw.Number("loss", 4, 20, draw.Settings.WithCalculator ? 1 : 4, "%");
        Yield yield = Yield.Portions(count, portions);
        if (draw.Level == 3)
        {
            return new ExerciseDraft(
                start + $" {Numbers.Exact(loss)} % of the gel is lost in trimming. The base is {mix.BaseName}; added to it: {mix.Additions}. How many grams of {mix.Name} do you weigh?",
                AnswerForm.Number(QuantityKind.Mass, "g"),
                made => LossYield(yield, loss, made) is var (target, losses) ? mix.Mass(target, losses, made) : null, mix.DoseMistakes(LossAdded, LossForgotten));
        }

        return new ExerciseDraft(
            start + $" {Numbers.Exact(loss)} % of the gel is lost in trimming. What mass must be made?", s_grams,
            made =>
            {
                if (LossYield(yield, loss, made) is not var (target, losses))
                {
                    return null;
                }

                Batch batch = mix.Formula.ScaleTo(target, losses);
                string served = G(count * each);
                return WorkedSolution.Of(
                    new SolutionStep("Multiply the mass of one by how many there are.", "finished", $"{Numbers.Exact(count)} × {G(each)}", count * each, "g"),
                    new SolutionStep("What is left is 1 less the loss: divide by it.", "assembled",
                        made(LossForgotten) ? served : made(LossAdded) ? $"{served} × (1 + {Numbers.Exact(loss)}/100)" : $"{served} / (1 - {Numbers.Exact(loss)}/100)", batch.AssembledMass.Grams, "g"));
            }, LossAdded, LossForgotten);
    }

    private static (Yield Target, Losses Losses)? LossYield(Yield yield, double loss, Func<Misconception, bool> made)
    {
        double finished = yield.Mass.Grams * yield.Count!.Value;
        return made(LossAdded) && made(LossForgotten) ? null
            : made(LossAdded) ? (Yield.Assembled(UnitsNet.Mass.FromGrams(finished * (1 + loss / 100))), Losses.None)
            : made(LossForgotten) ? (Yield.Assembled(UnitsNet.Mass.FromGrams(finished)), Losses.None)
            : (yield, new Losses { Trimming = Loss.Percent(loss) });
    }

    // 1: the mass for so many cavities; 2: the volume of a shape.
    private static ExerciseDraft? Moulds(ExerciseDraw draw)
    {
        if (draw.Level == 2)
        {
            return VolumeOfShape(draw);
        }

        double sugar = draw.Number("sugar", 10, 60, 5, "%");
        int cavities = (int)draw.Number("cavities", 12, 96, 6, "");
        double millilitres = draw.Number("cavity-volume", 15, 90, 5, "mL");
        Formula syrup = Formula.Named("Syrup").Base(b => b.Share(Pantry.Water, 100)).Then("sweeten", p => p.Add(Pantry.Sucrose, Dose.Percent(sugar).OfBase)).Build();
        Batch batch = syrup.ScaleTo(Yield.Moulds(cavities, new MouldPlan("mould", Volume.FromMilliliters(millilitres))), Losses.None);
        double density = batch.Fill(new MouldPlan("mould", Volume.FromMilliliters(millilitres))).Density.Value / 1000;
        double rounded = draw.State("density", Numbers.RoundHalfAway(density, 4), "g/mL");
        string stated = Numbers.Fixed(rounded, 4);
        // The board counts with the density as it is stated; the batch of the library must agree.
        return Math.Abs(cavities * millilitres * rounded / batch.AssembledMass.Grams - 1) > 1e-4 ? null : new ExerciseDraft(
            $"{Numbers.Exact(cavities)} cavities of {Numbers.Exact(millilitres)} mL each are filled with a mix of water and sugar ({Numbers.Exact(sugar)} % of the water). At the temperature of filling it has {stated} g/mL. What mass is needed?",
            AnswerForm.Number(QuantityKind.Mass, "g"),
            made => WorkedSolution.Of(
                new SolutionStep("Multiply the volume of one by how many there are.", "volume", $"{Numbers.Exact(cavities)} × {Numbers.Exact(millilitres)} mL", cavities * millilitres, "mL"),
                new SolutionStep("Mass is volume times density.", "mass", $"{Numbers.Exact(cavities * millilitres)} mL × {(made(VolumeForMass) ? "1" : stated)} g/mL", cavities * millilitres * (made(VolumeForMass) ? 1 : rounded), "g")),
            VolumeForMass);
    }

    private static ExerciseDraft VolumeOfShape(ExerciseDraw draw)
    {
        MouldForm form = draw.Pick(MouldForm.Cylinder, MouldForm.Hemisphere, MouldForm.Sphere);
        draw.Name("shape", Words.Of(form));
        double cavities = draw.Number("cavities", 6, 48, 6, ""), across = draw.Number("diameter", 20, 80, 5, "mm"), deep = form == MouldForm.Cylinder ? draw.Number("depth", 15, 60, 5, "mm") : 0;
        double VolumeAcross(double millimetres) => (form switch
        {
            MouldForm.Cylinder => MouldShape.Cylinder(Length.FromMillimeters(millimetres), Length.FromMillimeters(deep)),
            MouldForm.Hemisphere => MouldShape.Hemisphere(Length.FromMillimeters(millimetres)),
            _ => MouldShape.Sphere(Length.FromMillimeters(millimetres)),
        }).Volume.Milliliters;
        string shape = form switch { MouldForm.Cylinder => $"cylinders of {Numbers.Exact(across)} mm across, {Numbers.Exact(deep)} mm deep", MouldForm.Hemisphere => $"hemispheres of {Numbers.Exact(across)} mm across", _ => $"balls of {Numbers.Exact(across)} mm across" };
        return new ExerciseDraft(
            $"A tray has {Numbers.Exact(cavities)} cavities: {shape}. How many millilitres fill it?", AnswerForm.Number(QuantityKind.Volume, "mL"),
            made =>
            {
                double radius = made(DiameterForRadius) ? across : across / 2, each = VolumeAcross(2 * radius);
                string r = Numbers.Exact(radius / 10);
                return WorkedSolution.Of(
                    new SolutionStep("The radius is half of what it measures across; in cm, for a cm³ is a mL.", "radius", made(DiameterForRadius) ? Numbers.Exact(across / 10) : $"{Numbers.Exact(across / 10)} / 2", radius / 10, "cm"),
                    new SolutionStep(form == MouldForm.Cylinder ? "A cylinder holds the area of its circle times its depth." : form == MouldForm.Hemisphere ? "A half ball holds 2/3 π r³." : "A ball holds 4/3 π r³.", "one cavity",
                        form switch { MouldForm.Cylinder => $"π × {r}² × {Numbers.Exact(deep / 10)}", MouldForm.Hemisphere => $"2/3 × π × {r}³", _ => $"4/3 × π × {r}³" }, each, "mL"),
                    new SolutionStep("Multiply by how many there are.", "tray", $"{Numbers.Exact(cavities)} × {Numbers.Significant(each, 6)} mL", cavities * each, "mL"));
            }, DiameterForRadius);
    }

    // 1: both on the base; 2: the agent on everything so far.
    private static ExerciseDraft? Limiting(ExerciseDraw draw)
    {
        if (KitchenMix.Draw(draw, draw.Level == 1 ? DoseReference.Base : DoseReference.Preceding) is not { } mix)
        {
            return null;
        }

        FormulaLine[] additions = [.. mix.Formula.Lines.Where(l => !l.IsBase && (l.Label == mix.Label || l.Label == Pantry.Sucrose.Id))];
        if (additions.Length < 2)
        {
            additions = [.. mix.Formula.Lines.Where(l => !l.IsBase && mix.Formula.Proportions.MassOf(l) > 0).Take(2)];
        }

        if (additions.Length < 2)
        {
            return null;
        }

        var stocks = new Stock[additions.Length];
        for (int i = 0; i < stocks.Length; i++)
        {
            // Enough for 500 to 3000 g of base, in a mass that one would find in a jar.
            double share = mix.Formula.Proportions.MassOf(additions[i]);
            double unit = share > 0.03 ? 10 : share > 0.003 ? 1 : 0.5;
            double enough = draw.Number(additions[i].Label + "-stock", Math.Ceiling(500 * share / unit) * unit, Math.Max(Math.Ceiling(3000 * share / unit), Math.Ceiling(500 * share / unit) + 1) * unit, unit, "g");
            stocks[i] = new Stock(additions[i].Label, UnitsNet.Mass.FromGrams(enough));
        }

        double[] bases = [.. stocks.Select(s => mix.Formula.ScaleTo(Yield.FromStocks(s), Losses.None).BaseMass.Grams)];
        if (Math.Abs(bases[0] - bases[1]) < 0.02 * bases[0])
        {
            return null;
        }

        return new ExerciseDraft(
            $"The base is {mix.BaseName}, of which there is plenty; added to it: {mix.Additions}. In stock: {string.Join("; ", stocks.Select((s, i) => $"{G(s.Available.Grams)} of {KitchenMix.InText(additions[i].Ingredient)}"))}. How many grams of base can be made into gel?",
            AnswerForm.Number(QuantityKind.Mass, "g"),
            made =>
            {
                SolutionStep[] each = [.. stocks.Select((s, i) => new SolutionStep("Divide the stock by what one part of base takes.", "base by " + s.Label,
                    $"{G(s.Available.Grams)} / {Numbers.Significant(mix.Formula.Proportions.MassOf(additions[i]), 6)} per unit of base", bases[i], "g"))];
                double found = made(MostPlentiful) ? bases.Max() : mix.Formula.ScaleTo(Yield.FromStocks(stocks), Losses.None).BaseMass.Grams;
                return WorkedSolution.Of(each).Then(new SolutionStep("The smallest decides.", "base", "the smallest of these", found, "g"));
            }, MostPlentiful);
    }

    // 1: a mass as the balance shows it; 2: the smallest batch that it can weigh.
    private static ExerciseDraft? OnBalance(ExerciseDraw draw)
    {
        if (KitchenMix.Draw(draw, DoseReference.Base, sugar: false) is not { } mix)
        {
            return null;
        }

        double division = draw.Settings.Fixed.FirstOrDefault(f => f.Key == "division")?.Value ?? draw.Pick<double>(0.1, 0.5, 1, 2);
        draw.State("division", division, "g");
        Balance balance = Balance.WithDivision(UnitsNet.Mass.FromGrams(division));
        string percent = Numbers.Significant(mix.Line.Dose.PercentByMass, 6);
        if (draw.Level == 1)
        {
            double baseGrams = draw.Number("base-mass", 310, 2990, 10, "g");
            int decimals = division < 1 ? 1 : 0;
            return new ExerciseDraft(
                $"The {mix.Name} is {mix.Line.Dose}. The base weighs {G(baseGrams)}. What does a balance with a division of {G(division)} show when the nearest mass to that is weighed?",
                AnswerForm.Reading(QuantityKind.Mass, "g", decimals),
                made =>
                {
                    Batch batch = mix.Formula.ScaleTo(Yield.OfBase(UnitsNet.Mass.FromGrams(baseGrams)), Losses.None);
                    double exact = batch.MassOf(mix.Label).Grams;
                    double shown = made(CutOff) ? Math.Floor(exact / division + 1e-9) * division : balance.Round(UnitsNet.Mass.FromGrams(exact)).Grams;
                    return shown == 0 ? null : WorkedSolution.From(batch.Explain(mix.Label))
                        .Then(new SolutionStep("The balance shows the nearest multiple of its division; a half goes up.", "shown", $"{Numbers.Significant(exact / division, 6)} divisions of {G(division)}, rounded", shown, "g"));
                }, CutOff);
        }

        // A batch of more than 5 kg is not one to ask for.
        double tolerance = draw.Number("tolerance", 2, 10, 1, "%");
        bool tooLarge = balance.SmallestWithin(tolerance).Grams / mix.Formula.Proportions.MassOf(mix.Line) > 5000;
        return tooLarge || mix.Line.Dose.Reference.Kind != DoseReferenceKind.Base ? null : new ExerciseDraft(
            $"The {mix.Name} is {mix.Line.Dose}. The balance has a division of {G(division)}. Rounding may change the dose by at most {Numbers.Exact(tolerance)} %. What is the smallest base that can be made?",
            AnswerForm.Number(QuantityKind.Mass, "g"),
            made =>
            {
                Balance coarse = made(WholeDivision) ? Balance.WithDivision(UnitsNet.Mass.FromGrams(2 * division)) : balance;
                double smallest = coarse.SmallestWithin(tolerance).Grams, share = mix.Formula.Proportions.MassOf(mix.Line) / (made(DecimalPlace) ? 10 : 1);
                return WorkedSolution.Of(
                    new SolutionStep("Rounding is wrong by at most half a division; divide that by the share allowed.", "smallest mass", $"{G(coarse.Division.Grams)} / 2 / ({Numbers.Exact(tolerance)}/100)", smallest, "g"),
                    new SolutionStep("Divide by the share that the dose is.", "base", $"{G(smallest)} / ({percent}/100)", smallest / share, "g"));
            }, WholeDivision, DecimalPlace);
    }
}
