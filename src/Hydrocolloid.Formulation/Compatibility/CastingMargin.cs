namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>How far above its setting temperature a mix should be joined and cast. A judgement: stirring evens out what the coldest spot does not.</summary>
internal static class CastingMargin
{
    public const double Kelvins = 5;
}
