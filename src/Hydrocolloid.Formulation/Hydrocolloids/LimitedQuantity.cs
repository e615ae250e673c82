namespace Hydrocolloid.Formulation;

/// <summary>What a limit of a hydrocolloid is about, and in which unit.</summary>
public enum LimitedQuantity
{
    /// <summary>pH.</summary>
    Ph,

    /// <summary>Ethanol, % by weight of the mix.</summary>
    Ethanol,

    /// <summary>Soluble solids, °Brix.</summary>
    SolubleSolids,

    /// <summary>Calcium of any kind, mmol/kg of the mix.</summary>
    Calcium,

    /// <summary>Potassium, mmol/kg of the mix.</summary>
    Potassium,

    /// <summary>Sodium, mmol/kg of the mix.</summary>
    Sodium,

    /// <summary>Calcium, magnesium, potassium and sodium together, mmol/kg of the mix.</summary>
    Cations,

    /// <summary>Fat, % by weight of the mix.</summary>
    Fat,

    /// <summary>The hydrocolloid itself, % by weight of the mix.</summary>
    Concentration,

    /// <summary>Temperature, °C.</summary>
    Temperature,

    /// <summary>Time, min.</summary>
    Minutes,

    /// <summary>Alcohol, % by volume of the mix.</summary>
    AlcoholByVolume,

    /// <summary>Calcium of any kind, mmol per g of the hydrocolloid.</summary>
    CalciumPerGram,
}
