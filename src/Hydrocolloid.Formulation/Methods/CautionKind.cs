namespace Hydrocolloid.Formulation;

/// <summary>What a caution is about.</summary>
public enum CautionKind
{
    /// <summary>Burns from hot liquid.</summary>
    HotLiquid,

    /// <summary>Alcohol vapour that can catch fire.</summary>
    Flammable,

    /// <summary>Allergens.</summary>
    Allergens,

    /// <summary>Food that spoils.</summary>
    Perishable,

    /// <summary>A caution that comes with an ingredient.</summary>
    Ingredient,
}
