namespace Hydrocolloid.Formulation.Gelation;

/// <summary>The curve fitted to a trial.</summary>
public enum TrialCurve
{
    /// <summary>S = A · (c - c₀)ⁿ, fitted as ln S = ln A + n ln(c - c₀); c₀ is the critical concentration, 0 unless given.</summary>
    PowerLaw,

    /// <summary>S = a + b · c. For an agent in a matrix that carries load by itself, such as a set protein.</summary>
    Line,
}
