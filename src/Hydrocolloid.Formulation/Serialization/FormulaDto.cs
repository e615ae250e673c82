using System.Text.Json;
using System.Text.Json.Serialization;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>
/// A document as it is parsed, before it is a formula. A member that is left out is null, NaN or undefined. None of the types lets
/// an explicit null through, although most members are optional, so the properties of optional members are not declared nullable.
/// </summary>
internal sealed class FormulaDto
{
    [JsonRequired]
    public string Format { get; set; } = null!;

    [JsonRequired]
    public int Version { get; set; }

    [JsonRequired]
    public string Name { get; set; } = null!;

    [JsonRequired]
    public List<Part> Base { get; set; } = null!;

    public List<Phase> Phases { get; set; } = null!;

    public ProcessPart Process { get; set; } = null!;

    public ServicePart Service { get; set; } = null!;

    public List<Own> Ingredients { get; set; } = null!;

    public JsonElement Extensions { get; set; }

    [JsonConverter(typeof(LineConverter<Part>))]
    internal class Part
    {
        public string Ingredient { get; set; } = null!;

        public double Percent { get; set; }

        public string Label { get; set; } = null!;

        public string Form { get; set; } = null!;

        public Quantity Temperature { get; set; } = null!;

        public Measured Measured { get; set; } = null!;

        public JsonElement Extensions { get; set; }
    }

    [JsonConverter(typeof(LineConverter<Addition>))]
    internal sealed class Addition : Part
    {
        public Reference Of { get; set; } = null!;
    }

    /// <param name="Value">The reference.</param>
    /// <param name="IsIngredient">Whether it names an ingredient, whose line then has no label of its own.</param>
    internal sealed record Reference(DoseReference Value, bool IsIngredient);

    internal sealed class Phase
    {
        [JsonRequired]
        public string Name { get; set; } = null!;

        [JsonRequired]
        public List<Addition> Add { get; set; } = null!;
    }

    [JsonConverter(typeof(QuantityConverter))]
    internal sealed class Quantity
    {
        public double Value { get; set; }

        public string Unit { get; set; } = null!;
    }

    internal sealed class Measured
    {
        public double Ph { get; set; } = double.NaN;

        public double Brix { get; set; } = double.NaN;

        public Quantity Density { get; set; } = null!;
    }

    internal sealed class ProcessPart
    {
        public List<string> Carriers { get; set; } = null!;

        public Quantity Altitude { get; set; } = null!;

        public Quantity SoakAt { get; set; } = null!;

        public Quantity HydrateAt { get; set; } = null!;

        public Quantity HydrateFor { get; set; } = null!;

        public LossesPart Losses { get; set; } = null!;

        public MouldPart Mould { get; set; } = null!;

        public Quantity CastAt { get; set; } = null!;

        public List<CoolingPart> Cooling { get; set; } = null!;
    }

    internal sealed class LossesPart
    {
        public LossPart Evaporation { get; set; } = null!;

        public bool ToppedUp { get; set; }

        public LossPart Straining { get; set; } = null!;

        public LossPart Transfer { get; set; } = null!;

        public LossPart Trimming { get; set; } = null!;
    }

    internal sealed class LossPart
    {
        public double Percent { get; set; } = double.NaN;

        public double Value { get; set; } = double.NaN;

        public string Unit { get; set; } = null!;
    }

    internal sealed class MouldPart
    {
        [JsonRequired]
        public string Name { get; set; } = null!;

        public Quantity Volume { get; set; } = null!;

        public ShapePart Shape { get; set; } = null!;

        public double Cavities { get; set; } = double.NaN;

        public Quantity Headspace { get; set; } = null!;
    }

    internal sealed class ShapePart
    {
        [JsonRequired]
        public string Form { get; set; } = null!;

        public Quantity Diameter { get; set; } = null!;

        public Quantity BottomDiameter { get; set; } = null!;

        public Quantity Length { get; set; } = null!;

        public Quantity Width { get; set; } = null!;

        public Quantity BottomLength { get; set; } = null!;

        public Quantity BottomWidth { get; set; } = null!;

        public Quantity Height { get; set; } = null!;
    }

    internal sealed class CoolingPart
    {
        [JsonRequired]
        public string Name { get; set; } = null!;

        [JsonRequired]
        public Quantity Temperature { get; set; } = null!;

        public Quantity Duration { get; set; } = null!;

        public string Medium { get; set; } = null!;
    }

    internal sealed class ServicePart
    {
        public string Texture { get; set; } = null!;

        public Quantity ServedAt { get; set; } = null!;

        public Quantity HeldFor { get; set; } = null!;

        public Quantity StoredFor { get; set; } = null!;

        [JsonConverter(typeof(FlagConverter))]
        public bool? Covered { get; set; }

        [JsonConverter(typeof(FlagConverter))]
        public bool? Frozen { get; set; }

        public Quantity Portion { get; set; } = null!;

        public string Shape { get; set; } = null!;

        [JsonConverter(typeof(FlagConverter))]
        public bool? Clear { get; set; }

        [JsonConverter(typeof(FlagConverter))]
        public bool? Packaged { get; set; }

        public string Audience { get; set; } = null!;

        public string Market { get; set; } = null!;

        public string FoodCategory { get; set; } = null!;

        public List<string> Diets { get; set; } = null!;

        public List<string> FreeFrom { get; set; } = null!;
    }

    internal sealed class Own
    {
        [JsonRequired]
        public string Id { get; set; } = null!;

        public string Name { get; set; } = null!;

        public string Like { get; set; } = null!;

        public List<string> Synonyms { get; set; } = null!;

        [JsonPropertyName("compositionPer100g")]
        public CompositionPart Composition { get; set; } = null!;

        public double Ph { get; set; } = double.NaN;

        public double Brix { get; set; } = double.NaN;

        public Quantity Density { get; set; } = null!;

        public string Category { get; set; } = null!;

        public AcidityPart TitratableAcidity { get; set; } = null!;

        public string Tannin { get; set; } = null!;

        public ProteasePart Protease { get; set; } = null!;

        public MilkProteinPart MilkProtein { get; set; } = null!;

        public List<string> Allergens { get; set; } = null!;

        [JsonConverter(typeof(FlagConverter))]
        public bool? Vegan { get; set; }

        [JsonConverter(typeof(FlagConverter))]
        public bool? Vegetarian { get; set; }

        public string Enzymes { get; set; } = null!;

        public GradePart Grade { get; set; } = null!;

        public JsonElement Extensions { get; set; }
    }

    internal sealed class CompositionPart
    {
        public double Water { get; set; } = double.NaN;

        public double Sugars { get; set; } = double.NaN;

        public double OtherCarbohydrate { get; set; } = double.NaN;

        public double Fibre { get; set; } = double.NaN;

        public double Protein { get; set; } = double.NaN;

        public double Fat { get; set; } = double.NaN;

        public double Ash { get; set; } = double.NaN;

        public double Ethanol { get; set; } = double.NaN;

        public double OrganicAcids { get; set; } = double.NaN;

        public double Calcium { get; set; } = double.NaN;

        public double Potassium { get; set; } = double.NaN;

        public double Sodium { get; set; } = double.NaN;

        public double Magnesium { get; set; } = double.NaN;
    }

    internal sealed class AcidityPart
    {
        [JsonRequired]
        public double Percent { get; set; }

        [JsonRequired]
        public string As { get; set; } = null!;
    }

    internal sealed class ProteasePart
    {
        [JsonRequired]
        public string Enzyme { get; set; } = null!;

        [JsonRequired]
        public bool Active { get; set; }

        public bool Disputed { get; set; }
    }

    internal sealed class MilkProteinPart
    {
        [JsonRequired]
        public bool Casein { get; set; }

        [JsonRequired]
        public bool Whey { get; set; }
    }

    internal sealed class GradePart
    {
        [JsonRequired]
        public string Scale { get; set; } = null!;

        [JsonRequired]
        public double Value { get; set; }
    }
}
