namespace Hydrocolloid.Formulation;

/// <summary>What makes a hydrocolloid set.</summary>
public enum SettingCause
{
    /// <summary>Cooling below its setting temperature.</summary>
    Cooling,

    /// <summary>Calcium (or another divalent ion) reaching it, at any temperature.</summary>
    Calcium,

    /// <summary>Heating.</summary>
    Heating,

    /// <summary>Acid.</summary>
    Acid,

    /// <summary>It does not set alone.</summary>
    None,
}
