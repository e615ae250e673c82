namespace Hydrocolloid.Formulation.Choosing;

/// <summary>A property by which agents are compared: a row of an <see cref="AgentComparison"/>.</summary>
public enum AgentProperty
{
    /// <summary>What it is made from.</summary>
    Origin,

    /// <summary>Diets it suits.</summary>
    Diets,

    /// <summary>Allergens it contains.</summary>
    Allergens,

    /// <summary>The texture of its gel.</summary>
    Texture,

    /// <summary>Working doses by texture, % by weight of the continuous mix.</summary>
    Doses,

    /// <summary>The lowest dose that gels, % by weight of the continuous mix.</summary>
    LowestDose,

    /// <summary>How its strength is stated, and what is on the market.</summary>
    Grades,

    /// <summary>How it is brought into the liquid.</summary>
    Dispersal,

    /// <summary>What it needs to dissolve.</summary>
    Hydration,

    /// <summary>What makes it set, and where.</summary>
    Setting,

    /// <summary>How long until the gel has its strength.</summary>
    SettingTime,

    /// <summary>Where and whether it melts.</summary>
    Melting,

    /// <summary>How far melting lies above setting.</summary>
    Hysteresis,

    /// <summary>What warmth does to the gel.</summary>
    HeatStability,

    /// <summary>How clear it is.</summary>
    Clarity,

    /// <summary>How its flavour comes through.</summary>
    Flavour,

    /// <summary>How it weeps.</summary>
    Syneresis,

    /// <summary>What freezing and thawing do.</summary>
    FreezeThaw,

    /// <summary>The pH it stands, and what acid does.</summary>
    Acid,

    /// <summary>What ions do, and which it needs.</summary>
    Ions,

    /// <summary>What salt does.</summary>
    Salt,

    /// <summary>What calcium does.</summary>
    Calcium,

    /// <summary>What sugar does.</summary>
    Sugar,

    /// <summary>What alcohol does.</summary>
    Alcohol,

    /// <summary>What proteins do.</summary>
    Proteins,

    /// <summary>What enzymes of raw fruit do.</summary>
    Enzymes,

    /// <summary>What tannins do.</summary>
    Tannins,

    /// <summary>How thick it makes a liquid.</summary>
    Viscosity,

    /// <summary>The ranges it must be kept in.</summary>
    Limits,

    /// <summary>What else harms it, and what is wrongly said to.</summary>
    Sensitivities,

    /// <summary>What it does together with others.</summary>
    Synergies,

    /// <summary>Cautions for handling and serving.</summary>
    Cautions,
}
