namespace Hydrocolloid.Formulation;

/// <summary>What something does to a hydrocolloid or its gel. Immutable, equal by content.</summary>
/// <param name="To">What does it.</param>
/// <param name="Harm">What it does; <see cref="Formulation.Harm.None"/> where folklore says otherwise.</param>
/// <param name="Consequence">The same in words, a sentence, with its source.</param>
public sealed record AgentSensitivity(SensitiveTo To, Harm Harm, Cited<string> Consequence);
