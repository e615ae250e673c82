using System.Diagnostics.CodeAnalysis;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>Cools a formula in its mould.</summary>
public static class FormulaCooling
{
    /// <summary>Works out how the formula cools in the mould of its process plan, through the plan's stages, from the temperature at which it is cast.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="outlook">The outlook; null if something that it needs is not stated.</param>
    /// <param name="missing">What is not stated; empty if nothing is missing.</param>
    /// <returns>Whether everything was stated.</returns>
    public static bool TryCool(this Formula formula, [NotNullWhen(true)] out CoolingOutlook? outlook, out ValueList<string> missing)
    {
        ProcessPlan plan = Guard.NotNull(formula).Process;
        var lacks = new List<string>();
        if (plan.Mould?.Shape is null)
        {
            lacks.Add("the shape of the mould");
        }

        if (plan.CastAtCelsius is null)
        {
            lacks.Add("the temperature at which it is cast");
        }

        if (plan.Cooling.IsEmpty)
        {
            lacks.Add("the stages of cooling");
        }

        outlook = null;
        if (lacks.Count == 0)
        {
            outlook = Outlook(formula, plan, plan.Mould!, plan.CastAtCelsius!.Value, lacks);
        }

        missing = ValueList<string>.Own([.. lacks]);
        return outlook is not null;
    }

    private static CoolingOutlook? Outlook(Formula formula, ProcessPlan plan, MouldPlan mould, double castCelsius, List<string> lacks)
    {
        double last = plan.Cooling[plan.Cooling.Count - 1].Celsius;
        var middle = Temperature.FromDegreesCelsius((castCelsius + last) / 2);
        MixContents mix = formula.Analyse().Assembled;
        Reckoned density = mix.DensityAt(middle), heat = mix.SpecificHeatAt(middle), conductivity = mix.ConductivityAt(middle);
        if (!(density.Value > 0 && heat.Value > 0 && conductivity.Value > 0))
        {
            lacks.Add("the composition of the lines");
            return null;
        }

        var assumptions = new List<string>();
        var properties = new ThermalProperties(
            Density.FromKilogramsPerCubicMeter(density.Value), SpecificEntropy.FromJoulesPerKilogramKelvin(heat.Value * 1000),
            ThermalConductivity.FromWattsPerMeterKelvin(conductivity.Value));
        assumptions.Add($"the mix keeps its properties at {Numbers.Significant(middle.DegreesCelsius, 3)} °C all the way, and lies still");
        GelBody body = Body(mould, assumptions);
        if (plan.Cooling.Any(s => s.Medium is null))
        {
            assumptions.Add("stages of which no medium is stated are in still air");
        }

        var start = Temperature.FromDegreesCelsius(castCelsius);
        (double Celsius, Citation Citation)? sets = SetsBelow(formula);
        return new CoolingOutlook(
            new CoolingCourse(body, properties, start, plan.Cooling.Select(s => Step(s, m => m.Typical))),
            new CoolingCourse(body, properties, start, plan.Cooling.Select(s => Step(s, m => m.Slowest))),
            ValueList<string>.Own([.. assumptions]), sets?.Celsius, sets?.Citation);
    }

    /// <summary>A body that cools no faster than the gel in the mould.</summary>
    private static GelBody Body(MouldPlan mould, List<string> assumptions)
    {
        MouldShape shape = mould.Shape!;
        Length depth = mould.FillDepth!.Value;
        var length = Length.FromMeters(shape.TopLengthMetres);
        var width = Length.FromMeters(shape.TopWidthMetres);
        if (shape.Form is not MouldForm.Sphere)
        {
            assumptions.Add("the bottom of the mould gives off no heat, the wall of the mould holds none back");
        }

        switch (shape.Form)
        {
            case MouldForm.Sphere:
                assumptions.Add("the wall of the mould holds no heat back");
                return GelBody.Sphere(length);
            case MouldForm.Hemisphere:
                assumptions.Add("half a ball counts as a round block of its width and depth, which cools more slowly");
                return GelBody.Cylinder(length, depth, ExposedFaces.One);
            case MouldForm.Cylinder or MouldForm.Frustum:
                return GelBody.Cylinder(length, depth, ExposedFaces.One);
            case MouldForm.HalfCylinder:
                assumptions.Add("half a log counts as a block of its width and depth, which cools more slowly");
                break;
        }

        return GelBody.Block(length, width, depth, ExposedFaces.One);
    }

    private static CoolingStep Step(CoolingStage stage, Func<CoolingMedium, HeatTransferCoefficient> film)
        => new(stage.Temperature, film(stage.Medium ?? CoolingMedium.StillAir), stage.Duration);

    /// <summary>The lowest temperature at which anything in the mix that sets on cooling may still be setting.</summary>
    private static (double Celsius, Citation Citation)? SetsBelow(Formula formula)
    {
        (double Celsius, Citation Citation)? lowest = null;
        foreach (FormulaLine line in formula.Lines)
        {
            if (line.IsContinuous && line.Ingredient.Profile?.Setting is { Window: { Value.Celsius: var window } figure } setting
                && setting.Triggers.Any(t => t.Cause == SettingCause.Cooling) && (window.Min ?? window.Max) is { } celsius && !(celsius >= lowest?.Celsius))
            {
                lowest = (celsius, figure.Citation);
            }
        }

        return lowest;
    }
}
