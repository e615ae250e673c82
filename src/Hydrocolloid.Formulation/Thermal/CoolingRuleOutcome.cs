namespace Hydrocolloid.Formulation.Thermal;

/// <summary>Whether a cooling rule or one of its limits is met.</summary>
public enum CoolingRuleOutcome
{
    /// <summary>It is met.</summary>
    Met,

    /// <summary>The curve ends too early to say.</summary>
    NotShown,

    /// <summary>It is not met.</summary>
    NotMet,
}
