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

    /// <summary>The straight ratio of Bloom instead of its square root.</summary>
    public static Misconception StraightRatio { get; } = new("straight-ratio", "the straight ratio instead of the square root", "Firmness goes with Bloom and with the square of the dose: the masses go with the square root of the ratio.");

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
