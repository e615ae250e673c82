using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>
/// A known way to go wrong. The list is open: a school makes its own, and either its own exercise kind works out what the mistake gives, or
/// <see cref="WouldGive"/> does for any exercise. Immutable; equal by <see cref="Id"/>.
/// </summary>
public sealed class Misconception : IEquatable<Misconception>
{
    /// <summary>Makes a misconception.</summary>
    /// <param name="id">A stable kebab-case id.</param>
    /// <param name="name">The mistake in a few words.</param>
    /// <param name="feedback">What to tell the student.</param>
    /// <param name="wouldGive">What the mistake makes of an exercise, in the unit of its answer; null from it where it does not apply.</param>
    /// <exception cref="ArgumentException">The id is not kebab-case, or a text is blank.</exception>
    public Misconception(string id, string name, string feedback, Func<Exercise, double?>? wouldGive = null)
    {
        Id = Ids.Check(id, nameof(id));
        Name = Guard.NotBlank(name);
        Feedback = Guard.NotBlank(feedback);
        WouldGive = wouldGive;
    }

    /// <summary>0.2 % taken as 0.02.</summary>
    public static Misconception DecimalPlace { get; } = new("decimal-place", "the decimal point one place off", "0.2 % is 0.2 parts in 100, or 0.002; 0.02 is 2 %. Check the place of the decimal point.");

    /// <summary>The percentage not divided by 100.</summary>
    public static Misconception NotPerHundred { get; } = new("not-per-hundred", "a percentage used as it stands", "A percentage is so many parts in 100: divide it by 100, or multiply the share by 100.");

    /// <summary>A percentage of the base where another reference is stated.</summary>
    public static Misconception PercentOfBase { get; } = new("percent-of-base", "the percentage taken of the base", "Look again at what the percentage is taken of: not of the base alone.");

    /// <summary>A percentage of the total where another reference is stated.</summary>
    public static Misconception PercentOfTotal { get; } = new("percent-of-total", "the percentage taken of the total", "Look again at what the percentage is taken of: not of the total.");

    /// <summary>A percentage of everything so far where another reference is stated.</summary>
    public static Misconception PercentOfPreceding { get; } = new("percent-of-preceding", "the percentage taken of everything so far", "Look again at what the percentage is taken of: not of everything so far.");

    /// <summary>The sugar left out of the mix.</summary>
    public static Misconception ForgotSugar { get; } = new("forgot-sugar", "the sugar left out of the mix", "The sugar is in the mix too, and its mass counts.");

    /// <summary>The straight ratio of Bloom, or of another grade, instead of its root.</summary>
    public static Misconception StraightRatio { get; } = new("straight-ratio", "the straight ratio instead of its root", "Firmness grows faster than the dose, of gelatin with its square: the masses go with a root of the ratio of the grades, of Bloom with the square root.");

    /// <summary>A ratio the wrong way up.</summary>
    public static Misconception RatioUpsideDown { get; } = new("ratio-upside-down", "the ratio upside down", "Ask which way it must go: of a stronger grade you need less.");

    /// <summary>A reading in °F taken as °C, or the other way.</summary>
    public static Misconception FahrenheitAsCelsius { get; } = new("fahrenheit-as-celsius", "°F taken for °C", "The number is in the other unit: convert it first.");

    /// <summary>32 added to or taken off a difference of temperatures.</summary>
    public static Misconception DifferenceWith32 { get; } = new("difference-with-32", "32 counted in a difference", "In a difference the 32 cancels: only the factor 9/5 counts.");

    /// <summary>The 32 forgotten in a reading.</summary>
    public static Misconception Without32 { get; } = new("without-32", "the 32 forgotten", "A reading has its zero elsewhere: the 32 counts.");

    /// <summary>Millilitres taken as grams.</summary>
    public static Misconception VolumeForMass { get; } = new("volume-for-mass", "volume taken as mass", "A millilitre weighs a gram only of water: use the density.");

    /// <summary>A loss added to what is wanted instead of divided out.</summary>
    public static Misconception LossAdded { get; } = new("loss-added", "the loss added instead of divided out", "The loss is taken of the larger, first mass: divide by what is left, 1 less the loss.");

    /// <summary>A loss forgotten.</summary>
    public static Misconception LossForgotten { get; } = new("loss-forgotten", "the loss forgotten", "Something is lost on the way: make more.");

    /// <summary>pH values averaged.</summary>
    public static Misconception AveragedPh { get; } = new("averaged-ph", "pH values averaged", "pH is a logarithm, and buffers resist: pH values do not average.");

    /// <summary>Portion size and count swapped.</summary>
    public static Misconception SwappedPortions { get; } = new("swapped-portions", "portion size and count swapped", "Check which number is the count and which the mass of one portion.");

    /// <summary>An intermediate result rounded too early.</summary>
    public static Misconception RoundedEarly { get; } = new("rounded-early", "rounded too early", "Keep all digits on the way; round only the answer.");

    /// <summary>A plain average where amounts differ.</summary>
    public static Misconception PlainAverage { get; } = new("plain-average", "a plain average", "The larger part counts for more: weigh each value with its amount.");

    /// <summary>Specific heats left out.</summary>
    public static Misconception SpecificHeatForgotten { get; } = new("specific-heat-forgotten", "the specific heats left out", "What counts is mass times specific heat.");

    /// <summary>The largest stock taken instead of the one that runs out first.</summary>
    public static Misconception MostPlentiful { get; } = new("most-plentiful", "the wrong ingredient taken as the limit", "The ingredient that runs out first decides: take the smallest base.");

    /// <summary>A whole division taken as the error of a balance.</summary>
    public static Misconception WholeDivision { get; } = new("whole-division", "a whole division taken as the error", "Rounding is wrong by at most half a division.");

    /// <summary>Rounded down where the nearer value is above.</summary>
    public static Misconception CutOff { get; } = new("cut-off", "digits cut off", "Round to the nearest step of the balance; a half goes up.");

    /// <summary>Altitude made to raise the boiling point, or left out.</summary>
    public static Misconception SeaLevelBoil { get; } = new("sea-level-boil", "the boil of sea level", "Up there the air presses less, and water boils below 100 °C.");

    /// <summary>Equal drops in equal times.</summary>
    public static Misconception LinearCooling { get; } = new("linear-cooling", "equal drops in equal times", "The nearer to the surroundings, the slower: the difference falls by equal factors, not by equal steps.");

    /// <summary>Only one of several limits looked at.</summary>
    public static Misconception OneLimitOnly { get; } = new("one-limit-only", "not every limit looked at", "Each limit must be met: check both stages with the clock of each.");

    /// <summary>A percentage of the water where another reference is stated.</summary>
    public static Misconception PercentOfWater { get; } = new("percent-of-water", "the percentage taken of the water", "Look again at what the percentage is taken of: not of the water alone.");

    /// <summary>A diameter taken as a radius.</summary>
    public static Misconception DiameterForRadius { get; } = new("diameter-for-radius", "the diameter taken as the radius", "The radius is half the diameter, and it counts squared, or cubed in a ball.");

    /// <summary>The pure amount taken of a stock.</summary>
    public static Misconception StockAsPure { get; } = new("stock-as-pure", "the stock taken for the pure substance", "Only a part of the stock is the substance: divide by that part.");

    /// <summary>The strength of a stock reckoned on its water instead of on the whole stock.</summary>
    public static Misconception PartsOfWater { get; } = new("parts-of-water", "the strength reckoned on the water of the stock", "The substance is a part of the whole stock, itself and the water together.");

    /// <summary>The water of a stock not taken off the water of the formula.</summary>
    public static Misconception CarrierCountedTwice { get; } = new("carrier-counted-twice", "the water of the stock counted twice", "The stock brings water with it: that much less is weighed.");

    /// <summary>The whole stock taken off the water of the formula.</summary>
    public static Misconception WholeStockTakenOff { get; } = new("whole-stock-taken-off", "the whole stock taken off the water", "Only the water in the stock replaces water; the substance in it does not.");

    /// <summary>The cost of the batch where that of a portion is asked for.</summary>
    public static Misconception WholeBatch { get; } = new("whole-batch", "the batch taken for a portion", "Divide by the number of portions.");

    /// <summary>The target percentage multiplied instead of divided by.</summary>
    public static Misconception TargetMultiplied { get; } = new("target-multiplied", "multiplied by the target instead of divided by it", "The cost is that share of the price: divide the cost by the share, and the price comes out larger than the cost.");

    /// <summary>What is to be a share of the price put on the cost.</summary>
    public static Misconception MarkUpForMargin { get; } = new("mark-up-for-margin", "a share of the price put on the cost", "The percentage is of the price, not of the cost: divide by it.");

    /// <summary>What is lost in peeling left out of the cost.</summary>
    public static Misconception YieldForgotten { get; } = new("yield-forgotten", "what is lost in preparing forgotten", "What is thrown away is paid for too: divide the price by the share that is left.");

    /// <summary>The price multiplied by the yield instead of divided by it.</summary>
    public static Misconception YieldMultiplied { get; } = new("yield-multiplied", "multiplied by the yield instead of divided by it", "What goes into the pot costs more than what was bought, not less: divide by the share that is left.");

    /// <summary>Ingredients listed in the order in which they go in.</summary>
    public static Misconception OrderOfAdding { get; } = new("order-of-adding", "the order of the work instead of the order of weight", "A list of ingredients goes by weight, the heaviest first, whatever goes in first.");

    /// <summary>Added water counted as it was put in.</summary>
    public static Misconception WaterAsPutIn { get; } = new("water-as-put-in", "the water counted as it was put in", "Added water counts by what is left of it in the finished food: take off what boiled away.");

    /// <summary>Only the allergens found that the names of the ingredients say.</summary>
    public static Misconception ObviousAllergens { get; } = new("obvious-allergens", "only what the names say", "Read on into what each ingredient is made of: many do not carry the allergen in their names.");

    /// <summary>The list of allergens of another market.</summary>
    public static Misconception OtherMarket { get; } = new("other-market", "the list of another market", "Each market has its own list of allergens: take that of the place where it is sold.");

    /// <summary>The sulphur dioxide of an ingredient held against the limit for the food.</summary>
    public static Misconception LimitOfIngredient { get; } = new("limit-of-ingredient", "the limit held against the ingredient", "The limit is for the finished food: work out what the ingredient brings into it.");

    /// <summary>A hydrocolloid stirred into hot liquid.</summary>
    public static Misconception IntoHotLiquid { get; } = new("into-hot-liquid", "the powder put into hot liquid", "In hot liquid the grains swell at their surface and lump: first wet them, then heat.");

    /// <summary>What has to wait put in before the heat.</summary>
    public static Misconception AddedTooSoon { get; } = new("added-too-soon", "put in before the heat what has to wait", "What harms the gelling agent in the heat, or boils off, goes in afterwards.");

    /// <summary>Cast after the gel has set.</summary>
    public static Misconception CastAfterSetting { get; } = new("cast-after-setting", "cast after setting", "A gel that has set cannot be poured whole: cast it while it is above its setting temperature.");

    /// <summary>A usual cause named without reading the record.</summary>
    public static Misconception RecordNotRead { get; } = new("record-not-read", "a usual cause named, the record not read", "Hold each value of the record against its limit: the cause is the value that lies outside.");

    /// <summary>What troubles gelatin taken for a trouble of another gel.</summary>
    public static Misconception LikeGelatin { get; } = new("like-gelatin", "taken as though it were gelatin", "Each gelling agent has its own enemies: what harms gelatin may leave this one alone.");

    /// <summary>A stable kebab-case id.</summary>
    public string Id { get; }

    /// <summary>The mistake in a few words.</summary>
    public string Name { get; }

    /// <summary>What to tell the student.</summary>
    public string Feedback { get; }

    /// <summary>What the mistake makes of an exercise; null if the exercise's kind works that out.</summary>
    public Func<Exercise, double?>? WouldGive { get; }

    /// <summary>Equal if the ids are.</summary>
    /// <param name="other">The other.</param>
    /// <returns>Whether they are equal.</returns>
    public bool Equals(Misconception? other) => other is not null && Id == other.Id;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Misconception);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);

    /// <summary>Id and name.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Id}: {Name}";
}
