namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// Davies: log10 γ = -A z² (√I/(1 + √I) - 0.3 I), A = 0.509 at 25 °C, I in mol/kg of water; γ = 1 without charge. Constants read in KTH's help
/// text on the Davies equation (2019). To about 0.5 mol/kg; beyond 1 the value at 1 is kept so that the iteration stays bounded, and the result is flagged.
/// </summary>
internal static class ActivityModel
{
    public const double A = 0.509;
    public const double MaxIonicStrength = 0.5;

    /// <summary>log10 Kw at 25 °C: MINTEQA2 version 4 (NIST 46.4).</summary>
    public const double LogKw = -13.997;

    /// <summary>γ by charge 0 to 4.</summary>
    public static void Fill(double ionicStrength, Span<double> gamma)
    {
        double capped = Math.Min(ionicStrength, 1);
        double root = Math.Sqrt(capped);
        double one = Math.Pow(10, -A * ((root / (1 + root)) - (0.3 * capped)));
        double four = one * one * one * one;
        gamma[0] = 1;
        gamma[1] = one;
        gamma[2] = four;
        gamma[3] = four * four * one;
        gamma[4] = four * four * four * four;
    }
}
