using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>The heat of a formula's parts as they are joined, and the boil of its pot. Heat lost to vessel and air is not counted; the margin above setting is for it.</summary>
internal sealed class Tempering(Formula formula, Kitchen kitchen)
{
    // The specific heat of a wet food changes by about 2 % from 5 to 95 °C; it is taken in the middle.
    private const double MiddleCelsius = 50;

    /// <summary>The temperature at which a line is, unless it is heated.</summary>
    public double CelsiusOf(FormulaLine line) => line.Details.Celsius ?? kitchen.RoomCelsius;

    /// <summary>Lines as one body at a temperature; null if the composition of one is not known. Masses are per unit of base.</summary>
    public JoiningBody? Body(IReadOnlyList<FormulaLine> lines, double celsius, double part = 1)
    {
        var mix = new MixContents(formula, lines);
        Reckoned heat = mix.SpecificHeatAt(Temperature.FromDegreesCelsius(MiddleCelsius));
        return heat.Value > 0 && heat.Without.IsEmpty
            ? JoiningBody.OfSpecificHeat(Mass.FromKilograms(mix.MassPerBase * part), Temperature.FromDegreesCelsius(celsius), SpecificEntropy.FromJoulesPerKilogramKelvin(heat.Value * 1000))
            : null;
    }

    /// <summary>Where the lines boil in this kitchen; °C. What is not known of them counts as water.</summary>
    public BoilingPoint Boils(IReadOnlyList<FormulaLine> lines) => Boiling.PointOf(Liquid(lines), kitchen.Air(formula.Process));

    public SimmerAnswer Reaches(double celsius, IReadOnlyList<FormulaLine> lines)
        => Boiling.Reaches(new TemperatureRange(new NumberRange(celsius, null)), Liquid(lines), kitchen.Air(formula.Process));

    /// <summary>The largest share of the liquid base that needs no heating (see <see cref="FormulaMethod.LargestUnheatedShare"/>).</summary>
    public UnheatedShare LargestUnheatedShare()
    {
        FormulaLine[] liquids = [.. formula.Lines.Where(l => l.IsBase && l.IsContinuous)];
        FormulaLine[] added = [.. formula.Lines.Where(l => !l.IsBase && l.IsContinuous)];
        Agent[] agents = [.. added.Where(l => l.Ingredient.Profile is not null).Select(l => new Agent(l))];
        Agent[] heated = [.. agents.Where(a => !a.IsColdSoluble)];
        if (heated.Length == 0 || liquids.Length == 0)
        {
            return new UnheatedShare(UnheatedLimit.NothingIsHeated, 100, null, null, null, default, default);
        }

        var assumptions = new List<string> { "the vessel and the air take no heat" };
        if (liquids.Any(l => l.Details.Celsius is null))
        {
            assumptions.Add($"lines whose temperature is not stated are at {Numbers.Significant(kitchen.RoomCelsius, 4)} °C");
        }

        ColdShare? heat = ByHeat(liquids, added, agents, heated, assumptions);
        double percent = heat is { Outcome: ColdShareOutcome.UpToShare } ? heat.ColdPercent : heat is { Outcome: ColdShareOutcome.NotEnoughHeat } ? 0 : 100;
        UnheatedLimit limit = heat is { Outcome: ColdShareOutcome.NotEnoughHeat } ? UnheatedLimit.NotEnoughHeat : UnheatedLimit.Setting;

        // c = a/(added + (1 - s)·L) must not pass c max, so s = 1 - (a/c max - added)/L.
        double liquid = Sum(liquids), inPot = Sum(added);
        Agent? deciding = null;
        double deciderPercent = double.NaN;
        foreach (Agent agent in heated)
        {
            if (agent.HighestPercent()?.Value.Max is { } highest)
            {
                double mass = formula.Proportions.MassOf(agent.Line);
                double most = Math.Max(0, 100 * (1 - (((mass * 100 / highest) - inPot) / liquid)));
                if (most < percent)
                {
                    (percent, deciding, limit) = (most, agent, UnheatedLimit.Concentration);
                    deciderPercent = mass * 100 / (inPot + ((1 - (most / 100)) * liquid));
                }
            }
        }

        IEnumerable<Citation> citations = agents.Where(a => a.SetsOnCooling).Select(a => a.Profile.Setting.Window!.Citation)
            .Concat(heated.Select(a => a.Hydration.Window.Citation)).Concat(deciding is null ? [] : [deciding.HighestPercent()!.Citation]);
        return new UnheatedShare(limit, percent, deciding?.Label, deciding is null ? null : deciderPercent, heat,
            ValueList<string>.Own([.. assumptions]), ValueList<Citation>.From(citations.Distinct()));
    }

    private ColdShare? ByHeat(FormulaLine[] liquids, FormulaLine[] added, Agent[] agents, Agent[] heated, List<string> assumptions)
    {
        double sets = agents.Max(a => a.SetsBelowCelsius);
        double hot = Math.Min(heated.Max(a => a.NeedsCelsius), Boils(liquids).Temperature.DegreesCelsius);
        double cold = liquids.Sum(l => CelsiusOf(l) * formula.Proportions.MassOf(l)) / Sum(liquids);
        if (double.IsNegativeInfinity(sets) || cold >= hot)
        {
            return null;
        }

        FormulaLine[] pieces = [.. formula.Lines.Where(l => !l.IsContinuous)];
        JoiningBody?[] others = [Body(added, hot), .. pieces.Select(p => Body([p], CelsiusOf(p)))];
        if (Body(liquids, hot) is not { } body || others.Any(o => o is null))
        {
            assumptions.Add("the balance of heat is left out: the composition of a line is not known");
            return null;
        }

        return Joining.LargestColdShare(body, body.At(Temperature.FromDegreesCelsius(cold)).OfMass(Mass.Zero), [.. others.Select(o => o!.Value)],
            Temperature.FromDegreesCelsius(sets + kitchen.MarginKelvins));
    }

    private double Sum(IEnumerable<FormulaLine> lines) => lines.Sum(formula.Proportions.MassOf);

    // Sugars count as sucrose, which raises the boil least, so the pot is not taken for hotter than it is.
    private LiquidShares Liquid(IReadOnlyList<FormulaLine> lines)
    {
        var mix = new MixContents(formula, lines);
        double sugars = mix.Sugars.Value, ethanol = mix.Ethanol.Value, salt = mix.Sodium.MmolPerKg * 58.44 / 10_000;
        double water = mix.Water.Without.IsEmpty ? mix.Water.Value : 100 - sugars - ethanol - salt;
        return water > 0.1 && water + sugars + ethanol + salt <= 100 ? new LiquidShares(water, sugars, 0, salt, ethanol) : new LiquidShares(100);
    }
}
