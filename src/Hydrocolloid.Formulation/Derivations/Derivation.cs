using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>How one number was worked out: the quantity, the expression with its numbers, the value, and the derivations of its inputs. Immutable, equal by content.</summary>
public sealed record Derivation
{
    internal Derivation(string quantity, string expression, double value, string unit, params Derivation[] inputs)
    {
        Quantity = quantity;
        Expression = expression;
        Value = value;
        Unit = unit;
        Inputs = ValueList<Derivation>.Own(inputs);
    }

    /// <summary>What was worked out, such as <c>agar</c> or <c>everything so far</c>.</summary>
    public string Quantity { get; }

    /// <summary>The expression with its numbers and references, such as <c>0.3 % of everything so far = 0.3/100 × 1110 g</c>; empty for a given number.</summary>
    public string Expression { get; }

    /// <summary>The value, unrounded, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>The unit: <c>g</c> or <c>%</c>.</summary>
    public string Unit { get; }

    /// <summary>The derivations of the numbers in the expression.</summary>
    public ValueList<Derivation> Inputs { get; }

    /// <summary>The value rounded to six significant digits, with its unit.</summary>
    public string ValueText => Text(Value, Unit);

    /// <summary>
    /// The whole derivation as plain text, the way it is written on a board: what goes in first, the result last, one numbered
    /// line a step, each step once.
    /// </summary>
    /// <returns>The text; lines end with a line feed.</returns>
    public string ToText()
    {
        List<Derivation> steps = Steps();
        var text = new StringBuilder();
        for (int i = 0; i < steps.Count; i++)
        {
            text.Append(Numbers.Exact(i + 1)).Append(". ").Append(steps[i]).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Equal if every step is: the quantity, the expression and the value. Compared step by step, for steps share their inputs.</summary>
    /// <param name="other">The other derivation.</param>
    /// <returns>Whether they are equal.</returns>
    public bool Equals(Derivation? other) => other is not null
        && (ReferenceEquals(this, other) || (IsSameStep(other) && Steps().SequenceEqual(other.Steps(), SameStep.Instance)));

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked(StringComparer.Ordinal.GetHashCode(Quantity) * 31 + Value.GetHashCode());

    /// <summary>This step in one line, without its inputs.</summary>
    /// <returns>The line.</returns>
    public override string ToString()
        => Expression.Length == 0 ? $"{Quantity} = {ValueText} (given)" : $"{Quantity} = {Expression} = {ValueText}";

    internal static string Text(double value, string unit) => Numbers.Significant(value, 6) + " " + unit;

    private bool IsSameStep(Derivation other)
        => Quantity == other.Quantity && Expression == other.Expression && Value.Equals(other.Value) && Unit == other.Unit;

    /// <summary>All steps, inputs first, each once.</summary>
    private List<Derivation> Steps()
    {
        var steps = new List<Derivation>();
        Collect(steps, new HashSet<Derivation>(SameStep.Instance));
        return steps;
    }

    // A step already written is not gone into again: with every phase the paths to it double.
    private void Collect(List<Derivation> steps, HashSet<Derivation> seen)
    {
        if (!seen.Add(this))
        {
            return;
        }

        foreach (Derivation input in Inputs)
        {
            input.Collect(steps, seen);
        }

        steps.Add(this);
    }

    private sealed class SameStep : IEqualityComparer<Derivation>
    {
        public static readonly SameStep Instance = new();

        public bool Equals(Derivation? x, Derivation? y) => x is not null && y is not null && x.IsSameStep(y);

        public int GetHashCode(Derivation obj) => obj.GetHashCode();
    }
}
