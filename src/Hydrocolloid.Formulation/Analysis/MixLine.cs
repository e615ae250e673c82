using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Analysis;

/// <summary>A line with its share of the mix that is analysed.</summary>
internal sealed class MixLine(FormulaLine line, double share)
{
    private const double LeastKnownPercent = 95;
    private const double AllWaterPercent = 99.5;

    public FormulaLine Line { get; } = line;

    /// <summary>Its part of the mix by weight, 0 to 1.</summary>
    public double Share { get; } = share;

    public Ingredient Ingredient => Line.Ingredient;

    public string Label => Line.Label;

    /// <summary>A hydrocolloid whose composition is not stated counts as dry matter without any of the parts asked for.</summary>
    private bool IsPlainHydrocolloid => Ingredient.Profile is not null && Ingredient.Composition is null;

    /// <summary>A salt or acid by the bag: what its record does not state, it does not hold.</summary>
    private bool IsPure => Ingredient.Category is "salt" or "acid" or "mineral";

    /// <summary>°Brix and how it is known; null if it is not.</summary>
    public (double Value, ReckonedHow How)? Brix
    {
        get
        {
            if (Line.Details.Measured?.Brix is { } measured)
            {
                return (measured, ReckonedHow.Measured);
            }

            if (Ingredient.Brix is { } figure)
            {
                return (figure.Value, figure.Citation.Quality == CitationQuality.Measured ? ReckonedHow.Measured : ReckonedHow.Computed);
            }

            if (IsPlainHydrocolloid)
            {
                return (0, ReckonedHow.Computed);
            }

            // What is neither water, fibre, fat nor ethanol is taken as dissolved.
            return Ingredient.Composition?.Value is { WaterPercent: { } water } c
                ? (Math.Max(0, 100 - water - (c.FibrePercent ?? 0) - (c.FatPercent ?? 0) - (c.EthanolPercent ?? 0)), ReckonedHow.Estimated) : null;
        }
    }

    /// <summary>pH and whether it was measured; null if it is not known.</summary>
    public (double Value, bool IsMeasured)? Ph => Line.Details.Measured?.Ph is { } measured ? (measured, true)
        : Ingredient.Ph is { } figure ? (figure.Value, figure.Citation.Quality == CitationQuality.Measured) : null;

    public bool IsDensityMeasured => Line.Details.Measured?.DensityKgPerM3 is not null || Ingredient.DensityKgPerM3?.Citation.Quality == CitationQuality.Measured;

    /// <summary>A part of the composition, per 100 g; null if it is not known.</summary>
    public double? Part(Func<Composition, double?> part)
        => Ingredient.Composition is { } composition ? part(composition.Value) ?? (IsPure ? 0 : null)
            : IsPlainHydrocolloid ? 0 : null;

    /// <summary>Density at a temperature, whether it rests on a stated one, and what lies outside the relations; null if it is not known.</summary>
    public (double KgPerM3, bool IsStated, OutsideRange? Outside)? DensityAt(double celsius)
    {
        double? at20 = Line.Details.Measured?.DensityKgPerM3 ?? Ingredient.DensityKgPerM3?.Value;
        double ethanol = Ingredient.Composition?.Value.EthanolPercent ?? 0;
        if (at20 is { } stated)
        {
            (double factor, OutsideRange? outside) = Expansion(celsius, ethanol);
            return (stated * factor, true, outside);
        }

        FoodShares? shares = Shares();
        if (shares is not { } food)
        {
            return null;
        }

        double density = FoodProperties.DensityOf(food, Temperature.FromDegreesCelsius(celsius)).Value.KilogramsPerCubicMeter;
        // Ethanol is not in the equations: its volume is added as that of the pure liquid.
        return (100 / ((100 - ethanol) / density + ethanol / EthanolWater.EthanolDensityKilogramsPerCubicMetre), false,
            OutsideRange.Check("ethanol without a stated density", ethanol, "% by weight", 0, 1));
    }

    /// <summary>What the component equations see; null if the composition leaves more than 5 % open.</summary>
    public FoodShares? Shares()
    {
        if (IsPlainHydrocolloid)
        {
            return new FoodShares(0, carbohydratePercent: 100); // the powder dissolves as carbohydrate
        }

        if (Ingredient.Composition?.Value is not { } c || (c.KnownSumPercent < LeastKnownPercent && !IsPure))
        {
            return null;
        }

        double carbohydrate = (c.SugarsPercent ?? 0) + (c.OtherCarbohydratePercent ?? 0) + (c.OrganicAcidsPercent ?? 0);
        double sum = (c.WaterPercent ?? 0) + (c.ProteinPercent ?? 0) + (c.FatPercent ?? 0) + carbohydrate + (c.FibrePercent ?? 0) + (c.AshPercent ?? 0);
        // What a pure salt does not state is counted as ash.
        double ash = (c.AshPercent ?? 0) + (IsPure ? Math.Max(0, 100 - sum) : 0);
        return sum + ash <= 0 ? null
            : new FoodShares(c.WaterPercent ?? 0, c.ProteinPercent ?? 0, c.FatPercent ?? 0, Math.Min(100, carbohydrate), c.FibrePercent ?? 0, Math.Min(100, ash));
    }

    /// <summary>How the density at a temperature relates to that at 20 °C.</summary>
    private (double Factor, OutsideRange? Outside) Expansion(double celsius, double ethanolPercent)
    {
        Temperature temperature = Temperature.FromDegreesCelsius(celsius);
        Temperature standard = Temperature.FromDegreesCelsius(20);
        if (celsius == 20)
        {
            return (1, null);
        }

        if (ethanolPercent > 1)
        {
            Computed<Density> moved = EthanolWater.DensityOf(ethanolPercent, temperature);
            return (moved.Value.KilogramsPerCubicMeter / EthanolWater.DensityOf(ethanolPercent, standard).Value.KilogramsPerCubicMeter, moved.Outside);
        }

        if (Ingredient.Composition?.Value.WaterPercent >= AllWaterPercent)
        {
            Computed<Density> water = WaterDensity.At(temperature);
            return (water.Value.KilogramsPerCubicMeter / WaterDensity.At(standard).Value.KilogramsPerCubicMeter, water.Outside);
        }

        return Shares() is { } food
            ? (FoodProperties.DensityOf(food, temperature).Value.KilogramsPerCubicMeter / FoodProperties.DensityOf(food, standard).Value.KilogramsPerCubicMeter, null)
            : (1, OutsideRange.Check("temperature of a density without a composition", celsius, "°C", 20, 20));
    }
}
