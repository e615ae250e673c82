using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics;
using UnitsNet;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>The diffusivity of a solute in water, diluted. Immutable.</summary>
public sealed class SoluteDiffusivity
{
    private const double GasConstant = 8.314462618;

    private readonly double _logAtZeroInverse;
    private readonly double _slopeKelvins;

    // Diffusivities in 1e-9 m²/s by temperature in K; with two or more an Arrhenius line is fitted, ln D against 1/T.
    internal SoluteDiffusivity(string solute, Citation citation, params (double Kelvins, double Value)[] rows)
    {
        Solute = solute;
        Citation = citation;
        RangeCelsius = new(rows[0].Kelvins + Guard.AbsoluteZeroCelsius, rows[rows.Length - 1].Kelvins + Guard.AbsoluteZeroCelsius);
        (_logAtZeroInverse, _slopeKelvins) = rows.Length == 1
            ? (Math.Log(rows[0].Value), 0)
            : Fit.Line([.. rows.Select(r => 1 / r.Kelvins)], [.. rows.Select(r => Math.Log(r.Value))]);
    }

    /// <summary>The solute.</summary>
    public string Solute { get; }

    /// <summary>Where the values come from.</summary>
    public Citation Citation { get; }

    /// <summary>The temperatures of the source in °C; a single one if the effect of temperature is not sourced.</summary>
    public NumberRange RangeCelsius { get; }

    /// <summary>Activation energy of the fitted line, J/mol per unit of amount; 0 if there is one value only.</summary>
    public double ActivationEnergyJoulesPerMole => -_slopeKelvins * GasConstant;

    /// <summary>The diffusivity in water: D = A exp(-E/RT) fitted to the source's values, or its one value.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>The diffusivity in m²/s; outside the source's temperatures it is marked so.</returns>
    public Computed<double> InWater(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        double kelvins = Math.Max(1, celsius - Guard.AbsoluteZeroCelsius);
        return new(1e-9 * Math.Exp(_logAtZeroInverse + (_slopeKelvins / kelvins)), OutsideRange.Check("temperature", celsius, "°C", RangeCelsius.Min!.Value - 1e-9, RangeCelsius.Max!.Value + 1e-9));
    }

    /// <summary>Solute and source.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Solute}, {RangeCelsius.ToString(" °C")} ({Citation})";
}
