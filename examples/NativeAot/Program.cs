using System.Diagnostics;
using System.Globalization;
using Hydrocolloid.Formulation;
using UnitsNet;

if (args is ["time"])
{
    // How long a fresh process takes to read every figure of every entry (docs/performance.md).
    long start = Stopwatch.GetTimestamp();
    int read = Facts();
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{read} facts counted in {Stopwatch.GetElapsedTime(start).TotalMilliseconds:0.0} ms"));
    return 0;
}

Formula formula = Formula.Named("Two-stage agar gel")
    .Base(b => b.Share(Pantry.Water, 100))
    .Then("season", p => p
        .Add(Pantry.Sucrose, Dose.Percent(10).OfBase)
        .Add(Pantry.Salt, Dose.Percent(1).OfBase))
    .Then("gel", p => p
        .Add(Hydrocolloids.Agar, Dose.Percent(0.3).OfPreceding)
        .Add(Hydrocolloids.LocustBeanGum, Dose.Percent(0.1).OfPreceding))
    .Build();

Batch batch = formula.ScaleTo(Yield.OfBase(Mass.FromGrams(1000)));
foreach (BatchLine line in batch.Lines)
{
    Console.WriteLine(FormattableString.Invariant($"{line.Line.Ingredient.Name,-20}{line.Mass.Grams,10:0.00} g"));
}

// 1000 g and 110 g of seasoning come before the gelling agents: 0.3 % and 0.1 % of 1110 g.
bool right = IsNear(batch.MassOf("agar").Grams, 3.33) && IsNear(batch.MassOf("locust-bean-gum").Grams, 1.11);

int facts = Facts();
Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
    $"{Catalogue.BuiltIn.All.Count} ingredients, {Catalogue.BuiltIn.Sources.Count} sources, {facts} facts counted"));
right &= Catalogue.BuiltIn.All.Count > 0 && facts > 0;

Console.WriteLine(right ? "All as expected." : "A number is off.");
return right ? 0 : 1;

static int Facts()
{
    int facts = 0;
    foreach (Ingredient ingredient in Catalogue.BuiltIn.All)
    {
        facts += ingredient.Cautions.Count + (ingredient.Composition is null ? 0 : 1) + (ingredient.Profile?.DoseWindows.Count ?? 0);
    }

    return facts;
}

static bool IsNear(double value, double expected) => Math.Abs(value - expected) < 1e-9;
