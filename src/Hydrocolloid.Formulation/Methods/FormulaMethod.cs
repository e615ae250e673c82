using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Methods;

namespace Hydrocolloid.Formulation;

/// <summary>Plans the method of a formula or a batch.</summary>
public static class FormulaMethod
{
    /// <summary>
    /// The method, from the protocols of the formula's hydrocolloids: disperse, heat, hold, shear, strain, cast, set. Several
    /// hydrocolloids share a heating where their windows meet and are heated one after the other where they do not; one that must
    /// not be heated as far as another is added as the mix cools.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The method in a plain kitchen, with amounts in % of the base.</returns>
    public static Method PlanMethod(this Formula formula) => formula.PlanMethod(MethodOptions.Default);

    /// <summary>The method as it is to be planned.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="options">Kitchen, pattern, layer below.</param>
    /// <returns>The method, with amounts in % of the base.</returns>
    public static Method PlanMethod(this Formula formula, MethodOptions options) => new MethodPlanner(Guard.NotNull(formula), Guard.NotNull(options), null).Plan();

    /// <summary>The method in a kitchen.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="kitchen">The kitchen.</param>
    /// <returns>The method, with amounts in % of the base.</returns>
    public static Method PlanMethod(this Formula formula, Kitchen kitchen) => formula.PlanMethod(new MethodOptions { Kitchen = kitchen });

    /// <summary>The method of a batch.</summary>
    /// <param name="batch">The batch.</param>
    /// <returns>The method in a plain kitchen, with the masses of the batch.</returns>
    public static Method PlanMethod(this Batch batch) => batch.PlanMethod(MethodOptions.Default);

    /// <summary>The method of a batch as it is to be planned.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="options">Kitchen, pattern, layer below.</param>
    /// <returns>The method, with the masses of the batch.</returns>
    public static Method PlanMethod(this Batch batch, MethodOptions options) => new MethodPlanner(Guard.NotNull(batch).Formula, Guard.NotNull(options), batch).Plan();

    /// <summary>The method of a batch in a kitchen.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="kitchen">The kitchen.</param>
    /// <returns>The method, with the masses of the batch.</returns>
    public static Method PlanMethod(this Batch batch, Kitchen kitchen) => batch.PlanMethod(new MethodOptions { Kitchen = kitchen });

    /// <summary>
    /// The largest share of the liquid base that can be kept unheated and joined to the hot rest: the mix must stay above where it sets, and no hydrocolloid
    /// may be more concentrated in what is heated than the highest figure that the catalogue has for it.
    /// </summary>
    /// <param name="formula">The formula; which lines carry the hydrocolloids does not count here.</param>
    /// <param name="kitchen">The kitchen; null for a plain one.</param>
    /// <returns>The share.</returns>
    public static UnheatedShare LargestUnheatedShare(this Formula formula, Kitchen? kitchen = null)
        => new Tempering(Guard.NotNull(formula), kitchen ?? Kitchen.Plain).LargestUnheatedShare();
}
