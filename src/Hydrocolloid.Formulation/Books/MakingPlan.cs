using Hydrocolloid.Formulation.Compatibility;
using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Books;

/// <summary>
/// Everything to make for an amount of one formula: a batch of each part, parts first, what was asked for last. Immutable, safe to share
/// between threads.
/// </summary>
public sealed class MakingPlan
{
    private readonly Dictionary<string, Batch> _byId;

    internal MakingPlan(ValueList<PlannedBatch> batches)
    {
        Batches = batches;
        _byId = batches.ToDictionary(b => b.Id, b => b.Batch, StringComparer.Ordinal);
    }

    /// <summary>The batches in the order in which they can be made; each part once, however many take of it.</summary>
    public ValueList<PlannedBatch> Batches { get; }

    /// <summary>What was asked for.</summary>
    public Batch Batch => Batches[Batches.Count - 1].Batch;

    /// <summary>What all batches take together, in the order in which they take it; what tops up boiled water is not in it.</summary>
    public ValueList<PlannedMass> Ingredients => ValueList<PlannedMass>.From(Batches.SelectMany(b => b.Batch.Lines)
        .Where(l => !_byId.ContainsKey(l.Line.Ingredient.Id))
        .GroupBy(l => l.Line.Ingredient.Id, StringComparer.Ordinal)
        .Select(g => new PlannedMass(g.First().Line.Ingredient, g.Sum(l => l.Grams))));

    /// <summary>What the rules find in the parts and in what was asked for.</summary>
    /// <param name="rules">The rules; null for the standard ones.</param>
    /// <returns>The findings, in the order of the batches.</returns>
    public ValueList<PlannedFinding> Review(RuleSet? rules = null)
        => ValueList<PlannedFinding>.From(Batches.SelectMany(b => b.Batch.Formula.Review(rules ?? RuleSet.Standard).Select(f => new PlannedFinding(b.Id, f))));

    /// <summary>The methods of all batches: the mise en place first, then what was asked for.</summary>
    /// <param name="options">Kitchen and wishes; null for the usual ones.</param>
    /// <returns>The methods, in the order of the batches.</returns>
    public ValueList<PlannedMethod> PlanMethods(MethodOptions? options = null)
        => ValueList<PlannedMethod>.From(Batches.Select(b => new PlannedMethod(b.Id, b.Batch.PlanMethod(options ?? MethodOptions.Default))));

    /// <summary>
    /// The same food as one formula: each line that stands for a part is taken apart into what the part was made from, and what boiled off
    /// the parts boils off the whole. For declarations, for analysis where something is not known of a line, and for systems that
    /// know no parts. What straining, transfer and trimming of a part lost is not in it: see <see cref="Ingredients"/>.
    /// </summary>
    /// <returns>The batch. Lines of a part carry the label of its line, a slash and the id of the ingredient.</returns>
    /// <exception cref="FormulaException">The lines cannot be put as one formula.</exception>
    public Batch Flatten()
    {
        var contents = new Dictionary<string, FlatPart>(StringComparer.Ordinal);
        foreach (PlannedBatch planned in Batches.Where(b => !b.UsedBy.IsEmpty))
        {
            contents.Add(planned.Id, FlatPart.Of(planned.Batch, contents));
        }

        Batch whole = Batch;
        double evaporated = whole.Losses.ToppedUp ? 0 : whole.EvaporatedGrams;
        FormulaBuilder builder = Formula.Named(whole.Formula.Name).Serve(whole.Formula.Service).WithExtensions(whole.Formula.Extensions);
        var labels = new HashSet<string>(StringComparer.Ordinal);
        void Add(BatchLine line, Action<Ingredient, double, LineDetails> add)
        {
            LineDetails details = line.Line.Details;
            if (!contents.TryGetValue(line.Line.Ingredient.Id, out FlatPart? part))
            {
                labels.Add(line.Line.Label);
                add(line.Line.Ingredient, line.Grams, details);
                return;
            }

            evaporated += line.Grams * part.EvaporatedPerGram;
            foreach (FlatLine flat in part.Lines)
            {
                string label = $"{line.Line.Label}/{flat.Ingredient.Id}";
                for (int again = 2; !labels.Add(label); again++)
                {
                    label = $"{line.Line.Label}/{flat.Ingredient.Id}-{Numbers.Exact(again)}";
                }

                LineForm form = details.Form == LineForm.Pieces ? LineForm.Pieces : flat.Form;
                add(flat.Ingredient, line.Grams * flat.PerGram, new LineDetails { Label = label, Form = form, Measured = flat.Measured });
            }
        }

        foreach (BatchLine line in whole.Lines.Where(l => l.Line.IsBase))
        {
            Add(line, (ingredient, grams, details) => builder.BaseLines.Add(new DraftLine(ingredient, double.NaN, grams, DoseReference.Base, details)));
        }

        foreach (IGrouping<int, BatchLine> phase in whole.Lines.Where(l => !l.Line.IsBase).GroupBy(l => l.Line.PhaseIndex))
        {
            var draft = new DraftPhase(phase.First().Line.Phase);
            foreach (BatchLine line in phase)
            {
                Add(line, (ingredient, grams, details) => draft.Lines.Add(new DraftLine(ingredient, double.NaN, grams, DoseReference.Base, details)));
            }

            builder.PhaseDrafts.Add(draft);
        }

        ProcessPlan process = whole.Formula.Process;
        Losses losses = whole.Losses with { Evaporation = Loss.Of(Mass.FromGrams(evaporated)), ToppedUp = false };
        Formula formula = builder.Process(process with { Losses = losses, Carriers = ValueList<string>.From(process.Carriers.Where(labels.Contains)) }).Build();
        Yield yield = whole.Yield is { Count: not null, Mould: null, Basis: YieldBasis.Finished } ? whole.Yield
            : Yield.Assembled(Mass.FromGrams(whole.AssembledGrams - (whole.Losses.ToppedUp ? 0 : whole.EvaporatedGrams) + evaporated));
        return formula.ScaleTo(yield, losses);
    }

    /// <summary>The batches, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Batches);
}
