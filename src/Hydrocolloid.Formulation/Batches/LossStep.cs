namespace Hydrocolloid.Formulation;

/// <summary>The steps that lose mass, in their order.</summary>
public enum LossStep
{
    /// <summary>Water boils off; weighed before anything is topped up.</summary>
    Evaporation,

    /// <summary>Mix stays in the strainer.</summary>
    Straining,

    /// <summary>Mix stays on pan, jug and moulds.</summary>
    Transfer,

    /// <summary>Set gel is cut away.</summary>
    Trimming,
}
