using System.Runtime.CompilerServices;
using Hydrocolloid.Formulation.Chemistry;

namespace Hydrocolloid.Formulation.Analysis;

/// <summary>
/// A liquid as acids and ions: the acid and the strong ions that give back its pH and titratable acidity, with its minerals. Without a titratable
/// acidity only the pH is given back, and nothing buffers it.
/// </summary>
internal sealed class LiquidModel
{
    // Finding the acid behind a titration takes many solutions, so the model of an ingredient is kept as long as the ingredient is.
    private static readonly ConditionalWeakTable<Ingredient, LiquidModel> Known = new();

    private LiquidModel(AcidBaseSystem system, bool isBuffered)
    {
        System = system;
        IsBuffered = isBuffered;
    }

    public AcidBaseSystem System { get; }

    public bool IsBuffered { get; }

    /// <summary>The model of an ingredient whose pH and water are known, or of a lot of it with a pH of its own.</summary>
    public static LiquidModel Of(Ingredient ingredient, double? measuredPh)
        => measuredPh is { } ph ? Make(ingredient, ph) : Known.GetValue(ingredient, static i => Make(i, i.Ph!.Value));

    private static LiquidModel Make(Ingredient ingredient, double ph)
    {
        double water = ingredient.WaterPercent!.Value;
        AcidBaseSystem? titrated = ingredient.TitratableAcidity?.Value is { } acidity && PureSubstances.FindAcid(acidity.As) is { } acid
            && ph < AcidBaseSystem.DefaultEndPointPH ? Titrated(ph, acidity.Percent, acid, water) : null;
        bool isBuffered = titrated is not null;
        if (titrated is not null && ingredient.TitratableAcidity!.Value is var stated && IsOfOtherBuffers(titrated.AcidAmounts[0], stated.Percent))
        {
            Acid standIn = Acids.Phosphoric;
            titrated = Titrated(ph, stated.Percent * standIn.EquivalentMassGramsPerMol / titrated.AcidAmounts[0].Acid.EquivalentMassGramsPerMol, standIn, water);
            isBuffered = false;
        }

        var acids = titrated?.AcidAmounts ?? default;
        return new LiquidModel(AcidBaseSystem.Of(acids, Minerals(ingredient.Composition?.Value), water).WithPH(ph), isBuffered);
    }

    /// <summary>
    /// True if under a tenth of the acid would be titrated: at the pH of milk or carrot the acid that the acidity is counted as is spent, and what takes
    /// up the alkali is protein and phosphate. Phosphate, which buffers there, then stands for them; it is an estimate.
    /// </summary>
    private static bool IsOfOtherBuffers(AcidAmount acid, double acidityPercent)
        => acid.MolPerKg * acid.Acid.EquivalentMassGramsPerMol * acid.Acid.TitratedProtons > 10 * (acidityPercent * 10);

    private static AcidBaseSystem? Titrated(double ph, double acidityPercent, Acid acid, double water)
    {
        try
        {
            return AcidBaseSystem.FromMeasured(ph, acidityPercent, acid, water);
        }
        catch (ArgumentOutOfRangeException)
        {
            return null; // pH and acidity of the record do not fit together: the pH stands, without a buffer
        }
    }

    private static StrongIons Minerals(Composition? composition) => composition is null ? default : new StrongIons
    {
        SodiumMolPerKg = (composition.SodiumMg ?? 0) / (100 * MixContents.GramsPerMolSodium),
        PotassiumMolPerKg = (composition.PotassiumMg ?? 0) / (100 * MixContents.GramsPerMolPotassium),
        CalciumMolPerKg = (composition.CalciumMg ?? 0) / (100 * MixContents.GramsPerMolCalcium),
        MagnesiumMolPerKg = (composition.MagnesiumMg ?? 0) / (100 * MixContents.GramsPerMolMagnesium),
    };
}
