using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Compatibility.Rules;

/// <summary>A hydrocolloid in a formula with its concentration in the continuous mix, which is what its dose figures are about.</summary>
internal sealed class AgentDose
{
    private AgentDose(Formula formula, FormulaLine line)
    {
        Formula = formula;
        Line = line;
        Profile = line.Ingredient.Profile!;
        Percent = formula.Proportions.PercentOfContinuousMix(line);
    }

    public Formula Formula { get; }

    public FormulaLine Line { get; }

    public HydrocolloidProfile Profile { get; }

    /// <summary>% by weight of the continuous mix.</summary>
    public double Percent { get; }

    public string Name => Line.Ingredient.Name;

    /// <summary>The window of the texture that the formula aims at; null if it aims at none or none is known.</summary>
    public DoseWindow? ChosenWindow => Formula.Service.Texture is { } texture ? Profile.WindowFor(texture) : null;

    /// <summary>Below the lowest dose that gels alone, and not a dose of the texture aimed at (a fluid gel may need less).</summary>
    public bool IsUnderMinimum => Profile.MinimumGellingPercent is { Value.Min: { } minimum } && Percent < minimum
        && ChosenWindow?.Percent.Value.Contains(Percent) != true;

    /// <summary>True if no window and no published figure of the catalogue holds the dose.</summary>
    public bool IsImplausible => Profile.DoseWindows.Count > 0 && !PublishedRanges().Any(r => r.Contains(Percent));

    public static IEnumerable<AgentDose> All(Formula formula)
        => formula.Lines.Where(l => l.IsContinuous && l.Ingredient.Profile is not null).Select(l => new AgentDose(formula, l));

    /// <summary>The reading that a moved decimal sign would give, if it lies in a working window: the factor and the window.</summary>
    public (double Factor, DoseWindow Window)? SlipReading()
    {
        if (!IsImplausible)
        {
            return null;
        }

        IEnumerable<DoseWindow> windows = ChosenWindow is { } chosen ? [chosen, .. Profile.DoseWindows] : Profile.DoseWindows;
        foreach (DoseWindow window in windows)
        {
            foreach (double factor in (double[])[10, 0.1, 100, 0.01])
            {
                if (window.Percent.Value.Contains(Percent * factor))
                {
                    return (factor, window);
                }
            }
        }

        return null;
    }

    public Evidence Evidence(NumberRange limit) => new($"{Name} in the continuous mix", Percent, "% by weight of it", limit);

    /// <summary>The dose as it is written and as it counts.</summary>
    public string Stated()
        => $"{Name} is dosed at {Line.Dose}, which is {Numbers.Significant(Percent, 3)} % of the continuous mix";

    private IEnumerable<NumberRange> PublishedRanges()
        => Profile.DoseWindows.SelectMany(w => w.Percent.Alternatives.Select(a => a.Value).Append(w.Percent.Value))
            .Concat(Profile.PublishedDoses.Select(d => d.Percent.Value));
}
