namespace Hydrocolloid.Formulation;

/// <summary>
/// What a food additive is and how it is regulated, in short. Rules change: the law in force decides, not this record.
/// Immutable, equal by content.
/// </summary>
/// <param name="Id">Kebab-case id, such as <c>gellan-gum</c>.</param>
/// <param name="Name">Its name.</param>
/// <param name="Numbers">E and INS numbers.</param>
/// <param name="Entries">Ids of the catalogue entries that are it; empty if the catalogue has none.</param>
/// <param name="CasNumbers">CAS registry numbers, each with its valid check digit; the note says of which form.</param>
/// <param name="FunctionalClasses">What it is used as, in the words of the Codex classes.</param>
/// <param name="Jecfa">The acceptable daily intake of JECFA; null if not known.</param>
/// <param name="Efsa">What EFSA concluded; null if not known.</param>
/// <param name="EuRule">The rule of the EU.</param>
/// <param name="UsRule">The rule of the USA; null if not known.</param>
/// <param name="UsCeilings">The most that the USA allow, by category of food; empty if there is no ceiling in numbers.</param>
/// <param name="Provenance">The record it was made from (our reference id); null if none.</param>
public sealed record Additive(
    string Id,
    string Name,
    AdditiveNumbers Numbers,
    ValueList<string> Entries,
    ValueList<Cited<string>> CasNumbers,
    Cited<ValueList<string>> FunctionalClasses,
    Cited<string>? Jecfa,
    Cited<string>? Efsa,
    Cited<string> EuRule,
    Cited<string>? UsRule,
    ValueList<UsCeiling> UsCeilings = default,
    string? Provenance = null);
