using static Hydrocolloid.Formulation.Chemistry.ChemistrySources;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>A calcium salt that can settle out, with its solubility product at 25 °C and zero ionic strength. Immutable.</summary>
public sealed class CalciumSolid
{
    private CalciumSolid(string name, int calciumIons, Acid anion, int anions, int protons, double logKsp, Citation citation)
    {
        Name = name;
        CalciumIons = calciumIons;
        Anion = anion;
        Anions = anions;
        Protons = protons;
        LogSolubilityProduct = new Cited<double>(logKsp, citation);
    }

    /// <summary>Tricalcium citrate tetrahydrate. -17.81 is in print too (Ciavatta, in sodium perchlorate).</summary>
    public static CalciumSolid Citrate { get; } = new("tricalcium citrate tetrahydrate", 3, Acids.Citric, 2, 0, -17.9, ThermoChimie());

    /// <summary>Calcium hydrogen phosphate dihydrate.</summary>
    public static CalciumSolid HydrogenPhosphate { get; } = new("calcium hydrogen phosphate dihydrate", 1, Acids.Phosphoric, 1, 1, -18.995, Minteq());

    /// <summary>Tricalcium phosphate, beta.</summary>
    public static CalciumSolid TricalciumPhosphate { get; } = new("tricalcium phosphate", 3, Acids.Phosphoric, 2, 0, -28.92, Minteq());

    /// <summary>Calcium sulphate dihydrate, gypsum.</summary>
    public static CalciumSolid Gypsum { get; } = new("calcium sulphate dihydrate", 1, Acids.Sulphate, 1, 0, -4.61, Minteq());

    /// <summary>Calcium carbonate, calcite.</summary>
    public static CalciumSolid Calcite { get; } = new("calcium carbonate", 1, Acids.Carbonic, 1, 0, -8.48, Minteq());

    /// <summary>Calcium oxalate monohydrate.</summary>
    public static CalciumSolid Oxalate { get; } = new("calcium oxalate monohydrate", 1, Acids.Oxalic, 1, 0, -8.73, ThermoChimie());

    /// <summary>Calcium gluconate.</summary>
    public static CalciumSolid Gluconate { get; } = new("calcium gluconate", 1, Acids.Gluconic, 2, 0, -4.19, ThermoChimie());

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>log10 of the solubility product, amounts in mol per kg of water.</summary>
    public Cited<double> LogSolubilityProduct { get; }

    internal int CalciumIons { get; }

    internal Acid Anion { get; }

    internal int Anions { get; }

    internal int Protons { get; }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
