namespace Hydrocolloid.Formulation.Choosing;

/// <summary>What a proposal is scored on. The scores are this library's judgement on published facts.</summary>
public enum Criterion
{
    /// <summary>Few cautions in the review beyond those of the liquid itself: 1/(1 + how many).</summary>
    FewCautions,

    /// <summary>A clear gel; counts where a clear one is wanted. 1 brilliant, 0.5 not quite, 0 cloudy, 0.5 not known.</summary>
    Clarity,

    /// <summary>How far the gel melts above the temperature on the plate; counts where that is stated. 0 at 0 K, 1 from 15 K on and where it does not melt.</summary>
    HeatMargin,

    /// <summary>Melting in the mouth, or not; counts where the brief asks for either. 1 or 0.</summary>
    MeltInMouth,

    /// <summary>Little weeping, by <see cref="FormulaSyneresis.SyneresisRisks"/>: 1 low, 0.5 moderate or not known, 0 high.</summary>
    LittleWeeping,

    /// <summary>Standing the freezer; counts where it is frozen. 1 stands it, 0.5 not known, 0 weakened.</summary>
    Freezing,

    /// <summary>Little work: 1 for one thing to weigh beside the liquid, 1/2 for two, 1/3 for three.</summary>
    LittleWork,

    /// <summary>A small dose, which is tasted less and costs less: 1/(1 + the agents in % by weight of the continuous mix).</summary>
    SmallDose,

    /// <summary>How well the dose is known: 1 read in its source, 0.75 recalled, 0.5 a judgement or a rule of the trade.</summary>
    KnownDose,
}
