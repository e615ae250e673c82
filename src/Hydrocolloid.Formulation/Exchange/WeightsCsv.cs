using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>Reads a plain CSV of weights: <c>name</c>, <c>amount</c>, <c>unit</c> (docs/exchange.md).</summary>
public static class WeightsCsv
{
    private static readonly string[] s_plainColumns = ["name", "amount", "unit"];

    /// <summary>Reads the bytes of a file. Nothing is guessed: separator, decimal sign and encoding are those of the dialect.</summary>
    /// <param name="file">The bytes.</param>
    /// <param name="dialect">How the file is written.</param>
    /// <param name="catalogue">Where names and ids are looked up; null for the built-in catalogue.</param>
    /// <param name="hasHeader">False if the first record is a weight: then the fields are name, amount and unit.</param>
    /// <returns>The weights, and every record that could not be read.</returns>
    public static WeightsReading Read(byte[] file, CsvDialect dialect, Catalogue? catalogue = null, bool hasHeader = true)
    {
        (string? text, string error) = Guard.NotNull(dialect).ToText(Guard.NotNull(file));
        return text is not null ? ReadText(text, dialect, catalogue, hasHeader)
            : new WeightsReading(default, ValueList<CsvProblem>.Own([new CsvProblem("encoding", 0, null, error)]));
    }

    /// <summary>Reads a text. Nothing is guessed: separator and decimal sign are those of the dialect.</summary>
    /// <param name="text">The text.</param>
    /// <param name="dialect">How the text is written.</param>
    /// <param name="catalogue">Where names and ids are looked up; null for the built-in catalogue.</param>
    /// <param name="hasHeader">False if the first record is a weight: then the fields are name, amount and unit.</param>
    /// <returns>The weights, and every record that could not be read.</returns>
    public static WeightsReading ReadText(string text, CsvDialect dialect, Catalogue? catalogue = null, bool hasHeader = true)
    {
        List<CsvRecord> records = CsvReader.Read(Guard.NotNull(text), Guard.NotNull(dialect).Separator);
        var problems = new List<CsvProblem>();
        if (records.Count == 0)
        {
            problems.Add(new CsvProblem("empty", 0, null, "There is no record."));
            return new WeightsReading(default, ValueList<CsvProblem>.From(problems));
        }

        string[] columns = hasHeader ? [.. records[0].Fields.Select(f => f.Trim().ToLowerInvariant())] : s_plainColumns;
        if (hasHeader && HeaderProblem(records[0], columns, dialect) is { } problem)
        {
            return new WeightsReading(default, ValueList<CsvProblem>.Own([problem]));
        }

        var rows = new List<WeightRow>();
        foreach (CsvRecord record in records.Skip(hasHeader ? 1 : 0))
        {
            if (new RecordReader(record, columns, dialect, catalogue ?? Catalogue.BuiltIn, problems).Read() is { } row)
            {
                rows.Add(row);
            }
        }

        return new WeightsReading(ValueList<WeightRow>.From(rows), ValueList<CsvProblem>.From(problems));
    }

    private static CsvProblem? HeaderProblem(CsvRecord header, string[] columns, CsvDialect dialect)
    {
        if (header.Error is not null)
        {
            return new CsvProblem("quoting", header.Line, null, header.Error);
        }

        if (columns.Length == 1 && columns[0].IndexOfAny([',', ';', '\t', '|']) >= 0)
        {
            return new CsvProblem("dialect-mismatch", header.Line, null, $"The header is one field, {UnitTable.Quote(header.Fields[0])}: the file seems to have another separator than {dialect}.");
        }

        string? missing = !columns.Contains("name") && !columns.Contains("ingredient") ? "name" : s_plainColumns.Skip(1).FirstOrDefault(c => !columns.Contains(c));
        string? twice = columns.GroupBy(c => c, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1 && g.Key.Length > 0)?.Key;
        return missing is not null ? new CsvProblem("column-missing", header.Line, missing, $"The header has no column '{missing}'.")
            : twice is not null ? new CsvProblem("column-repeated", header.Line, twice, $"The header has the column '{twice}' twice.") : null;
    }

    /// <summary>Reads one record; each thing that is wrong with it is a problem.</summary>
    private sealed class RecordReader(CsvRecord record, string[] columns, CsvDialect dialect, Catalogue catalogue, List<CsvProblem> problems)
    {
        public WeightRow? Read()
        {
            if (record.Error is not null)
            {
                return Refuse("quoting", null, record.Error);
            }

            if (record.Fields.Count != columns.Length)
            {
                return Refuse("field-count", null, $"The record has {Numbers.Exact(record.Fields.Count)} fields where {Numbers.Exact(columns.Length)} are expected; read with {dialect}.");
            }

            if (Field("format") is { Length: > 0 } format && format != BatchCsv.Format)
            {
                return Refuse("format-unknown", "format", $"{UnitTable.Quote(format)} is not {BatchCsv.Format}, which is what is read here.");
            }

            Ingredient? ingredient = Ingredient();
            double? grams = ingredient is null ? null : Grams(ingredient);
            string form = Field("form") ?? "";
            LineForm read = LineForm.Mix;
            if (form.Length > 0 && !Words.TryForm(form, out read))
            {
                Refuse("form-unknown", "form", $"{UnitTable.Quote(form)} is not one of: {Words.FormList}.");
                return null;
            }

            return grams is not { } g ? null
                : new WeightRow(record.Line, ingredient!, g) { Phase = Field("phase"), Label = Field("label") is { } l && !string.IsNullOrWhiteSpace(l) && l != ingredient!.Id ? l : null, Form = read };
        }

        private string? Field(string column)
        {
            int index = Array.IndexOf(columns, column);
            return index < 0 ? null : CsvGuard.Off(record.Fields[index]);
        }

        private WeightRow? Refuse(string id, string? column, string message)
        {
            problems.Add(new CsvProblem(id, record.Line, column, message));
            return null;
        }

        private Ingredient? Ingredient()
        {
            if (Field("ingredient") is { Length: > 0 } id)
            {
                if (!catalogue.TryGet(id, out Ingredient? known))
                {
                    Refuse("name-unknown", "ingredient", $"No ingredient has the id {UnitTable.Quote(id)}: add your own to the catalogue.");
                }

                return known;
            }

            string name = Field("name")?.Trim() ?? "";
            if (catalogue.TryGet(name, out Ingredient? exact))
            {
                return exact;
            }

            IReadOnlyList<Ingredient> found = catalogue.Find(name);
            if (found.Count != 1)
            {
                Refuse(found.Count == 0 ? "name-unknown" : "name-ambiguous", "name", found.Count == 0
                    ? $"No ingredient is called {UnitTable.Quote(name)}: add your own to the catalogue."
                    : $"{UnitTable.Quote(name)} may be {string.Join(" or ", found.Select(i => i.Id))}: write the id.");
            }

            return found.Count == 1 ? found[0] : null;
        }

        private double? Grams(Ingredient ingredient)
        {
            string amount = Field("amount")!.Trim(), unit = Field("unit")!.Trim();
            if (!QuantityText.TryParseNumber(amount, dialect.Numbers, out _, out string error))
            {
                Refuse("amount-unreadable", "amount", error);
                return null;
            }

            unit = UnitCodes.TryFind(unit, out KitchenUnit? coded) ? coded.Code : unit;
            if (KitchenUnit.TryFind(QuantityKind.Volume, unit, out KitchenUnit? volume, out string volumeError))
            {
                return FromVolume(ingredient, $"{amount} {volume!.Code}");
            }

            if (!KitchenUnit.TryFind(QuantityKind.Mass, unit, out _, out error))
            {
                Refuse("unit-unknown", "unit", $"{error} {volumeError}");
                return null;
            }

            if (!QuantityText.TryParseMass($"{amount} {unit}", dialect.Numbers, out Mass mass, out error))
            {
                Refuse("amount-out-of-range", "amount", error);
                return null;
            }

            return mass.Grams;
        }

        private double? FromVolume(Ingredient ingredient, string text)
        {
            if (!QuantityText.TryParseVolume(text, dialect.Numbers, out Volume volume, out string error))
            {
                Refuse("amount-out-of-range", "amount", error);
            }
            else if (ingredient.DensityKgPerM3 is not { } density)
            {
                Refuse("density-unknown", "unit", $"The density of {ingredient.Name} is not known, so {text} cannot be weighed.");
            }
            else if (volume.Milliliters * density.Value / 1000 is var grams && grams > Guard.MaxMassGrams)
            {
                Refuse("amount-out-of-range", "amount", $"{text} is more than {Numbers.Exact(Guard.MaxMassGrams)} g.");
            }
            else
            {
                return grams;
            }

            return null;
        }
    }
}
