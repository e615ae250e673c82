namespace Hydrocolloid.Formulation;

/// <summary>An enzyme that cuts proteins, gelatin among them.</summary>
/// <param name="Enzyme">Its name, such as <c>bromelain</c>.</param>
/// <param name="IsActive">Whether it is active in this form of the ingredient: raw fruit yes, canned or heated fruit no.</param>
/// <param name="IsDisputed">Whether sources disagree that it is strong enough to matter.</param>
public sealed record Protease(string Enzyme, bool IsActive, bool IsDisputed = false);
