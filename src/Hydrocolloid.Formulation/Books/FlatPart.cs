namespace Hydrocolloid.Formulation.Books;

/// <summary>A part taken apart to the last ingredient.</summary>
/// <param name="Lines">What went into 1 g of it, every ingredient once for each form and lot.</param>
/// <param name="EvaporatedPerGram">The water that boiled off for 1 g of it, g; that of its own parts included.</param>
internal sealed record FlatPart(List<FlatLine> Lines, double EvaporatedPerGram)
{
    /// <summary>Takes a batch apart whose own parts have been taken apart before: each once, however many are made with it.</summary>
    public static FlatPart Of(Batch batch, Dictionary<string, FlatPart> parts)
    {
        double evaporated = batch.Losses.ToppedUp ? 0 : batch.EvaporatedGrams;
        double food = batch.AssembledGrams - evaporated;
        var lines = new List<FlatLine>();
        foreach (BatchLine line in batch.Lines)
        {
            LineDetails details = line.Line.Details;
            if (!parts.TryGetValue(line.Line.Ingredient.Id, out FlatPart? part))
            {
                lines.Add(new FlatLine(line.Line.Ingredient, details.Form, details.Measured, line.Grams / food));
                continue;
            }

            evaporated += line.Grams * part.EvaporatedPerGram;
            lines.AddRange(part.Lines.Select(l => l with { Form = details.Form == LineForm.Pieces ? LineForm.Pieces : l.Form, PerGram = l.PerGram * line.Grams / food }));
        }

        return new FlatPart([.. lines.GroupBy(l => l with { PerGram = 0 }).Select(g => g.Key with { PerGram = g.Sum(l => l.PerGram) })], evaporated / food);
    }
}
