namespace Hydrocolloid.Formulation;

/// <summary>Whether an ingredient holds the proteins of milk, which react with carrageenan, tannin and acid.</summary>
/// <param name="Casein">Whether it holds casein.</param>
/// <param name="Whey">Whether it holds whey protein.</param>
public sealed record MilkProtein(bool Casein, bool Whey);
