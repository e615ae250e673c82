using MathNet.Numerics.RootFinding;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// Newton's law for a well-stirred body whose heat capacity C(t) is a polynomial: C dt/dτ = -UA (t - ta). With u = t - ta and C = α + β u + γ u²,
/// UA·τ = ∫ C/u du = α ln(u₁/u₂) + β (u₁ - u₂) + γ/2 (u₁² - u₂²).
/// </summary>
internal readonly struct LumpedCooling
{
    private readonly double _surroundings, _alpha, _beta, _gamma;

    public LumpedCooling(Polynomial joulesPerK, double surroundingsCelsius)
    {
        _surroundings = surroundingsCelsius;
        _alpha = joulesPerK.At(surroundingsCelsius);
        _beta = joulesPerK.B + (2 * joulesPerK.C * surroundingsCelsius);
        _gamma = joulesPerK.C;
    }

    /// <summary>UA·τ from one temperature to another on the same side of the surroundings; J/K.</summary>
    public double JoulesPerKelvin(double fromCelsius, double toCelsius)
    {
        double u1 = fromCelsius - _surroundings, u2 = toCelsius - _surroundings;
        return (_alpha * Math.Log(u1 / u2)) + (_beta * (u1 - u2)) + (_gamma / 2 * ((u1 * u1) - (u2 * u2)));
    }

    /// <summary>The temperature after UA·τ.</summary>
    public double After(double fromCelsius, double joulesPerKelvin)
    {
        double u1 = fromCelsius - _surroundings;
        if (u1 == 0 || joulesPerKelvin == 0)
        {
            return fromCelsius;
        }

        double start = Math.Log(Math.Abs(u1));
        double constant = joulesPerKelvin / _alpha;
        if (_beta == 0 && _gamma == 0)
        {
            return _surroundings + (u1 * Math.Exp(-constant));
        }

        // In v = ln|u| the equation is nearly linear; the heat capacity changes by far less than the factor of 4 that the bracket allows, and 1e-9 covers rounding.
        double sign = Math.Sign(u1), alpha = _alpha, beta = _beta, gamma = _gamma;
        double Miss(double v)
        {
            double u = sign * Math.Exp(v);
            return start - v + (((beta * (u1 - u)) + (gamma / 2 * ((u1 * u1) - (u * u)))) / alpha) - constant;
        }

        return _surroundings + (sign * Math.Exp(Brent.FindRoot(Miss, start - (4 * constant) - 1e-9, start + 1e-9, 1e-13, 200)));
    }
}
