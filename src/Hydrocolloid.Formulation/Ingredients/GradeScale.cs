namespace Hydrocolloid.Formulation;

/// <summary>A scale on which the strength of an agent is stated.</summary>
public enum GradeScale
{
    /// <summary>Gelatin: load in g of the Bloom test (ISO 9665, JIS K 6503).</summary>
    Bloom,

    /// <summary>Agar and carrageenan: load in g/cm² that a gel of stated concentration carries.</summary>
    GelStrength,

    /// <summary>High-methoxyl pectin: °SAG.</summary>
    Sag,
}
