using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Declarations;

/// <summary>
/// The draft of a label: ingredients, allergens, nutrition and alcohol of a batch, and everything that nobody has stated.
/// It may help with, and does not replace, a labelling professional's check. Immutable, safe to share between threads.
/// </summary>
public sealed record Declaration
{
    /// <summary>What every declaration says of itself.</summary>
    public const string Caution = "This draft may help with, and does not replace, a labelling professional's check.";

    internal Declaration(LabelMarket market) => Market = market;

    /// <summary>Whose rules it follows.</summary>
    public LabelMarket Market { get; }

    /// <summary>The ingredients in descending order of their weight when they were put in.</summary>
    public ValueList<DeclaredIngredient> Ingredients { get; internal init; }

    /// <summary>The allergens that the label must name, in the order of <see cref="Allergen"/>.</summary>
    public ValueList<DeclaredAllergen> Allergens { get; internal init; }

    /// <summary>The nutrition declaration, in the order of the market.</summary>
    public ValueList<DeclaredNutrient> Nutrition { get; internal init; }

    /// <summary>The mass of the portion that the nutrition declaration counts with; null if none is known.</summary>
    public UnitsNet.Mass? Portion => PortionGrams is { } g ? UnitsNet.Mass.FromGrams(g) : null;

    /// <summary>Alcohol of the finished food by volume at 20 °C, with the lines it leaves out. Unit: % vol.</summary>
    public Reckoned AlcoholByVolume { get; internal init; } = null!;

    /// <summary>Total sulphur dioxide of the finished food over the lines that state it. Unit: mg/kg.</summary>
    public double SulphurDioxideMgPerKg { get; internal init; }

    /// <summary>What a label needs and nobody has stated; nothing of it is taken as none or zero.</summary>
    public ValueList<LabelGap> Gaps { get; internal init; }

    /// <summary>The rules that were followed and those that this food may come under, each with its source.</summary>
    public ValueList<Cited<string>> Notes { get; internal init; }

    internal double? PortionGrams { get; init; }

    /// <summary>The list of ingredients on one line, with the names of allergens made to stand out.</summary>
    /// <param name="emphasise">Makes a word stand out; null for capitals.</param>
    /// <returns>The text.</returns>
    public string IngredientText(Func<string, string>? emphasise = null)
        => "Ingredients: " + string.Join(", ", Ingredients.Select(i => emphasise is null ? i.ToString() : i.ToText(emphasise))) + ".";

    /// <summary>The allergens in a statement of their own, as the United States and foods without a list of ingredients have it; empty if there are none to name.</summary>
    /// <returns>The text.</returns>
    public string ContainsText() => Allergens.IsEmpty ? "" : $"Contains: {Allergens}.";

    /// <summary>The strength of the alcohol; empty if the food is known to hold none.</summary>
    /// <returns>The text.</returns>
    public string AlcoholText()
        => AlcoholByVolume.Value > 0 ? $"Alcohol: {(AlcoholByVolume.Without.IsEmpty ? "" : "at least ")}{Numbers.Fixed(AlcoholByVolume.Value, 1)} % vol."
            : AlcoholByVolume.Without.IsEmpty ? "" : $"Alcohol: not known of {AlcoholByVolume.Without}.";

    /// <summary>The whole draft, its gaps and its caution included.</summary>
    /// <returns>The text, lines ending in a line feed.</returns>
    public override string ToString()
    {
        var text = new StringBuilder(IngredientText()).Append('\n');
        if (Market == LabelMarket.UnitedStates && !Allergens.IsEmpty)
        {
            text.Append(ContainsText()).Append('\n');
        }

        text.Append("Nutrition per 100 g").Append(PortionGrams is { } g ? $" and per portion of {Numbers.Significant(g, 4)} g" : "").Append('\n');
        foreach (DeclaredNutrient row in Nutrition)
        {
            text.Append("  ").Append(row).Append('\n');
        }

        if (AlcoholText() is { Length: > 0 } alcohol)
        {
            text.Append(alcohol).Append('\n');
        }

        foreach (LabelGap gap in Gaps)
        {
            text.Append("Open: ").Append(gap).Append('\n');
        }

        return text.Append(Caution).Append('\n').ToString();
    }
}
