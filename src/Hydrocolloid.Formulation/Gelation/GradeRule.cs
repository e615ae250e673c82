namespace Hydrocolloid.Formulation.Gelation;

/// <summary>How the mass of one grade is turned into that of another.</summary>
public enum GradeRule
{
    /// <summary>By the agent's strength curve: mass × strength^(1/n) is constant. For gelatin n = 2, the square-root rule: mass × √Bloom is constant.</summary>
    StrengthCurve,

    /// <summary>By straight ratio: mass × strength is constant. The common kitchen rule for gelatin, and the definition of °SAG for pectin.</summary>
    Proportional,
}
