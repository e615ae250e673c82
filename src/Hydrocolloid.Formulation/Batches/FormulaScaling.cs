using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>Brings a formula to a size.</summary>
public static class FormulaScaling
{
    /// <summary>The formula at a size, with the losses of its process plan.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="yield">How much to make.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="FormulaException">The batch cannot be: the exception lists every reason.</exception>
    public static Batch ScaleTo(this Formula formula, Yield yield) => formula.ScaleTo(yield, Guard.NotNull(formula).Process.Losses);

    /// <summary>The formula at a size, with losses other than those of its process plan.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="yield">How much to make.</param>
    /// <param name="losses">The losses.</param>
    /// <returns>The batch.</returns>
    /// <exception cref="FormulaException">The batch cannot be: the exception lists every reason.</exception>
    public static Batch ScaleTo(this Formula formula, Yield yield, Losses losses)
        => formula.TryScaleTo(yield, losses, out Batch? batch, out ValueList<FormulaProblem> problems) ? batch
            : throw new FormulaException($"The batch of '{formula.Name}'", problems);

    /// <summary>The formula at a size, without throwing.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="yield">How much to make.</param>
    /// <param name="losses">The losses.</param>
    /// <param name="batch">The batch; null if it cannot be.</param>
    /// <param name="problems">Every reason why it cannot be; empty if it can.</param>
    /// <returns>Whether the batch can be.</returns>
    public static bool TryScaleTo(
        this Formula formula, Yield yield, Losses losses, [NotNullWhen(true)] out Batch? batch, out ValueList<FormulaProblem> problems)
    {
        (batch, problems) = BatchSizing.Size(Guard.NotNull(formula), Guard.NotNull(yield), Guard.NotNull(losses));
        return batch is not null;
    }
}
