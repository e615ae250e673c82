namespace Hydrocolloid.Formulation;

/// <summary>When a limit of a hydrocolloid counts.</summary>
public enum LimitStage
{
    /// <summary>In what it is dispersed and hydrated in.</summary>
    Hydrating,

    /// <summary>In what it is dissolved in, while that is held hot.</summary>
    Heated,

    /// <summary>In the mix that gels.</summary>
    Finished,

    /// <summary>In the liquid in which leaves or powder swell before they are heated.</summary>
    Soaking,
}
