namespace Hydrocolloid.Formulation.Gelation;

/// <summary>Classes of the Japanese criteria for foods for persons with difficulty in swallowing (2009).</summary>
public enum SwallowingClass
{
    /// <summary>Hardness 2500–10 000 Pa.</summary>
    ClassI,

    /// <summary>Hardness 1000–15 000 Pa.</summary>
    ClassII,

    /// <summary>Hardness 300–20 000 Pa.</summary>
    ClassIII,
}
