namespace Hydrocolloid.Formulation;

/// <summary>The fourteen groups of Annex II of Regulation (EU) No 1169/2011; the nine US major allergens are among them.</summary>
public enum Allergen
{
    /// <summary>Cereals containing gluten.</summary>
    Gluten,

    /// <summary>Crustaceans.</summary>
    Crustaceans,

    /// <summary>Eggs.</summary>
    Eggs,

    /// <summary>Fish.</summary>
    Fish,

    /// <summary>Peanuts.</summary>
    Peanuts,

    /// <summary>Soybeans.</summary>
    Soybeans,

    /// <summary>Milk, lactose included.</summary>
    Milk,

    /// <summary>Tree nuts.</summary>
    TreeNuts,

    /// <summary>Celery.</summary>
    Celery,

    /// <summary>Mustard.</summary>
    Mustard,

    /// <summary>Sesame seeds.</summary>
    Sesame,

    /// <summary>Sulphur dioxide and sulphites above 10 mg/kg or 10 mg/L.</summary>
    Sulphites,

    /// <summary>Lupin.</summary>
    Lupin,

    /// <summary>Molluscs.</summary>
    Molluscs,
}
