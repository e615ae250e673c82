namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>
/// Tables A and B of FDA Food Code 1-201.10: whether pH and water activity together keep a food safe without temperature control.
/// Table A: heated so that vegetative cells are destroyed, then packaged. Table B: not heated, or heated but not packaged.
/// True means that a product assessment is needed, and temperature control until it shows otherwise; it does not mean unsafe.
/// </summary>
internal static class FoodCodeTables
{
    /// <summary>Whether a product assessment is needed. A value on an edge belongs to the band that names it.</summary>
    public static bool NeedsAssessment(bool isPackaged, double ph, double waterActivity) => isPackaged
        ? waterActivity switch { <= 0.92 => false, <= 0.95 => ph > 5.6, _ => ph > 4.6 }
        : waterActivity switch { < 0.88 => false, <= 0.90 => ph > 5.0, <= 0.92 => ph > 4.6, _ => ph >= 4.2 };

    /// <summary>The highest water activity that needs no assessment at any pH.</summary>
    public static double DryEnough(bool isPackaged) => isPackaged ? 0.92 : 0.88;

    /// <summary>The pH up to which no assessment is needed at any water activity.</summary>
    public static double SourEnough(bool isPackaged) => isPackaged ? 4.6 : 4.2;
}
