using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>
/// The masses of a formula in units of the base mass: what every dose means once the whole formula is solved. Immutable.
/// </summary>
public sealed class Proportions
{
    private readonly double[] _masses;
    private readonly double[] _preceding;
    private readonly double?[] _precedingWater;

    internal Proportions(double[] fixedMasses, double[] shareOfTotal, double[] masses, double[] preceding, double?[] precedingWater, double total, double continuous, double? continuousWater)
    {
        FixedMasses = fixedMasses;
        ShareOfTotal = shareOfTotal;
        _masses = masses;
        _preceding = preceding;
        _precedingWater = precedingWater;
        Total = total;
        ContinuousMix = continuous;
        ContinuousWater = continuousWater;
    }

    /// <summary>The assembled total per unit of base mass; 1.03 if the additions are 3 % of the base.</summary>
    public double Total { get; }

    /// <summary>The mass of all that takes part in the gel, per unit of base mass: the total without the pieces.</summary>
    public double ContinuousMix { get; }

    /// <summary>The water in the continuous mix, per unit of base mass; null if the water content of a part of it is unknown.</summary>
    public double? ContinuousWater { get; }

    internal ReadOnlySpan<double> Masses => _masses;

    /// <summary>a of m = a + b·T, a line.</summary>
    internal double[] FixedMasses { get; }

    /// <summary>b of m = a + b·T, a line.</summary>
    internal double[] ShareOfTotal { get; }

    internal double ReferenceMass(Formula formula, DoseReference reference, int phaseIndex) => reference.Kind switch
    {
        DoseReferenceKind.Base => 1,
        DoseReferenceKind.Preceding => _preceding[phaseIndex],
        DoseReferenceKind.Total => Total,
        DoseReferenceKind.Water => _precedingWater[phaseIndex] ?? double.NaN,
        _ => _masses[formula.Line(reference.Label!).Index],
    };

    /// <summary>The mass of a line per unit of base mass.</summary>
    /// <param name="line">A line of the same formula.</param>
    /// <returns>The mass; 0.9 for a share of 90 % of the base.</returns>
    /// <exception cref="ArgumentException">The line is of a formula with more lines.</exception>
    public double MassOf(FormulaLine line) => Guard.NotNull(line).Index < _masses.Length ? _masses[line.Index]
        : throw new ArgumentException($"{line.Label} is not a line of this formula.", nameof(line));

    /// <summary>The mass of everything in the base and in the phases before a phase, per unit of base mass.</summary>
    /// <param name="phaseIndex">The position of the phase, from 0; the count of phases for everything.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such phase.</exception>
    public double PrecedingMass(int phaseIndex) => phaseIndex >= 0 && phaseIndex < _preceding.Length
        ? _preceding[phaseIndex] : throw new ArgumentOutOfRangeException(nameof(phaseIndex));

    /// <summary>The water in everything in the base and in the phases before a phase, per unit of base mass; null if unknown.</summary>
    /// <param name="phaseIndex">The position of the phase, from 0; the count of phases for everything.</param>
    /// <returns>The mass, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such phase.</exception>
    public double? PrecedingWater(int phaseIndex) => phaseIndex >= 0 && phaseIndex < _precedingWater.Length
        ? _precedingWater[phaseIndex] : throw new ArgumentOutOfRangeException(nameof(phaseIndex));

    /// <summary>The concentration of a line in the assembled total, % by weight.</summary>
    /// <param name="line">A line of the same formula.</param>
    /// <returns>The percentage.</returns>
    public double PercentOfTotal(FormulaLine line) => MassOf(line) / Total * 100;

    /// <summary>The concentration of a line in the continuous mix (what gels), % by weight.</summary>
    /// <param name="line">A line of the same formula.</param>
    /// <returns>The percentage.</returns>
    public double PercentOfContinuousMix(FormulaLine line) => MassOf(line) / ContinuousMix * 100;

    /// <summary>The mass of a line as % by weight of the water in the continuous mix; null if that water is unknown or none.</summary>
    /// <param name="line">A line of the same formula.</param>
    /// <returns>The percentage, or null.</returns>
    public double? PercentOfContinuousWater(FormulaLine line) => MassOf(line) / ContinuousWater * 100 is { } percent and <= double.MaxValue ? percent : null;
}
