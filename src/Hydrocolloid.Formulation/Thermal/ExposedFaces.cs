namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Which of two opposite faces heat or a solute passes through.</summary>
public enum ExposedFaces
{
    /// <summary>One face; the other is insulated, as under a layer on a wooden board or in foam.</summary>
    One,

    /// <summary>Both faces alike, as a slice on a rack.</summary>
    Both,
}
