using System.Text.Json;
using System.Text.Json.Serialization;

namespace KitchenCard;

/// <summary>
/// The card: everything the kitchen needs to work one formula once. It is also the JSON card, format "hydrocolloid-card" version 1
/// (docs/card-json.md): masses in g, temperatures in °C, durations in s, percentages by weight of what their name says.
/// </summary>
internal sealed record Card(
    string Format,
    int Version,
    string Name,
    CardYield Yield,
    double BalanceDivisionGrams,
    double ToleranceOfDosePercent,
    IReadOnlyList<CardLine> Lines,
    IReadOnlyList<CardConcentration> Concentrations,
    IReadOnlyList<CardContent> Contents,
    IReadOnlyList<CardStep> Method,
    IReadOnlyList<string> MethodConflicts,
    CardHeat? Heat,
    CardMoulds? Moulds,
    CardWeighing? Weighing,
    CardCost? Cost,
    IReadOnlyList<CardFinding> Findings,
    IReadOnlyList<CardCaution> Cautions,
    IReadOnlyList<string> Recorded,
    IReadOnlyList<CardDerivation> Worked,
    IReadOnlyList<CardSource> Sources,
    JsonElement? Comparison);

internal sealed record CardYield(
    string Asked, double BaseGrams, double AssembledGrams, double EvaporatedWaterGrams, double TopUpWaterGrams, double FinishedGrams, string Losses, int? Portions, double? PortionGrams);

internal sealed record CardLine(
    string Phase, string Label, string Ingredient, string Name, string Form, double Percent, string Of, double ExactGrams, double WeighGrams, double? DoseErrorPercent, bool ExceedsTolerance);

internal sealed record CardConcentration(string Label, string Name, double PercentOfTotal, double PercentOfContinuousMix, double? PercentOfContinuousWater, double PercentOfContinuousMixAsSet);

internal sealed record CardContent(string Quantity, double Value, string Unit, string How, string By, string? Outside, IReadOnlyList<string> Without);

internal sealed record CardRange(double? Min, double? Max);

internal sealed record CardStep(
    string Action, string Instruction, string Reason, string Check, bool Active, string? Ahead, IReadOnlyList<string> Lines, IReadOnlyList<CardAmount> Amounts, CardRange? Celsius, CardRange? Seconds, IReadOnlyList<int> Sources, IReadOnlyList<CardNote> Notes);

internal sealed record CardAmount(string Label, string Name, double Grams);

internal sealed record CardNote(string Text, int Source);

internal sealed record CardFinding(string Severity, string Id, string Explanation, IReadOnlyList<string> Lines, IReadOnlyList<CardEvidence> Evidence, IReadOnlyList<int> Sources, IReadOnlyList<CardRemedy> Remedies);

internal sealed record CardRemedy(string Id, string Advice, string Effect, IReadOnlyList<int> Sources);

internal sealed record CardHeat(CardCooling? Cooling);

internal sealed record CardCooling(
    IReadOnlyList<CardCoolingPoint> Curve, double? SetsBelowCelsius, double? SetThroughSeconds, double? SetThroughAtLatestSeconds, int? SettingSource,
    IReadOnlyList<CardVerdict> Verdicts, string Caution, IReadOnlyList<string> Assumptions);

internal sealed record CardCoolingPoint(double Seconds, double CentreCelsius, double SurfaceCelsius, double MeanCelsius, double CentreAtSlowestCelsius);

internal sealed record CardVerdict(string Rule, string Outcome, string Text, int Source);

internal sealed record CardMoulds(
    string Name, int Cavities, double FillMillilitres, double CastCelsius, double DensityKgPerM3, string DensityHow, double GramsEach, int Filled, int MouldsNeeded, double LeftGrams);

internal sealed record CardWeighing(
    IReadOnlyList<CardBalance> Balances, double TolerancePercent, int Batches, bool Possible, double SmallestDirectBatchGrams,
    IReadOnlyList<CardPreparation> Preparations, IReadOnlyList<CardWeighed> Lines);

internal sealed record CardBalance(double DivisionGrams, double? CapacityGrams);

internal sealed record CardPreparation(
    string Way, string Label, string Name, double SubstanceGrams, string Carrier, double CarrierGrams, double Percent, double GramsPerBatch, double LeftGrams, IReadOnlyList<CardNote> Advice);

internal sealed record CardWeighed(string Label, string Name, string Way, double? WeighGrams, double? BalanceDivisionGrams, int? Goes, double? ErrorPercent, IReadOnlyList<string> Reasons);

internal sealed record CardCost(
    string Currency, string PricedOn, IReadOnlyList<CardCostLine> Lines, decimal? Ingredients, decimal? PerKilogram, decimal? PerPortion);

internal sealed record CardCostLine(string Label, string Name, decimal? Cost, decimal? SharePercent, string? Gap);

internal sealed record CardEvidence(string Quantity, double Value, string Unit, CardRange Limit);

internal sealed record CardCaution(string Kind, string Text, IReadOnlyList<string> Lines, int Source);

internal sealed record CardDerivation(string Label, string Text);

internal sealed record CardSource(int Number, string Quality, string Text);

[JsonSourceGenerationOptions(WriteIndented = true, NewLine = "\n", PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(Card))]
internal sealed partial class CardJson : JsonSerializerContext;
