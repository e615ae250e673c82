using Hydrocolloid.Formulation.Analysis;
using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation;

/// <summary>
/// What a mix of lines contains. Percentages are by weight of the mix; each value says how it was come by, whether its relation is in range, and
/// which lines it leaves out. Values are worked out when they are asked for. Immutable, safe to share between threads.
/// </summary>
public sealed class MixContents
{
    // Standard atomic weights, IUPAC, recalled.
    internal const double GramsPerMolCalcium = CalciumNeed.CalciumGramsPerMol;
    internal const double GramsPerMolPotassium = 39.098;
    internal const double GramsPerMolSodium = 22.990;
    internal const double GramsPerMolMagnesium = 24.305;

    private readonly MixLine[] _lines;
    private readonly Lazy<AcidBase> _acidBase;

    internal MixContents(Formula formula, IEnumerable<FormulaLine> lines)
    {
        FormulaLine[] all = [.. lines];
        double sum = all.Sum(l => formula.Proportions.Masses[l.Index]);
        if (!(sum > 0))
        {
            throw new ArgumentException("The lines weigh nothing, so there is nothing to analyse.", nameof(lines));
        }

        MassPerBase = sum;
        _lines = [.. all.Select(l => new MixLine(l, formula.Proportions.Masses[l.Index] / sum))];
        _acidBase = new Lazy<AcidBase>(() => AcidBase.Of(_lines));
    }

    /// <summary>The mass of the mix per unit of base mass.</summary>
    public double MassPerBase { get; }

    /// <summary>Water, % by weight.</summary>
    public Reckoned Water => Part(c => c.WaterPercent);

    /// <summary>Sugars, % by weight.</summary>
    public Reckoned Sugars => Part(c => c.SugarsPercent);

    /// <summary>Other carbohydrate without fibre, % by weight; of juices it holds the organic acids.</summary>
    public Reckoned OtherCarbohydrate => Part(c => c.OtherCarbohydratePercent);

    /// <summary>Fibre, % by weight, without the hydrocolloids whose composition is not stated.</summary>
    public Reckoned Fibre => Part(c => c.FibrePercent);

    /// <summary>Protein, % by weight.</summary>
    public Reckoned Protein => Part(c => c.ProteinPercent);

    /// <summary>Fat, % by weight.</summary>
    public Reckoned Fat => Part(c => c.FatPercent);

    /// <summary>Ash, % by weight.</summary>
    public Reckoned Ash => Part(c => c.AshPercent);

    /// <summary>Ethanol, % by weight.</summary>
    public Reckoned Ethanol => Part(c => c.EthanolPercent);

    /// <summary>Organic acids stated as such, % by weight; those that a composition counts under other carbohydrate are not in it.</summary>
    public Reckoned OrganicAcids => Part(c => c.OrganicAcidsPercent);

    /// <summary>Soluble solids as °Brix: each line's own °Brix (measured, else the catalogue's, else estimated from its composition) by weight.</summary>
    public Reckoned Brix
    {
        get
        {
            double sum = 0;
            bool measured = true;
            ReckonedHow worst = ReckonedHow.Measured;
            var without = new List<string>();
            foreach (MixLine line in _lines)
            {
                if (line.Brix is not { } brix)
                {
                    without.Add(line.Label);
                    continue;
                }

                sum += line.Share * brix.Value;
                measured &= brix.How == ReckonedHow.Measured;
                worst = brix.How > worst ? brix.How : worst;
            }

            return new Reckoned(sum, "°Brix", measured && _lines.Length == 1 && without.Count == 0 ? worst : worst == ReckonedHow.Measured ? ReckonedHow.Computed : worst,
                "soluble solids add by weight", null, ValueList<string>.From(without));
        }
    }

    /// <summary>Alcohol by volume, % vol at 20 °C: ethanol by weight × density of the mix / 789.24 kg/m³ (the definition of OIML R 22).</summary>
    public Reckoned AlcoholByVolume
    {
        get
        {
            Reckoned ethanol = Ethanol;
            Reckoned density = DensityAt(Temperature.FromDegreesCelsius(20));
            return new Reckoned(ethanol.Value * density.Value / EthanolWater.EthanolDensityKilogramsPerCubicMetre, "% vol", ethanol.How > density.How ? ethanol.How : density.How,
                "ethanol by weight × density / 789.24 kg/m³, OIML R 22", density.Outside, Together(ethanol.Without, density.Without));
        }
    }

    /// <summary>Calcium, all forms together.</summary>
    public IonContent Calcium => Ion("calcium", GramsPerMolCalcium, c => c.CalciumMg);

    /// <summary>Potassium.</summary>
    public IonContent Potassium => Ion("potassium", GramsPerMolPotassium, c => c.PotassiumMg);

    /// <summary>Sodium.</summary>
    public IonContent Sodium => Ion("sodium", GramsPerMolSodium, c => c.SodiumMg);

    /// <summary>Magnesium, all forms together.</summary>
    public IonContent Magnesium => Ion("magnesium", GramsPerMolMagnesium, c => c.MagnesiumMg);

    /// <summary>pH at 25 °C by charge balance; null if no line with water has a known pH.</summary>
    public Reckoned? Ph => _acidBase.Value.Ph;

    /// <summary>Free calcium in mmol per kg of water at 25 °C; null if the pH is not known. Calcium bound by casein is counted as free.</summary>
    public Reckoned? FreeCalcium => _acidBase.Value.FreeCalcium;

    /// <summary>The acids, ions and water of the mix, for questions such as how much of an acid brings it to a pH; null if the pH is not known.</summary>
    public AcidBaseSystem? AcidBaseSystem => _acidBase.Value.System;

    /// <summary>Water activity at 25 °C by the Ross equation over sugars, glycerol, sorbitol and salt; NaN without water.</summary>
    public Reckoned WaterActivity => Analysis.WaterActivityEstimate.Of(_lines, Water, Ethanol, Together(Water.Without, Together(Sugars.Without, Sodium.MilligramsPerKg.Without)));

    /// <summary>The highest tannin level of any line that makes up 1 % of the mix or more; <see cref="TanninLevel.None"/> if none is known.</summary>
    public TanninLevel Tannin => _lines.Where(l => l.Share >= 0.01).Select(l => l.Ingredient.Tannin?.Value ?? TanninLevel.None).DefaultIfEmpty(TanninLevel.None).Max();

    /// <summary>Lines with a protein-cutting enzyme that is active.</summary>
    public ValueList<FormulaLine> ActiveProteases => ValueList<FormulaLine>.From(_lines.Where(l => l.Ingredient.Protease?.Value.IsActive == true).Select(l => l.Line));

    /// <summary>Lines with casein.</summary>
    public ValueList<FormulaLine> Casein => ValueList<FormulaLine>.From(_lines.Where(l => l.Ingredient.MilkProtein?.Value.Casein == true).Select(l => l.Line));

    /// <summary>
    /// Density: volumes add, each line with its measured or catalogue density at 20 °C moved to the temperature as its composition moves
    /// (Choi and Okos), else with the density of its composition. Unit: kg/m³.
    /// </summary>
    /// <param name="temperature">The temperature; 0 to 150 °C, with ethanol up to 40 °C.</param>
    /// <returns>The density in kg/m³; not a number if that of no line is known, and then all lines are named as missing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Reckoned DensityAt(Temperature temperature)
    {
        double celsius = Guard.Celsius(temperature);
        double volume = 0, counted = 0;
        bool stated = true;
        OutsideRange? outside = OutsideRange.Check("temperature", celsius, "°C", 0, 150);
        var without = new List<string>();
        foreach (MixLine line in _lines)
        {
            if (line.DensityAt(celsius) is not { } density)
            {
                without.Add(line.Label);
                continue;
            }

            counted += line.Share;
            volume += line.Share / density.KgPerM3;
            stated &= density.IsStated || line.Share < 0.01;
            outside ??= density.Outside;
        }

        return new Reckoned(volume > 0 ? counted / volume : double.NaN, "kg/m³", HowOfDensity(celsius, stated),
            "volumes add; composition by Choi and Okos", outside, ValueList<string>.From(without));
    }

    /// <summary>Thermal conductivity from the composition by Choi and Okos, parallel model. Unit: W/(m·K).</summary>
    /// <param name="temperature">The temperature; 0 to 150 °C.</param>
    /// <returns>The conductivity in W/(m·K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Reckoned ConductivityAt(Temperature temperature)
    {
        return OfFood(temperature, "W/(m·K)", food =>
        {
            Computed<ThermalConductivity> conductivity = FoodProperties.ConductivityOf(food, temperature);
            return (conductivity.Value.WattsPerMeterKelvin, conductivity.Outside);
        });
    }

    /// <summary>Specific heat from the composition by Choi and Okos. Unit: kJ/(kg·K).</summary>
    /// <param name="temperature">The temperature; 0 to 150 °C.</param>
    /// <returns>The specific heat in kJ/(kg·K).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Under absolute zero or over 1000 °C.</exception>
    public Reckoned SpecificHeatAt(Temperature temperature)
    {
        return OfFood(temperature, "kJ/(kg·K)", food =>
        {
            Computed<SpecificEntropy> heat = FoodProperties.SpecificHeatOf(food, temperature);
            return (heat.Value.KilojoulesPerKilogramKelvin, heat.Outside);
        });
    }

    private Reckoned OfFood(Temperature temperature, string unit, Func<FoodShares, (double Value, OutsideRange? Outside)> relation)
    {
        Guard.Celsius(temperature);
        (FoodShares? shares, ValueList<string> without) = Food();
        if (shares is not { } food)
        {
            return new Reckoned(double.NaN, unit, ReckonedHow.Estimated, "nothing is known of the composition", null, without);
        }

        (double value, OutsideRange? outside) = relation(food);
        return new Reckoned(value, unit, ReckonedHow.Estimated, "Choi and Okos", outside ?? OutsideRange.Check("ethanol", Ethanol.Value, "% by weight", 0, 1), without);
    }

    private (FoodShares? Food, ValueList<string> Without) Food()
    {
        double water = 0, protein = 0, fat = 0, carbohydrate = 0, fibre = 0, ash = 0;
        var without = new List<string>();
        foreach (MixLine line in _lines)
        {
            if (line.Shares() is not { } food)
            {
                without.Add(line.Label);
                continue;
            }

            water += line.Share * food.WaterPercent;
            protein += line.Share * food.ProteinPercent;
            fat += line.Share * food.FatPercent;
            carbohydrate += line.Share * food.CarbohydratePercent;
            fibre += line.Share * food.FibrePercent;
            ash += line.Share * food.AshPercent;
        }

        // The shares of the lines may add up to a last digit over 1.
        static double Cap(double percent) => Math.Min(100, percent);
        return (without.Count == _lines.Length ? null : new FoodShares(Cap(water), Cap(protein), Cap(fat), Cap(carbohydrate), Cap(fibre), Cap(ash)), ValueList<string>.From(without));
    }

    private ReckonedHow HowOfDensity(double celsius, bool isStated)
        => celsius == 20 && _lines.Length == 1 && _lines[0].IsDensityMeasured ? ReckonedHow.Measured : isStated ? ReckonedHow.Computed : ReckonedHow.Estimated;

    private static ValueList<string> Together(ValueList<string> first, ValueList<string> second) => ValueList<string>.From(first.Concat(second).Distinct(StringComparer.Ordinal));

    private Reckoned Part(Func<Composition, double?> part)
    {
        (double sum, ReckonedHow how, ValueList<string> without) = Sum(part);
        return new Reckoned(sum, "% by weight", how, "compositions add by weight", null, without);
    }

    private IonContent Ion(string name, double gramsPerMol, Func<Composition, double?> milligramsPer100Grams)
    {
        (double sum, ReckonedHow how, ValueList<string> without) = Sum(milligramsPer100Grams);
        return new IonContent(name, new Reckoned(sum * 10, "mg/kg", how, "compositions add by weight", null, without), sum * 10 / gramsPerMol);
    }

    private (double Sum, ReckonedHow How, ValueList<string> Without) Sum(Func<Composition, double?> part)
    {
        double sum = 0;
        ReckonedHow how = ReckonedHow.Computed;
        List<string>? without = null;
        foreach (MixLine line in _lines)
        {
            if (line.Part(part) is not { } percent)
            {
                (without ??= []).Add(line.Label);
                continue;
            }

            sum += line.Share * percent;
            if (line.Ingredient.Composition?.Citation.Quality == CitationQuality.Estimate && line.Share >= 0.01)
            {
                how = ReckonedHow.Estimated;
            }
        }

        return (sum, how, without is null ? default : ValueList<string>.From(without));
    }
}
