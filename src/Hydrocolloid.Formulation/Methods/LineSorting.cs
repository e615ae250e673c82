using Hydrocolloid.Formulation.Compatibility.Rules;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Methods;

/// <summary>Sorts the lines of a formula by when they go in, and says why a line goes in elsewhere than the formula has it.</summary>
internal sealed class LineSorting
{
    // A salt with more calcium than this, in mg per 100 g, is there for its calcium; milk powder has 1 300.
    private const double CalciumSourceMilligrams = 5000;

    private static readonly string[] s_sequestrants = ["sodium-citrate", "sodium-hexametaphosphate", "tetrasodium-pyrophosphate"];

    private readonly Formula _formula;
    private readonly Agent[] _agents;

    public LineSorting(Formula formula, Agent[] agents)
    {
        _formula = formula;
        _agents = agents;
        int first = agents.Length == 0 ? formula.Phases.Count : agents.Min(a => a.Line.PhaseIndex);
        ValueList<string> carriers = formula.Process.Carriers;
        FormulaLine[] mix = [.. formula.Lines.Where(l => l.IsContinuous)];
        Carriers = [.. mix.Where(l => l.IsBase && (carriers.IsEmpty || carriers.Contains(l.Label)))];
        Rest = [.. mix.Where(l => l.IsBase && !Carriers.Contains(l))];
        Pieces = [.. formula.Lines.Where(l => !l.IsContinuous)];

        FormulaLine[] additions = [.. mix.Where(l => !l.IsBase && l.Ingredient.Profile is null)];
        FormulaLine[] early = [.. additions.Where(l => l.PhaseIndex <= first)];
        bool calcium = agents.Any(a => a.IsCalciumSensitive);
        Sequestrants = calcium ? [.. additions.Where(IsSequestrant)] : [];
        CalciumLast = calcium ? [.. additions.Where(IsCalciumSource)] : [];
        MixContents? medium = Carriers.Length + early.Length == 0 ? null : new MixContents(formula, [.. Carriers, .. early, .. agents.Select(a => a.Line)]);
        foreach (FormulaLine line in additions.Where(l => !Sequestrants.Contains(l) && !CalciumLast.Contains(l)))
        {
            if (line.Ingredient.Composition?.Value.EthanolPercent > 0)
            {
                OffTheHeat.Add(line);
            }
            else if (medium is not null && early.Contains(line) && Harm(line, medium) is { } reason)
            {
                Delayed.Add((line, reason));
            }
            else
            {
                (line.PhaseIndex <= first ? Before : After).Add(line);
            }
        }
    }

    public FormulaLine[] Carriers { get; }

    /// <summary>Parts of the base that do not carry the hydrocolloids.</summary>
    public FormulaLine[] Rest { get; }

    public FormulaLine[] Pieces { get; }

    public FormulaLine[] Sequestrants { get; }

    public FormulaLine[] CalciumLast { get; }

    public List<FormulaLine> Before { get; } = [];

    public List<FormulaLine> After { get; } = [];

    /// <summary>Lines that would harm a hydrocolloid while it hydrates, with why.</summary>
    public List<(FormulaLine Line, Cited<string> Reason)> Delayed { get; } = [];

    public List<FormulaLine> OffTheHeat { get; } = [];

    /// <summary>What the hydrocolloids are dispersed and heated in.</summary>
    public IEnumerable<FormulaLine> Medium => Carriers.Concat(Sequestrants).Concat(Before);

    public static bool IsSequestrant(FormulaLine line) => s_sequestrants.Contains(line.Ingredient.Id) || s_sequestrants.Contains(line.Ingredient.BasedOn?.Id);

    public static bool IsCalciumSource(FormulaLine line) => line.Ingredient.Composition?.Value.CalciumMg >= CalciumSourceMilligrams;

    /// <summary>A dry sugar that goes in before the hydrocolloids, to separate their grains with.</summary>
    public FormulaLine? SeparatingSugar() => Before.FirstOrDefault(l => l.Ingredient is { Category: "sweetener", WaterPercent: < 2 });

    /// <summary>The quantity of a limit as the mix has it; null if it is not known, or is of no mix.</summary>
    public static double? Measure(LimitedQuantity quantity, MixContents mix) => quantity switch
    {
        LimitedQuantity.Ph => AcidRules.Rounded(mix.Ph)?.Value,
        LimitedQuantity.Ethanol => mix.Ethanol.Value,
        LimitedQuantity.SolubleSolids => mix.Brix.Value,
        LimitedQuantity.Calcium => mix.Calcium.MmolPerKg,
        LimitedQuantity.Potassium => mix.Potassium.MmolPerKg,
        LimitedQuantity.Sodium => mix.Sodium.MmolPerKg,
        LimitedQuantity.Cations => mix.Calcium.MmolPerKg + mix.Magnesium.MmolPerKg + mix.Potassium.MmolPerKg + mix.Sodium.MmolPerKg,
        LimitedQuantity.Fat => mix.Fat.Value,
        _ => null,
    };

    private Cited<string>? Harm(FormulaLine line, MixContents medium)
    {
        bool isAcid = line.Ingredient.Category == "acid";
        foreach (Agent agent in _agents)
        {
            foreach (AgentLimit limit in agent.Profile.Limits)
            {
                if (limit.Stage is not LimitStage.Finished && Adds(line, limit.Quantity, isAcid) && Measure(limit.Quantity, medium) is { } value
                    && (isAcid ? value < limit.Range.Value.Min : value > limit.Range.Value.Max))
                {
                    return new Cited<string>($"{agent.Line.Ingredient.Name}: {limit.Consequence}", limit.Range.Citation);
                }
            }

            if (isAcid && agent.SetsByAcid)
            {
                SettingTrigger trigger = agent.Profile.Setting.Triggers.First(t => t.Cause == SettingCause.Acid);
                return new Cited<string>($"Acid sets the {agent.Name}, so it comes when that is dissolved. {trigger.Description.Value}", trigger.Description.Citation);
            }

            if (isAcid && agent.Profile.Ph?.Range is { } ph && medium.Ph?.Value < ph.Value.Min)
            {
                return new Cited<string>($"The {agent.Name} stands pH {ph.Value}; acid that waits until it is dissolved harms it least.", ph.Citation);
            }
        }

        return null;
    }

    private static bool Adds(FormulaLine line, LimitedQuantity quantity, bool isAcid) => quantity switch
    {
        LimitedQuantity.Ph => isAcid,
        LimitedQuantity.Sodium or LimitedQuantity.Potassium or LimitedQuantity.Cations or LimitedQuantity.Calcium => line.Ingredient.Category == "salt" && !IsSequestrant(line),
        LimitedQuantity.SolubleSolids => line.Ingredient.Category == "sweetener",
        LimitedQuantity.Fat => line.Ingredient.Category == "fat",
        _ => false,
    };
}
