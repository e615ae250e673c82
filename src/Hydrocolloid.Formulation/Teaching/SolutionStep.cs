using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>One step on the board. Equal by content.</summary>
/// <param name="Law">The law in words; empty for a number that is given.</param>
/// <param name="Quantity">What is worked out.</param>
/// <param name="Expression">The expression with its numbers; empty for a number that is given.</param>
/// <param name="Value">The value, unrounded, in the unit of <paramref name="Unit"/>; null for a verdict, which the expression states.</param>
/// <param name="Unit">Its unit as text.</param>
public sealed record SolutionStep(string Law, string Quantity, string Expression, double? Value, string Unit)
{
    /// <summary>Whether the number is given rather than worked out.</summary>
    public bool IsGiven => Expression.Length == 0;

    /// <summary>The step in one line.</summary>
    /// <returns>The line.</returns>
    public override string ToString()
    {
        if (Value is not { } number)
        {
            return $"{Quantity}: {Expression}";
        }

        string value = Unit.Length == 0 ? Numbers.Significant(number, 6) : Derivation.Text(number, Unit);
        return IsGiven ? $"{Quantity} = {value} (given)" : $"{Quantity} = {Expression} = {value}";
    }
}
