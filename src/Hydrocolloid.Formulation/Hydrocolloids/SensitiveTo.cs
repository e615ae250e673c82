namespace Hydrocolloid.Formulation;

/// <summary>What a hydrocolloid may be sensitive to, beyond what a number can say.</summary>
public enum SensitiveTo
{
    /// <summary>Enzymes that cut proteins, in raw fruit.</summary>
    Protease,

    /// <summary>Tannins.</summary>
    Tannin,

    /// <summary>Casein.</summary>
    Casein,

    /// <summary>Fat.</summary>
    Fat,

    /// <summary>Freezing and thawing.</summary>
    Freezing,

    /// <summary>Standing uncovered.</summary>
    Drying,

    /// <summary>Lying in liquid.</summary>
    Soaking,

    /// <summary>Standing: it weeps.</summary>
    Weeping,

    /// <summary>Clarity: its gel is cloudy.</summary>
    Cloudiness,

    /// <summary>Being stirred, sheared or cut after it has begun to set.</summary>
    Shear,

    /// <summary>Warmth after setting, without melting.</summary>
    Warmth,
}
