namespace Hydrocolloid.Formulation;

/// <summary>A diet that the food must suit.</summary>
public enum Diet
{
    /// <summary>Nothing from animals.</summary>
    Vegan,

    /// <summary>Nothing from slaughtered animals.</summary>
    Vegetarian,

    /// <summary>Halal: certified by an authority, never decided here.</summary>
    Halal,

    /// <summary>Kosher: certified by an authority, never decided here.</summary>
    Kosher,
}
