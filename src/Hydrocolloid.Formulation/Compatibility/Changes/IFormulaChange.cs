namespace Hydrocolloid.Formulation.Compatibility;

/// <summary>A change to a formula, as data: the library's are records. Immutable, equal by content.</summary>
public interface IFormulaChange
{
    /// <summary>The formula with the change made.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The new formula.</returns>
    /// <exception cref="ArgumentException">The change names a line or a phase that the formula does not have.</exception>
    /// <exception cref="FormulaException">The changed formula cannot be.</exception>
    Formula ApplyTo(Formula formula);
}
