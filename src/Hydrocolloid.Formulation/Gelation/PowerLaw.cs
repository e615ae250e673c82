namespace Hydrocolloid.Formulation.Gelation;

/// <summary>S = S₀ · ratioⁿ.</summary>
internal static class PowerLaw
{
    public static double At(double reference, double ratio, double exponent) => reference * Math.Pow(ratio, exponent);
}
