namespace Hydrocolloid.Formulation;

/// <summary>What two ingredients do to each other in a mix.</summary>
public enum SynergyEffect
{
    /// <summary>Together they gel where neither gels alone, or one gels the other.</summary>
    Gel,

    /// <summary>The gel is firmer.</summary>
    FirmerGel,

    /// <summary>The gel is more elastic, less brittle.</summary>
    MoreElastic,

    /// <summary>The gel weeps less.</summary>
    LessSyneresis,

    /// <summary>The mix is thicker than its parts would be.</summary>
    ViscositySynergy,

    /// <summary>They precipitate or cloud.</summary>
    Precipitation,

    /// <summary>One weakens what the other does.</summary>
    Antagonism,

    /// <summary>Neither helps the other.</summary>
    NoSynergy,

    /// <summary>The gel is softer.</summary>
    SofterGel,

    /// <summary>The texture lies between those of the two and is set by their ratio.</summary>
    TextureTuning,

    /// <summary>The gel melts at a lower temperature.</summary>
    LowerMelting,

    /// <summary>The gel dries out more slowly.</summary>
    LessDrying,

    /// <summary>One keeps the other dispersed.</summary>
    Stabilises,

    /// <summary>One helps the other to hydrate.</summary>
    HydrationAid,

    /// <summary>One delays the setting of the other.</summary>
    DelayedSet,
}
