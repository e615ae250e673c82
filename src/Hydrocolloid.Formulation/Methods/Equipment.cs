namespace Hydrocolloid.Formulation;

/// <summary>What a kitchen has to heat, shear and de-aerate with.</summary>
[Flags]
public enum Equipment
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>A pan on a stove.</summary>
    Pan = 1,

    /// <summary>A hand blender.</summary>
    HandBlender = 2,

    /// <summary>A jug blender: strong shear, but it draws in air.</summary>
    JugBlender = 4,

    /// <summary>A pressure cooker.</summary>
    PressureCooker = 8,

    /// <summary>A mixer that heats and stirs.</summary>
    ThermalMixer = 16,

    /// <summary>A steamer or steam oven.</summary>
    Steam = 32,

    /// <summary>A vacuum chamber.</summary>
    VacuumChamber = 64,
}
