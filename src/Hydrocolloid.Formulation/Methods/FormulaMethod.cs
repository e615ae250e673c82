using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Methods;

namespace Hydrocolloid.Formulation;

/// <summary>Plans the method of a formula.</summary>
public static class FormulaMethod
{
    /// <summary>
    /// The method, from the protocols of the formula's hydrocolloids: disperse, heat, hold, shear, strain, cast, set. Several
    /// hydrocolloids share a heating where their windows meet and are heated one after the other where they do not; one that must
    /// not be heated as far as another is added as the mix cools.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The method.</returns>
    public static Method PlanMethod(this Formula formula) => new MethodPlanner(Guard.NotNull(formula)).Plan();
}
