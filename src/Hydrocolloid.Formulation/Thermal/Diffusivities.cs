using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Thermal;

/// <summary>
/// How fast small molecules move in water, and how much a gel slows them. All at infinite dilution: strong syrups are slower (sucrose about 0.2 % per mmol/L at first, Ribeiro 2006, to 0.1 mol/L only).
/// </summary>
public static class Diffusivities
{
    /// <summary>Sucrose, 25–45 °C.</summary>
    public static SoluteDiffusivity Sucrose { get; } = new("sucrose", CoolingSources.Ribeiro, (298.15, 0.523), (303.15, 0.609), (308.15, 0.708), (312.15, 0.8), (318.15, 0.915));

    /// <summary>Glucose, 25–39 °C.</summary>
    public static SoluteDiffusivity Glucose { get; } = new("glucose", CoolingSources.Ribeiro, (298.15, 0.679), (303.15, 0.767), (308.15, 0.855), (312.15, 0.975));

    /// <summary>Fructose, 25–39 °C.</summary>
    public static SoluteDiffusivity Fructose { get; } = new("fructose", CoolingSources.Ribeiro, (298.15, 0.686), (303.15, 0.769), (308.15, 0.852), (312.15, 0.941));

    /// <summary>Lactose, 25–55 °C.</summary>
    public static SoluteDiffusivity Lactose { get; } = new("lactose", CoolingSources.Ribeiro, (298.15, 0.566), (303.15, 0.64), (308.15, 0.719), (312.15, 0.785), (318.15, 0.858), (328.15, 1.056));

    /// <summary>Ethanol, 25 °C.</summary>
    public static SoluteDiffusivity Ethanol { get; } = new("ethanol", CoolingSources.EthanolSheet, (298.15, 1.28));

    /// <summary>Sodium chloride, 25 °C (recalled; about 1.48 at 0.5–1 mol/L).</summary>
    public static SoluteDiffusivity SodiumChloride { get; } = new("sodium chloride", CoolingSources.SaltRecalled, (298.15, 1.61));

    /// <summary>Calcium chloride, 25 °C (recalled).</summary>
    public static SoluteDiffusivity CalciumChloride { get; } = new("calcium chloride", CoolingSources.SaltRecalled, (298.15, 1.335));

    /// <summary>Caffeine, 25 °C.</summary>
    public static SoluteDiffusivity Caffeine { get; } = new("caffeine", CoolingSources.Caffeine, (298.15, 0.679));

    /// <summary>Agar, carrageenan and gellan up to 1.5 %: diffusivity in the gel over that in water, no unit. An estimate.</summary>
    public static Cited<double> RatioInThinPolysaccharideGel { get; } = Ratio(0.95, "from the obstruction of a few % of gel substance", CoolingSources.Lauffer.Source);

    /// <summary>Gelatin of 2–5 %: diffusivity in the gel over that in water, no unit. An estimate.</summary>
    public static Cited<double> RatioInGelatin { get; } = Ratio(0.85, "sucrose in 3.8 % gelatin at 5 °C is recalled as 0.73", CoolingSources.GelatinRecalled);

    /// <summary>Gelatin of 10 %: diffusivity in the gel over that in water, no unit. An estimate.</summary>
    public static Cited<double> RatioInStrongGelatin { get; } = Ratio(0.5, "sucrose in 10.35 % gelatin at 5 °C is recalled as 0.38", CoolingSources.GelatinRecalled);

    /// <summary>Calcium alginate of 1–3 %: diffusivity in the gel over that in water, no unit. An estimate.</summary>
    public static Cited<double> RatioInCalciumAlginate { get; } = Ratio(0.8, "lactose at 25 °C: 0.83, in 3–6 % alginate alike", CoolingSources.Gabardo);

    /// <summary>Obstruction by the gel's own substance, randomly oriented rods: (1 - 5φ/3)/(1 - φ). Source: Lauffer, Theory of diffusion in gels (1961).</summary>
    /// <param name="substancePercent">Gel substance with its bound water φ, % by volume, 0–60. The theory is of dilute gels; a solute about as large as the meshes is slowed more.</param>
    /// <returns>Diffusivity in the gel over that in water, no unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is outside its range; at 60 % the relation comes to 0.</exception>
    public static double ObstructionRatio(double substancePercent)
    {
        double phi = Guard.InRange(substancePercent, 0, 60, "%") / 100;
        return Math.Max(0, (1 - (5 * phi / 3)) / (1 - phi));
    }

    private static Cited<double> Ratio(double value, string note, Source restsOn)
        => new(value, CoolingSources.Judgement("gel-diffusivity-ratio", "Ratio of diffusivities, judged between measured gels"), note, ValueList<Source>.From([restsOn]));
}
