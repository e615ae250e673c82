using Hydrocolloid.Formulation.Internal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Gelation;

/// <summary>
/// The one regulated scale of firmness for gels: hardness (highest stress in compression by a 20 mm plunger at 10 mm/s, 20 °C) of the Japanese criteria [recalled]. Hardness alone does not
/// admit a food: adhesiveness and cohesiveness have limits too, and texture-modified food is served only as a licensed clinician has set it and local rules allow.
/// </summary>
public static class SwallowingHardness
{
    private static readonly NumberRange[] Pascals = [new(2500, 10_000), new(1000, 15_000), new(300, 20_000)];

    /// <summary>Where the limits come from.</summary>
    public static Citation Source => GelationSources.Swallowing;

    /// <summary>The classes whose limits a hardness keeps.</summary>
    /// <param name="hardness">The hardness in the test of the criteria.</param>
    /// <returns>The classes; empty if none.</returns>
    public static ValueList<SwallowingClass> ClassesOf(Pressure hardness)
    {
        double pascals = Guard.Pascals(hardness);
        return ValueList<SwallowingClass>.From(Enumerable.Range(0, Pascals.Length).Where(i => Pascals[i].Contains(pascals)).Select(i => (SwallowingClass)i));
    }
}
