using Hydrocolloid.Formulation.Internal;
using MathNet.Numerics.RootFinding;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// What decides the pH of a liquid: total acids, strong ions and water, all <b>per kg of liquid</b>. These quantities are conserved, so
/// mixing adds them up in any order and the pH of a mix is solved from its charge balance, never averaged. 25 °C. Immutable, pure.
/// <para>
/// Equation: Σ strong charge + [H+] - [OH-] + Σ charge of the acids' forms and complexes = 0, with amounts per kg of water, activities by Davies
/// (log10 γ = -0.509 z² (√I/(1 + √I) - 0.3 I)), constants of <see cref="Acids"/>, pKw 13.997 (MINTEQA2 version 4). Range: ionic strength to 0.5 mol/kg of water
/// (Davies is best below 0.1), pH 0–14. Not modelled: pairs with sodium and potassium, what sugar and alcohol do to the constants, solids.
/// </para>
/// </summary>
public sealed class AcidBaseSystem
{
    /// <summary>End point of a titration of acidity: pH 8.1 of ISO 750 [recalled]; 8.2 is used too.</summary>
    public const double DefaultEndPointPH = 8.1;

    private const double MaxDose = 1000;
    private const double MaxAcid = 20; // mol/kg
    private const double LeastWater = 0.001; // kg per kg
    private static readonly AcidBaseSystem s_water = new(new double[Acids.Ligands.Length], default, 1);

    private readonly double[] _totals; // mol per kg of liquid, by index of the acid; sulphate is in the ions
    private readonly double _water; // kg per kg of liquid

    private AcidBaseSystem(double[] totals, StrongIons ions, double water)
    {
        _totals = totals;
        Ions = ions;
        _water = water;
    }

    /// <summary>Pure water.</summary>
    public static AcidBaseSystem Water => s_water;

    /// <summary>Strong ions; the unit is mol per kg of liquid.</summary>
    public StrongIons Ions { get; }

    /// <summary>Water in % of the liquid's mass.</summary>
    public double WaterPercent => _water * 100;

    /// <summary>The acids that are present, with their totals in mol per kg of liquid.</summary>
    public ValueList<AcidAmount> AcidAmounts
        => ValueList<AcidAmount>.From(Acids.All.Where(a => _totals[a.Index] > 0).Select(a => new AcidAmount(a, _totals[a.Index])));

    /// <summary>A liquid from its acids and strong ions.</summary>
    /// <param name="acids">Total acids in mol per kg of liquid; the same acid twice adds up.</param>
    /// <param name="ions">Strong ions in mol per kg of liquid.</param>
    /// <param name="waterPercent">Water in % of the liquid's mass, above 0 and up to 100.</param>
    /// <returns>The liquid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The water is not in its range.</exception>
    public static AcidBaseSystem Of(IEnumerable<AcidAmount> acids, StrongIons ions = default, double waterPercent = 100)
    {
        double[] totals = new double[Acids.Ligands.Length];
        foreach (AcidAmount amount in Guard.NotNull(acids))
        {
            totals[Guard.NotNull(amount.Acid, nameof(acids)).Index] += amount.MolPerKg;
        }

        return new(totals, ions, Guard.InRange(waterPercent, LeastWater * 100, 100, "%") / 100);
    }

    /// <summary>
    /// A liquid from its measured pH and titratable acidity: the amount of one acid and the strong-ion difference that give both back. The acidity is
    /// the alkali that brings it to the end point, counted as that acid; dilution by the alkali is left out.
    /// </summary>
    /// <param name="pH">Measured pH at 25 °C, 0–14.</param>
    /// <param name="titratableAcidityPercent">Titratable acidity in g per 100 g of liquid, counted as <paramref name="acid"/>, 0–100.</param>
    /// <param name="acid">The acid it is counted as, which stands for all acids of the liquid.</param>
    /// <param name="waterPercent">Water in % of the liquid's mass, above 0 and up to 100.</param>
    /// <param name="endPointPH">pH at the end of the titration; 8.1 unless said otherwise.</param>
    /// <returns>The liquid; the strong ions that reproduce the pH are <see cref="StrongIons.OtherChargeMolPerKg"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range; the pH is above the end point although there is acidity; or the
    /// acidity is less than the free acid of that pH alone, or more than 20 mol/kg of the acid has.</exception>
    public static AcidBaseSystem FromMeasured(double pH, double titratableAcidityPercent, Acid acid, double waterPercent = 100, double endPointPH = DefaultEndPointPH)
    {
        Guard.NotNull(acid);
        Guard.InRange(pH, 0, 14, "");
        Guard.InRange(titratableAcidityPercent, 0, 100, "%");
        Guard.InRange(endPointPH, 0, 14, "");
        if (titratableAcidityPercent == 0)
        {
            return Of([], default, waterPercent).WithPH(pH);
        }

        Guard.InRange(pH, 0, endPointPH, "");
        AcidBaseSystem At(double mol) => Of([new AcidAmount(acid, mol)], default, waterPercent).WithPH(pH);
        double Excess(double mol) => At(mol).TitratableAcidityPercent(acid, endPointPH) - titratableAcidityPercent;
        double least = Excess(0) + titratableAcidityPercent;
        if (titratableAcidityPercent < least)
        {
            throw new ArgumentOutOfRangeException(nameof(titratableAcidityPercent), titratableAcidityPercent,
                $"Must be at least {Numbers.Significant(least, 4)} %: that much acid is free at pH {Numbers.Significant(pH, 4)}.");
        }

        double high = Math.Max(titratableAcidityPercent * 10 / acid.EquivalentMassGramsPerMol, 1e-6);
        while (high < MaxAcid && Excess(high) < 0)
        {
            high = Math.Min(high * 2, MaxAcid);
        }

        return Excess(high) < 0 || !Brent.TryFindRoot(Excess, 0, high, 1e-12, 200, out double found)
            ? throw new ArgumentOutOfRangeException(nameof(titratableAcidityPercent), titratableAcidityPercent, $"No amount of {acid.Name} up to 20 mol/kg has this acidity at pH {Numbers.Significant(pH, 4)}.")
            : At(found);
    }

    /// <summary>The same liquid with the other strong ions chosen so that it has a measured pH.</summary>
    /// <param name="pH">pH at 25 °C, 0–14.</param>
    /// <returns>The liquid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH is not from 0 to 14.</exception>
    public AcidBaseSystem WithPH(double pH)
    {
        // What closes the balance counts in the ionic strength by its own size, so the other charge is taken out before.
        var without = new AcidBaseSystem(_totals, Ions with { OtherChargeMolPerKg = 0 }, _water);
        AcidBaseState state = without.SolveAt(pH);
        return new(_totals, Ions with { OtherChargeMolPerKg = state.ClosingChargeMolPerKgWater * _water }, _water);
    }

    /// <summary>Mixes liquids by mass. Every acid, ion and the water is conserved, and the order does not matter.</summary>
    /// <param name="parts">The liquids with their parts by mass, in any unit.</param>
    /// <returns>The mix, per kg.</returns>
    /// <exception cref="ArgumentException">The parts add up to nothing.</exception>
    public static AcidBaseSystem Mix(IEnumerable<MixPart> parts)
    {
        MixPart[] all = [.. Guard.NotNull(parts)];
        double sum = all.Sum(p => p.PartByMass);
        if (!(sum > 0))
        {
            throw new ArgumentException("The parts must add up to more than 0.", nameof(parts));
        }

        double[] totals = new double[Acids.Ligands.Length];
        StrongIons ions = default;
        double water = 0;
        foreach (MixPart part in all)
        {
            double share = part.PartByMass / sum;
            AcidBaseSystem system = Guard.NotNull(part.Liquid, nameof(parts));
            for (int i = 0; i < totals.Length; i++)
            {
                totals[i] += share * system._totals[i];
            }

            ions = ions.Plus(system.Ions, share);
            water += share * system._water;
        }

        return new(totals, ions, water);
    }

    /// <summary>Adds an acid or a salt.</summary>
    /// <param name="reagent">The acid or salt.</param>
    /// <param name="gramsPerKg">Grams added to a kg of this liquid, 0–1000. Unit: g/kg.</param>
    /// <returns>The new liquid, per kg of its own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amount is not from 0 to 1000 g/kg, or takes up the liquid's water (glucono-delta-lactone).</exception>
    public AcidBaseSystem Add(Reagent reagent, double gramsPerKg)
    {
        Guard.NotNull(reagent);
        double kilograms = Guard.InRange(gramsPerKg, 0, MaxDose, "g/kg") / 1000;
        double share = 1 / (1 + kilograms);
        double[] totals = new double[_totals.Length];
        for (int i = 0; i < totals.Length; i++)
        {
            totals[i] = share * _totals[i];
        }

        if (reagent.Acid is { } acid)
        {
            totals[acid.Index] += share * kilograms * reagent.AcidMolPerKg;
        }

        if (reagent.SecondAcid is { } second)
        {
            totals[second.Index] += share * kilograms * reagent.SecondAcidMolPerKg;
        }

        double water = share * (_water + (kilograms * reagent.WaterShare));
        return water >= LeastWater ? new(totals, default(StrongIons).Plus(Ions, share).Plus(reagent.IonsPerKg, share * kilograms), water)
            : throw new ArgumentOutOfRangeException(nameof(gramsPerKg), gramsPerKg, $"Must leave at least {Text(LeastWater * 100)} % of water in the liquid, which has {Text(WaterPercent)} %.");
    }

    /// <summary>The same liquid after all carbonic acid has left as gas, as on boiling; its strong ions stay.</summary>
    /// <returns>The liquid.</returns>
    public AcidBaseSystem WithoutCarbonDioxide()
    {
        double[] totals = (double[])_totals.Clone();
        totals[Acids.Carbonic.Index] = 0;
        return new(totals, Ions, _water);
    }

    /// <summary>Total amount of an acid, all its forms together; the unit is mol per kg of liquid.</summary>
    /// <param name="acid">The acid.</param>
    /// <returns>The amount in mol per kg of liquid.</returns>
    public double TotalMolPerKg(Acid acid) => _totals[Guard.NotNull(acid).Index];

    /// <summary>The equilibrium: pH, ionic strength, free calcium, forms.</summary>
    /// <returns>The state at 25 °C.</returns>
    public AcidBaseState Solve() => Solve(null);

    /// <summary>The equilibrium at a held pH: the charge is closed by an ion of charge 1.</summary>
    /// <param name="pH">pH at 25 °C, 0–14.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pH is not from 0 to 14.</exception>
    public AcidBaseState SolveAt(double pH) => Solve(Guard.InRange(pH, 0, 14, ""));

    /// <summary>The alkali that brings the liquid to the end point, counted as an acid, in g per 100 g of liquid (%); below 0 if it is already past it.
    /// Dilution by the alkali is left out.</summary>
    /// <param name="acid">The acid it is counted as.</param>
    /// <param name="endPointPH">pH at the end of the titration; 8.1 unless said otherwise.</param>
    /// <returns>g of the acid per 100 g of liquid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The end point is not from 0 to 14.</exception>
    public double TitratableAcidityPercent(Acid acid, double endPointPH = DefaultEndPointPH)
        => SolveAt(endPointPH).ClosingChargeMolPerKgWater * _water * Guard.NotNull(acid).EquivalentMassGramsPerMol / 10;

    /// <summary>How much of an acid or a salt brings the liquid to a pH.</summary>
    /// <param name="reagent">The acid or salt.</param>
    /// <param name="targetPH">The pH to reach at 25 °C, 0–14.</param>
    /// <param name="maxGramsPerKg">The most that is tried, in g per kg of this liquid, above 0 and up to 1000; 100 (10 %) unless said otherwise. Unit: g/kg.</param>
    /// <returns>The dose, or the limit if none reaches it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public DoseResult DoseToPH(Reagent reagent, double targetPH, double maxGramsPerKg = 100)
    {
        Guard.InRange(targetPH, 0, 14, "");
        return FindDose(reagent, maxGramsPerKg, null, targetPH, s => s.PH, 1e-9, "pH ", "");
    }

    /// <summary>
    /// How much of a calcium salt raises free calcium to a level, or how much of a sequestrant lowers it. Free calcium is what no acid holds, in mmol per kg of water.
    /// </summary>
    /// <param name="reagent">A calcium salt, a citrate or a phosphate.</param>
    /// <param name="targetMmolPerKgWater">Free calcium to reach, 0 to 10 000; the unit is mmol per kg of water.</param>
    /// <param name="heldPH">pH that is held by other means, 0–14; null to let the pH move.</param>
    /// <param name="maxGramsPerKg">The most that is tried, in g per kg of this liquid, above 0 and up to 1000; 100 (10 %) unless said otherwise. Unit: g/kg.</param>
    /// <returns>The dose, or the limit if none reaches it; a salt beyond its solubility is an outcome of its own.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public DoseResult DoseToFreeCalcium(Reagent reagent, double targetMmolPerKgWater, double? heldPH = null, double maxGramsPerKg = 100)
    {
        Guard.InRange(targetMmolPerKgWater, 0, 10_000, "mmol/kg");
        if (heldPH is { } held)
        {
            Guard.InRange(held, 0, 14, "", nameof(heldPH));
        }

        return FindDose(reagent, maxGramsPerKg, heldPH, targetMmolPerKgWater, s => s.FreeCalciumMmolPerKgWater, 1e-9 * (1 + targetMmolPerKgWater), "free calcium ", " mmol/kg of water");
    }

    /// <summary>How far a dose is beyond its solubility: above 0 if not all of it dissolves.</summary>
    internal double ExcessOver(Reagent reagent, double gramsPerKg, double? heldPH)
    {
        AcidBaseSystem mix = Add(reagent, gramsPerKg);
        return reagent.Excess(gramsPerKg / (1 + (gramsPerKg / 1000)) / mix._water, mix.Solve(heldPH));
    }

    private DoseResult FindDose(Reagent reagent, double max, double? heldPH, double target, Func<AcidBaseState, double> read, double tolerance, string what, string unit)
    {
        Guard.NotNull(reagent);
        Guard.InRange(max, 1e-6, MaxDose, "g/kg", "maxGramsPerKg");
        var search = new DoseSearch(this, reagent, heldPH, read, target);
        double? found = search.Smallest(max, tolerance, out double nearest);
        double dose = found ?? nearest;
        double? dissolved = search.MostDissolved(dose);
        if (found is null && dissolved is { } most)
        {
            dose = most;
        }

        AcidBaseSystem mix = Add(reagent, dose);
        AcidBaseState state = mix.Solve(heldPH);
        string level = what + Text(target) + unit, reached = Text(read(state)) + unit;
        string limit = dissolved is { } d ? reagent.SolubilityText(d) : "";
        string explanation = (found, dissolved) switch
        {
            ({ }, null) => $"{Text(dose)} g/kg of {reagent.Name} brings it to {level}",
            ({ }, _) => $"{Text(dose)} g/kg of {reagent.Name} would give {level}, but {limit}",
            (null, { }) => $"{reagent.Name} cannot bring it {(search.Start > 0 ? "below" : "above")} {what}{reached}: {limit}",
            _ when dose == 0 => $"{reagent.Name} moves it away from {level}: within {Text(max / 10)} % it comes to {Text(read(Add(reagent, max).Solve(heldPH)))}{unit}",
            _ => $"{reagent.Name} cannot bring it {(search.Start > 0 ? "below" : "above")} {what}{reached} within {Text(max / 10)} %",
        };
        DoseOutcome outcome = found is null ? DoseOutcome.NotReached : dissolved is null ? DoseOutcome.Reached : DoseOutcome.BeyondSolubility;
        return new(reagent, outcome, dose, mix, state, explanation);
    }

    private static string Text(double value) => Numbers.Significant(value, 3);

    internal AcidBaseState Solve(double? heldPH)
    {
        Span<double> totals = stackalloc double[_totals.Length];
        double perWater = 1 / _water;
        for (int i = 0; i < _totals.Length; i++)
        {
            totals[i] = _totals[i] * perWater;
        }

        totals[Acids.Sulphate.Index] = Ions.SulphateMolPerKg * perWater;
        double[] activity = new double[_totals.Length];
        double[] gamma = new double[5];
        StrongIons ions = Ions.Times(perWater);
        var balance = new ChargeBalance(totals, ions, activity, gamma);
        balance.Solve(heldPH);
        return new(balance.PH, balance.IonicStrength, balance.FreeCalcium, balance.FreeMagnesium, balance.Closing, activity, gamma);
    }
}
