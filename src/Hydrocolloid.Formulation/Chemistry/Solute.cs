using static Hydrocolloid.Formulation.Chemistry.ChemistrySources;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>A solute that lowers water activity: molar mass and, except for salt, Norrish's constant at 25 °C. Immutable.</summary>
public sealed class Solute
{
    private Solute(string name, double molarMass, double? norrish, Citation citation)
    {
        Name = name;
        MolarMassGramsPerMol = molarMass;
        Norrish = norrish is { } k ? new Cited<double>(k, citation) : null;
    }

    /// <summary>Sucrose.</summary>
    public static Solute Sucrose { get; } = new("sucrose", 342.3, 6.47, NorrishRecalled);

    /// <summary>Glucose (dextrose), anhydrous.</summary>
    public static Solute Glucose { get; } = new("glucose", 180.16, 2.25, NorrishRecalled);

    /// <summary>Fructose.</summary>
    public static Solute Fructose { get; } = new("fructose", 180.16, 2.25, NorrishRecalled);

    /// <summary>Glycerol, E 422.</summary>
    public static Solute Glycerol { get; } = new("glycerol", 92.09, 1.16, AlditolReview);

    /// <summary>Erythritol, E 968.</summary>
    public static Solute Erythritol { get; } = new("erythritol", 122.12, 1.34, AlditolReview);

    /// <summary>Xylitol, E 967.</summary>
    public static Solute Xylitol { get; } = new("xylitol", 152.15, 1.66, AlditolReview);

    /// <summary>Sorbitol, E 420.</summary>
    public static Solute Sorbitol { get; } = new("sorbitol", 182.17, 1.65, AlditolReview);

    /// <summary>Mannitol, E 421; an isomer of sorbitol, so of the same molar mass.</summary>
    public static Solute Mannitol { get; } = new("mannitol", 182.17, 0.906, AlditolReview);

    /// <summary>Sodium chloride; by Pitzer's equation instead of Norrish's.</summary>
    public static Solute SodiumChloride { get; } = new("sodium chloride", 58.44, null, PitzerRecalled);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Molar mass. Unit: g/mol.</summary>
    public double MolarMassGramsPerMol { get; }

    /// <summary>Norrish's constant K of ln aw = ln xw - K x², at 25 °C; it has no unit. Null for salt.</summary>
    public Cited<double>? Norrish { get; }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
