namespace Hydrocolloid.Formulation;

/// <summary>What a hydrocolloid does alone in water.</summary>
public enum HydrocolloidRole
{
    /// <summary>Sets to a gel under its own conditions.</summary>
    GellingAgent,

    /// <summary>Thickens; sets only together with a partner.</summary>
    Thickener,
}
