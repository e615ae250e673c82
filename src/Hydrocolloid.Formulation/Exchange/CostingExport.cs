using Hydrocolloid.Formulation.Costing;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Exchange;

/// <summary>What the costing system needs to know beside the batch. Immutable; equal by content, functions by reference.</summary>
public sealed record CostingExport
{
    private readonly string _formulaVersion = "1";

    /// <summary>Starts an export.</summary>
    /// <param name="formulaId">The id of the formula in the costing system, the same across versions.</param>
    /// <exception cref="ArgumentException">The id is blank.</exception>
    public CostingExport(string formulaId) => FormulaId = Guard.NotBlank(formulaId);

    /// <summary>The id of the formula.</summary>
    public string FormulaId { get; }

    /// <summary>The version of the formula; <c>1</c> unless stated.</summary>
    /// <exception cref="ArgumentException">The version is blank.</exception>
    public string FormulaVersion
    {
        get => _formulaVersion;
        init => _formulaVersion = Guard.NotBlank(value, nameof(FormulaVersion));
    }

    /// <summary>When it is exported; null to leave it out. The library reads no clock.</summary>
    public DateTimeOffset? ExportedAt { get; init; }

    /// <summary>The GTIN that an ingredient is bought under; null, or a null answer, if there is none.</summary>
    public Func<Ingredient, Gtin?>? GtinOf { get; init; }

    /// <summary>The unit that an ingredient is bought in: a mass, or a volume where the density of the ingredient is known; null, or a null answer, for grams.</summary>
    public Func<Ingredient, KitchenUnit?>? UnitOf { get; init; }

    /// <summary>What the batch costs, for the members <c>currency</c>, <c>pricedOn</c>, <c>cost</c> and <c>roundedCost</c>; null to leave them out.</summary>
    public CostSheet? Costs { get; init; }
}
