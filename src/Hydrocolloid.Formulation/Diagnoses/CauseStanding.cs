namespace Hydrocolloid.Formulation;

/// <summary>How a cause stands after what is known of the batch.</summary>
public enum CauseStanding
{
    /// <summary>The formula or the record shows it: a value lies outside its limit.</summary>
    Shown,

    /// <summary>Nothing speaks against it, but what would show it is not known.</summary>
    Open,

    /// <summary>What would show it is known and in order.</summary>
    Unlikely,
}
