namespace Hydrocolloid.Formulation.Teaching;

/// <summary>The units in which an exercise states its numbers. An answer is read in any unit of the right kind.</summary>
public enum UnitSystem
{
    /// <summary>Grams, °C.</summary>
    Metric,

    /// <summary>Large masses in ounces, temperatures in °F; small masses stay in grams, as kitchens weigh gums.</summary>
    UsCustomary,
}
