using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>A batch as CSV, one record a line of the formula, format <c>batch-csv/1</c> (docs/exchange.md). The same bytes on every machine.</summary>
public static class BatchCsv
{
    /// <summary>What stands in the column <c>format</c>.</summary>
    public const string Format = "batch-csv/1";

    internal static readonly string[] Columns =
    [
        "format", "formula", "line", "phase", "label", "ingredient", "name", "form", "e_numbers", "percent_of_total", "amount", "unit", "allergens", "allergen_status",
    ];

    /// <summary>Writes a batch; <see cref="WeightsCsv"/> reads it back.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="dialect">How the file is written.</param>
    /// <returns>The bytes of the file, its header included.</returns>
    /// <exception cref="ArgumentException">The encoding has no bytes for a sign of a name.</exception>
    public static byte[] Write(Batch batch, CsvDialect dialect)
    {
        Guard.NotNull(batch);
        var csv = new CsvWriter(Guard.NotNull(dialect));
        foreach (string column in Columns)
        {
            csv.Text(column);
        }

        csv.EndRecord();
        foreach (BatchLine line in batch.Lines)
        {
            Ingredient ingredient = line.Line.Ingredient;
            csv.Text(Format).Text(batch.Formula.Name).Number(line.Line.Index + 1).Text(line.Line.IsBase ? "" : line.Line.Phase)
                .Text(line.Line.Label).Text(ingredient.Id).Text(ingredient.Name).Text(Words.Of(line.Line.Details.Form))
                .Text(string.Join(" ", ingredient.Additive?.ENumbers ?? default)).Number(batch.Formula.Proportions.PercentOfTotal(line.Line))
                .Number(line.Grams).Text("g")
                .Text(string.Join(" ", (ingredient.Allergens?.Value ?? default).Select(Words.Of))).Text(AllergenStatus.Of(ingredient));
            csv.EndRecord();
        }

        return csv.ToBytes();
    }
}
