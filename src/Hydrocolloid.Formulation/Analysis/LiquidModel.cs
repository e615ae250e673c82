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

    // Above this the carboxyl groups of an acid or a protein are spent, and what takes up alkali to the end point is phosphate and the like.
    private const double CarboxylSpentPh = 5.8;

    // Of an acid that stands for a titration no more than this many times what was titrated may be there.
    private const double MostAcidPerTitrated = 3;

    private LiquidModel(AcidBaseSystem system, bool isBuffered)
    {
        System = system;
        IsBuffered = isBuffered;
        HasAcids = !system.AcidAmounts.IsEmpty;
    }

    public AcidBaseSystem System { get; }

    /// <summary>True if any acid is in it; asked for often, so it is kept.</summary>
    public bool HasAcids { get; }

    /// <summary>True if the acid that the acidity is counted as gives back pH and acidity; false if nothing buffers, or what does is a stand-in.</summary>
    public bool IsBuffered { get; }

    /// <summary>The model of an ingredient whose pH and water are known, or of a lot of it with a pH of its own.</summary>
    public static LiquidModel Of(Ingredient ingredient, double? measuredPh)
        => measuredPh is { } ph ? Make(ingredient, ph) : Known.GetValue(ingredient, static i => Make(i, i.Ph!.Value));

    /// <summary>Water, % by weight: of the composition, else what °Brix leaves; null if neither is known.</summary>
    public static double? WaterOf(Ingredient ingredient) => ingredient.WaterPercent ?? 100 - ingredient.Brix?.Value;

    private static LiquidModel Make(Ingredient ingredient, double ph)
    {
        double water = WaterOf(ingredient)!.Value;
        AcidBaseSystem? titrated = ingredient.TitratableAcidity?.Value is { } acidity && PureSubstances.FindAcid(acidity.As) is { } acid
            && ph < AcidBaseSystem.DefaultEndPointPH ? Titrated(ph, acidity.Percent, acid, water) : null;
        ValueList<AcidAmount> acids = titrated?.AcidAmounts ?? default;
        bool isBuffered = !acids.IsEmpty && ingredient.TitratableAcidity!.Value.As != PureSubstances.Mixed;
        if (!acids.IsEmpty && ingredient.TitratableAcidity!.Value is var stated && IsOfOtherBuffers(acids[0], stated.Percent))
        {
            acids = OtherBuffers(ph, stated.Percent / acids[0].Acid.EquivalentMassGramsPerMol, water);
            isBuffered = false;
        }

        return new LiquidModel(AcidBaseSystem.Of(acids, Minerals(ingredient.Composition?.Value), water).WithPH(ph), isBuffered);
    }

    /// <summary>
    /// True if under a third of the acid would be titrated: at the pH of yoghurt, milk or carrot the acid that the acidity is counted as is mostly spent, and what
    /// takes up the alkali is protein and phosphate.
    /// </summary>
    private static bool IsOfOtherBuffers(AcidAmount acid, double acidityPercent)
        => acid.MolPerKg * acid.Acid.EquivalentMassGramsPerMol * acid.Acid.TitratedProtons > MostAcidPerTitrated * (acidityPercent * 10);

    /// <summary>
    /// What stands for protein and phosphate, an estimate: phosphate, and below pH 5.8 for half of the alkali succinic acid, whose constants (4.2 and 5.6) are those of the
    /// carboxyl groups of proteins and which hardly binds calcium.
    /// </summary>
    private static ValueList<AcidAmount> OtherBuffers(double ph, double equivalents, double water)
    {
        Acid[] acids = ph < CarboxylSpentPh ? [Acids.Succinic, Acids.Phosphoric] : [Acids.Phosphoric];
        return ValueList<AcidAmount>.From(acids.SelectMany(a => Titrated(ph, equivalents / acids.Length * a.EquivalentMassGramsPerMol, a, water)?.AcidAmounts ?? default));
    }

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
