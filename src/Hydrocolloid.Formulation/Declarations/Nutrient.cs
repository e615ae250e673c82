namespace Hydrocolloid.Formulation.Declarations;

/// <summary>A row of a nutrition declaration.</summary>
public enum Nutrient
{
    /// <summary>Energy in kJ; of the European Union and Codex.</summary>
    Kilojoules,

    /// <summary>Energy in kcal.</summary>
    Kilocalories,

    /// <summary>Fat in g.</summary>
    Fat,

    /// <summary>Saturated fatty acids in g.</summary>
    Saturates,

    /// <summary>Carbohydrate in g: in the European Union without fibre and organic acids, in the United States with both.</summary>
    Carbohydrate,

    /// <summary>Sugars in g: mono- and disaccharides.</summary>
    Sugars,

    /// <summary>Added polyols in g, erythritol among them.</summary>
    Polyols,

    /// <summary>Fibre in g.</summary>
    Fibre,

    /// <summary>Protein in g.</summary>
    Protein,

    /// <summary>Salt in g: sodium × 2.5; of the European Union and Codex.</summary>
    Salt,

    /// <summary>Sodium in mg; of the United States.</summary>
    Sodium,
}
