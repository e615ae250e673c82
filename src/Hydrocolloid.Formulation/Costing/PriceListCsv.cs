using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>
/// Price lists as CSV (RFC 4180) with a header line that names the columns, version 1 (docs/costing.md). Separator, decimal sign and
/// encoding are stated, never guessed; every row that cannot be read is reported. What is written reads back as an equal list.
/// </summary>
public static class PriceListCsv
{
    private static readonly string[] s_required = ["ingredient", "price", "currency", "per", "unit"];

    private static readonly string[] s_optional = ["pack", "pieceMassGrams", "densityKgPerM3", "yieldPercent", "supplier", "from", "to"];

    /// <summary>Writes a list, every column of it; masses in g, volumes in mL.</summary>
    /// <param name="list">The list.</param>
    /// <param name="dialect">How the file is written.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="ArgumentException">The encoding has no bytes for a sign of a supplier's name.</exception>
    public static byte[] Write(PriceList list, CsvDialect dialect)
    {
        var csv = new CsvWriter(Guard.NotNull(dialect));
        foreach (string column in s_required.Concat(s_optional))
        {
            csv.Text(column);
        }

        csv.EndRecord();
        foreach (Price price in Guard.NotNull(list).Prices)
        {
            CsvWriter Figure(decimal? value) => value is { } v ? csv.Exact(v) : csv.Text("");
            csv.Text(price.Ingredient).Exact(price.Amount.Amount).Text(list.Currency.Code).Exact(price.Quantity).Text(price.UnitCode).Text(price.IsPack ? "true" : "false");
            Figure(price.PieceGrams);
            Figure(price.DensityKgPerM3);
            Figure(price.YieldPercent == 100 ? null : price.YieldPercent);
            csv.Text(price.Supplier ?? "").Text(price.ValidFrom is { } from ? Days.Text(from) : "").Text(price.ValidTo is { } to ? Days.Text(to) : "");
            csv.EndRecord();
        }

        return csv.ToBytes();
    }

    /// <summary>Reads a list from the bytes of a file.</summary>
    /// <param name="file">The bytes.</param>
    /// <param name="currency">The currency of the list; a row in another one is refused.</param>
    /// <param name="dialect">How the file is written.</param>
    /// <returns>The list.</returns>
    /// <exception cref="CostingException">A row, or the header, cannot be read; the exception holds every problem.</exception>
    public static PriceList Read(byte[] file, Currency currency, CsvDialect dialect)
        => TryRead(file, currency, dialect, out PriceList list, out ValueList<CostingProblem> problems) ? list : throw NotWhole(problems);

    /// <summary>Reads a list from the bytes of a file, without throwing for what the file holds.</summary>
    /// <param name="file">The bytes.</param>
    /// <param name="currency">The currency of the list; a row in another one is refused.</param>
    /// <param name="dialect">How the file is written.</param>
    /// <param name="list">The rows that could be read; of two prices of an ingredient that are valid at once, neither.</param>
    /// <param name="problems">Every row that could not be read, in the order of the file; empty if all were.</param>
    /// <returns>Whether every row was read.</returns>
    public static bool TryRead(byte[] file, Currency currency, CsvDialect dialect, out PriceList list, out ValueList<CostingProblem> problems)
    {
        (string? text, string error) = Guard.NotNull(dialect).ToText(Guard.NotNull(file));
        if (text is not null)
        {
            return TryRead(text, currency, dialect, out list, out problems);
        }

        list = new PriceList(currency, []);
        problems = ValueList<CostingProblem>.Own([new CostingProblem("encoding", null, error)]);
        return false;
    }

    /// <summary>Reads a list.</summary>
    /// <param name="csv">The file as text.</param>
    /// <param name="currency">The currency of the list; a row in another one is refused.</param>
    /// <param name="dialect">Separator and decimal sign.</param>
    /// <returns>The list.</returns>
    /// <exception cref="CostingException">A row, or the header, cannot be read; the exception holds every problem.</exception>
    public static PriceList Read(string csv, Currency currency, CsvDialect dialect)
        => TryRead(csv, currency, dialect, out PriceList list, out ValueList<CostingProblem> problems) ? list : throw NotWhole(problems);

    /// <summary>Reads a list, without throwing for what the file holds.</summary>
    /// <param name="csv">The file as text.</param>
    /// <param name="currency">The currency of the list; a row in another one is refused.</param>
    /// <param name="dialect">Separator and decimal sign.</param>
    /// <param name="list">The rows that could be read; of two prices of an ingredient that are valid at once, neither.</param>
    /// <param name="problems">Every row that could not be read, in the order of the file; empty if all were.</param>
    /// <returns>Whether every row was read.</returns>
    public static bool TryRead(string csv, Currency currency, CsvDialect dialect, out PriceList list, out ValueList<CostingProblem> problems)
    {
        Guard.NotNull(currency);
        Guard.NotNull(dialect);
        var found = new List<CostingProblem>();
        var prices = new List<(Price Price, int Line)>();
        List<string>? header = null;
        foreach (CsvRecord row in CsvReader.Read(Guard.NotNull(csv), dialect.Separator))
        {
            if (header is null)
            {
                if (!IsHeader(row, found))
                {
                    break;
                }

                header = row.Fields;
            }
            else if (ReadRow(row, header, currency, dialect, found) is { } price)
            {
                prices.Add((price, row.Line));
            }
        }

        if (header is null && found.Count == 0)
        {
            found.Add(new CostingProblem("header-missing", null, $"The file is empty; its first line names the columns {string.Join(", ", s_required)}."));
        }

        var left = new HashSet<int>();
        foreach ((int index, int other, CostingProblem problem) in PriceList.ProblemsOf(currency, [.. prices.Select(p => p.Price)]))
        {
            left.Add(index);
            left.Add(other);
            found.Add(new CostingProblem(problem.Id, problem.Subject, problem.Message, prices[index].Line));
        }

        list = new PriceList(currency, prices.Where((_, i) => !left.Contains(i)).Select(p => p.Price));
        problems = ValueList<CostingProblem>.From(found.OrderBy(p => p.LineNumber));
        return found.Count == 0;
    }

    private static CostingException NotWhole(ValueList<CostingProblem> problems) => new("The file is not a whole price list:", problems);

    private static bool IsHeader(CsvRecord row, List<CostingProblem> problems)
    {
        int before = problems.Count;
        void Report(string message) => problems.Add(new CostingProblem("header-invalid", null, message, row.Line));
        if (row.Error is not null)
        {
            Report(row.Error);
        }

        foreach (string name in row.Fields.Where(f => !s_required.Contains(f) && !s_optional.Contains(f)))
        {
            Report($"{UnitTable.Quote(name)} is not a column; those are {string.Join(", ", s_required.Concat(s_optional))}.");
        }

        foreach (string name in s_required.Where(n => !row.Fields.Contains(n)))
        {
            Report($"The column {name} is missing.");
        }

        foreach (IGrouping<string, string> name in row.Fields.GroupBy(f => f, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            Report($"The column {UnitTable.Quote(name.Key)} is there twice.");
        }

        return problems.Count == before;
    }

    private static Price? ReadRow(CsvRecord row, List<string> header, Currency currency, CsvDialect dialect, List<CostingProblem> problems)
    {
        string Field(string column) => header.IndexOf(column) is int i and >= 0 ? CsvGuard.Off(row.Fields[i]) : "";
        string? subject = row.Error is null && row.Fields.Count == header.Count && Ids.IsValid(Field("ingredient")) ? Field("ingredient") : null;
        var draft = new PriceDraft((id, column, message) => problems.Add(new CostingProblem(id, subject, column.Length == 0 ? message : $"{ColumnOf(column)}: {message}", row.Line)));
        if (row.Error is not null)
        {
            draft.Report("row-invalid", "", row.Error);
            return null;
        }

        if (row.Fields.Count != header.Count)
        {
            draft.Report("row-invalid", "", $"Has {Numbers.Exact(row.Fields.Count)} fields, but the header has {Numbers.Exact(header.Count)}: is the separator {UnitTable.Quote(dialect.Separator.ToString())}?");
            return null;
        }

        decimal? Number(string column, string member)
        {
            string text = Field(column);
            if (text.Length == 0 && !s_required.Contains(column))
            {
                return null;
            }

            if (dialect.TryParse(text, out decimal value))
            {
                return value;
            }

            draft.Report("number-invalid", member, $"{UnitTable.Quote(text)} is not a number with the decimal sign {UnitTable.Quote(dialect.DecimalSign.ToString())} and nothing between thousands.");
            return null;
        }

        string? Text(string column) => Field(column) is { Length: > 0 } text ? text : null;

        draft.Ingredient = Field("ingredient");
        draft.Amount = Number("price", "price");
        draft.Quantity = Number("per", "per");
        draft.Unit = Field("unit");
        draft.PieceGrams = Number("pieceMassGrams", "pieceMass") is { } grams ? Exactly.ToDouble(grams) : null;
        draft.DensityKgPerM3 = Number("densityKgPerM3", "density") is { } density ? Exactly.ToDouble(density) : null;
        draft.YieldPercent = Number("yieldPercent", "yieldPercent");
        draft.Supplier = Text("supplier");
        draft.From = Text("from");
        draft.To = Text("to");
        string pack = Field("pack");
        draft.IsPack = pack == "true";
        if (pack is not ("" or "true" or "false"))
        {
            draft.Report("flag-invalid", "pack", $"Must be true or false, but is {UnitTable.Quote(pack)}.");
        }

        if (!Currency.TryFind(Field("currency"), out Currency? own))
        {
            draft.Report("currency-unknown", "currency", $"{UnitTable.Quote(Field("currency"))} is not a currency of ISO 4217 with a minor unit.");
        }
        else if (own != currency)
        {
            draft.Report("currency-mixed", "currency", $"The price is in {own}, the list in {currency}: convert it at a stated rate.");
        }

        return draft.Read(currency);
    }

    private static string ColumnOf(string member) => member switch
    {
        "pieceMass" => "pieceMassGrams",
        "density" => "densityKgPerM3",
        _ => member,
    };
}
