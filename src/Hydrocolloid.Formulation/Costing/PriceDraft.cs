using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Serialization;
using Hydrocolloid.Formulation.Text;
using UnitsNet;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>A price as a document or a row states it, before it is checked. What is wrong is reported under the name of its member.</summary>
internal sealed class PriceDraft(Action<string, string, string> report)
{
    // UCUM: a count has the dimension one, and what is counted stands in braces.
    private static readonly string[] s_pieces = ["1", "{each}", "{piece}", "{leaf}"];

    private bool _isSound = true;

    public string? Ingredient { get; set; }

    public decimal? Amount { get; set; }

    public decimal? Quantity { get; set; }

    public string? Unit { get; set; }

    public bool IsPack { get; set; }

    public double? PieceGrams { get; set; }

    public double? DensityKgPerM3 { get; set; }

    public decimal? YieldPercent { get; set; }

    public string? Supplier { get; set; }

    public string? From { get; set; }

    public string? To { get; set; }

    public void Report(string id, string member, string message)
    {
        _isSound = false;
        report(id, member, message);
    }

    /// <summary>A quantity in the base unit of its kind; null, and reported, if it has none.</summary>
    public double? ToBase(QuantityKind kind, decimal value, string unit, string member)
    {
        KitchenUnit? known = KitchenUnit.All.FirstOrDefault(u => u.Kind == kind && u.IsUcum && u.Code == unit);
        if (known is not null)
        {
            return known.ToBase(Exactly.ToText(value), Exactly.ToDouble(value));
        }

        Report("unit-unknown", member, $"{UnitTable.Quote(unit)} is not one of {string.Join(", ", DocumentChecks.Codes(kind))}.");
        return null;
    }

    /// <summary>The price; null, and everything that is wrong reported, if it cannot be.</summary>
    public Price? Read(Currency currency)
    {
        if (!Ids.IsValid(Ingredient))
        {
            Report("id-invalid", "ingredient", $"Must be kebab-case, such as \"pear-juice\", but is {UnitTable.Quote(Ingredient ?? "")}.");
        }

        Check(Amount, 0, 1_000_000_000, "", "price");
        Check(YieldPercent, 0, 100, " %", "yieldPercent");
        if (Supplier is not null && string.IsNullOrWhiteSpace(Supplier))
        {
            Report("text-blank", "supplier", "Must not be empty or blank.");
        }

        DateTime? from = Day(From, "from"), to = Day(To, "to");
        if (to < from)
        {
            Report("validity-reversed", "to", "The last day comes before the first.");
        }

        Func<Money, Price>? make = Basis();
        if (!_isSound || make is null)
        {
            return null;
        }

        Price price = make(new Money(Amount!.Value, currency)).ValidBetween(from, to).WithYield(YieldPercent ?? 100);
        price = Supplier is null ? price : price.FromSupplier(Supplier);
        return IsPack ? price.AsPack() : price;
    }

    private Func<Money, Price>? Basis()
    {
        Check(Quantity, 0, 1_000_000_000, "", "per");
        if (Quantity is null || Unit is null)
        {
            return null;
        }

        bool isCount = s_pieces.Contains(Unit, StringComparer.Ordinal);
        KitchenUnit? unit = KitchenUnit.All.FirstOrDefault(u => u.Kind is QuantityKind.Mass or QuantityKind.Volume && u.IsUcum && u.Code == Unit);
        if (!isCount && unit is null)
        {
            Report("unit-unknown", "unit", $"{UnitTable.Quote(Unit)} is not one of {string.Join(", ", DocumentChecks.Codes(QuantityKind.Mass).Concat(DocumentChecks.Codes(QuantityKind.Volume)).Concat(s_pieces))}.");
            return null;
        }

        bool isVolume = unit?.Kind == QuantityKind.Volume;
        CheckCompanion(DensityKgPerM3, 100, 30_000, "kg/m³", "density", belongs: isVolume, "a volume");
        CheckCompanion(PieceGrams, 0.001, 1e9, "g", "pieceMass", belongs: isCount, "a count");
        if (isCount)
        {
            if (PieceGrams is null)
            {
                Report("piece-mass-missing", "pieceMass", "A price for a count needs the mass of a piece.");
            }

            if (Quantity is > 1_000_000 || Quantity % 1 != 0)
            {
                Report("number-range", "per", "Must be a whole number of pieces, at most 1000000.");
            }

            return _isSound ? amount => Price.PerCount(Ingredient!, amount, (int)Quantity!.Value, Mass.FromGrams(PieceGrams!.Value)) : null;
        }

        double quantity = unit!.ToBase(Exactly.ToText(Quantity.Value), Exactly.ToDouble(Quantity.Value));
        if (!(quantity is >= 0.001 and <= 1e9))
        {
            Report("number-range", "per", $"Must be between 0.001 and 1000000000 {(isVolume ? "mL" : "g")}, but is {Numbers.Exact(quantity)}.");
        }

        return !_isSound ? null
            : isVolume ? amount => Price.PerVolume(Ingredient!, amount, Volume.FromMilliliters(quantity), DensityKgPerM3 is { } d ? Density.FromKilogramsPerCubicMeter(d) : null)
            : amount => Price.PerMass(Ingredient!, amount, Mass.FromGrams(quantity));
    }

    private void CheckCompanion(double? value, double min, double max, string unit, string member, bool belongs, string what)
    {
        if (value is not null && !belongs)
        {
            Report("member-misplaced", member, $"Belongs to a price for {what}.");
        }
        else if (value is { } v && !(v >= min && v <= max))
        {
            Report("number-range", member, $"Must be between {Numbers.Exact(min)} {unit} and {Numbers.Exact(max)} {unit} inclusive, but is {Numbers.Exact(v)} {unit}.");
        }
    }

    private void Check(decimal? value, decimal above, decimal max, string unit, string member)
    {
        if (value is { } v && !(v > above && v <= max))
        {
            Report("number-range", member, $"Must be above {Exactly.ToText(above)}{unit} and at most {Exactly.ToText(max)}{unit}, but is {Exactly.ToText(v)}.");
        }
    }

    private DateTime? Day(string? text, string member)
    {
        if (text is null)
        {
            return null;
        }

        if (Days.TryParse(text, out DateTime day))
        {
            return day;
        }

        Report("day-invalid", member, $"Must be a day such as 2026-03-31, but is {UnitTable.Quote(text)}.");
        return null;
    }
}
