namespace Hydrocolloid.Formulation.Thermal;

/// <summary>A + B·t + C·t², t in °C.</summary>
internal readonly record struct Polynomial(double A, double B, double C)
{
    public bool IsConstant => B == 0 && C == 0;

    public double At(double celsius) => A + (celsius * (B + (celsius * C)));

    /// <summary>The integral from 0 °C.</summary>
    public double Integral(double celsius) => celsius * (A + (celsius * ((B / 2) + (celsius * C / 3))));

    public Polynomial Times(double factor) => new(A * factor, B * factor, C * factor);

    public Polynomial Plus(Polynomial other) => new(A + other.A, B + other.B, C + other.C);
}
