namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What a step of a substitution does.</summary>
public enum SubstitutionStepKind
{
    /// <summary>An agent is taken out.</summary>
    AgentOut,

    /// <summary>A helper of the old agent, such as its calcium, is taken out.</summary>
    HelperOut,

    /// <summary>An agent comes in, with its dose.</summary>
    AgentIn,

    /// <summary>What the new agent needs is put in or ordered: a remedy of the rules.</summary>
    HelperIn,

    /// <summary>The process or the service plan is changed.</summary>
    PlanChanged,

    /// <summary>Something stays that was there for the old agent: for the cook to judge.</summary>
    LeftAsIs,
}
