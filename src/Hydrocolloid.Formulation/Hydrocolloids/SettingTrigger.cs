namespace Hydrocolloid.Formulation;

/// <summary>One way in which a hydrocolloid sets.</summary>
/// <param name="Cause">What makes it set.</param>
/// <param name="Ion">The ion it needs as well: <c>calcium</c> or <c>potassium</c>; null if none.</param>
/// <param name="Description">The conditions, with their source.</param>
public sealed record SettingTrigger(SettingCause Cause, string? Ion, Cited<string> Description);
