namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>A complex of calcium or magnesium with an acid's form without protons and some protons: log β at 25 °C, zero ionic strength.</summary>
internal sealed class Complex(bool magnesium, int protons, double logBeta, Citation citation)
{
    public bool Magnesium { get; } = magnesium;

    public int Protons { get; } = protons;

    public double Beta { get; } = Math.Pow(10, logBeta);

    public double LogBeta { get; } = logBeta;

    public Citation Citation { get; } = citation;
}
