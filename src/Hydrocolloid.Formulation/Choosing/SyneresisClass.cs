namespace Hydrocolloid.Formulation.Choosing;

/// <summary>How likely a gel is to weep so that it matters.</summary>
public enum SyneresisClass
{
    /// <summary>The catalogue says nothing of it.</summary>
    Unknown,

    /// <summary>Little or none.</summary>
    Low,

    /// <summary>Some, where it is cut or stored.</summary>
    Moderate,

    /// <summary>Much: plan for it.</summary>
    High,
}
