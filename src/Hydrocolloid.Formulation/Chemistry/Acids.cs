using static Hydrocolloid.Formulation.Chemistry.ChemistrySources;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>
/// The acids, with dissociation constants at 25 °C and zero ionic strength, and their complexes with calcium and magnesium
/// (log β of M + L + h H, 25 °C, zero ionic strength). Molar masses from the standard atomic weights of IUPAC 2021 [recalled].
/// </summary>
public static class Acids
{
    /// <summary>Citric acid, E 330.</summary>
    public static Acid Citric { get; } = new(0, "citric acid", "C6H8O7", 192.123, 3, -3,
        [Step(3.128, Minteq("NIST 46.2")), Step(4.761, Minteq("NIST 46.2")), Step(6.396, Minteq("NIST 46.2"))],
        Ca(0, 4.87, Minteq("NIST 46.2")), Ca(1, 9.26, Minteq()), Ca(2, 12.257, Minteq()), Mg(0, 4.89, Minteq()), Mg(1, 8.91, Minteq()));

    /// <summary>Malic acid, E 296.</summary>
    public static Acid Malic { get; } = new(1, "malic acid", "C4H6O5", 134.087, 2, -2,
        [Step(3.459, IupacPKa("Eden and Bates 1959")), Step(5.097, IupacPKa("Eden and Bates 1959"))],
        Ca(0, 2.66, Crc));

    /// <summary>L-(+)-Tartaric acid, E 334.</summary>
    public static Acid Tartaric { get; } = new(2, "tartaric acid", "C4H6O6", 150.086, 2, -2,
        [Step(3.036, Minteq("NIST 46.2")), Step(4.366, Minteq("NIST 46.2"))],
        Ca(0, 2.8, Minteq()), Ca(1, 5.86, Minteq()), Mg(0, 2.3, Minteq()));

    /// <summary>Lactic acid, E 270.</summary>
    public static Acid Lactic { get; } = new(3, "lactic acid", "C3H6O3", 90.078, 1, -1,
        [Step(3.857, EchaLactic)], Ca(0, 1.69, Vavrusova));

    /// <summary>Acetic acid, E 260.</summary>
    public static Acid Acetic { get; } = new(4, "acetic acid", "C2H4O2", 60.052, 1, -1,
        [Step(4.757, Minteq("NIST 46.4"))], Ca(0, 1.18, Minteq()));

    /// <summary>L-Ascorbic acid, E 300. Both constants are recalled: 4.04 to 4.17 are in print for the first.</summary>
    public static Acid Ascorbic { get; } = new(5, "ascorbic acid", "C6H8O6", 176.124, 1, -2,
        [Step(4.17, Merck), Step(11.57, Merck)]);

    /// <summary>Orthophosphoric acid, E 338.</summary>
    public static Acid Phosphoric { get; } = new(6, "phosphoric acid", "H3PO4", 97.994, 2, -3,
        [Step(2.148, Minteq("NIST 46.3")), Step(7.198, Minteq("NIST 46.3")), Step(12.375, Minteq("NIST 46.3"))],
        Ca(0, 6.46, Minteq()), Ca(1, 15.035, Minteq()), Ca(2, 20.923, Minteq()));

    /// <summary>Carbonic acid, dissolved carbon dioxide included, E 290.</summary>
    public static Acid Carbonic { get; } = new(7, "carbonic acid", "H2CO3", 62.024, 1, -2,
        [Step(6.352, Minteq("NIST 46.4")), Step(10.329, Minteq("NIST 46.4"))],
        Ca(0, 3.2, Minteq()), Ca(1, 11.599, Minteq()));

    /// <summary>Oxalic acid. The second constant is recalled.</summary>
    public static Acid Oxalic { get; } = new(8, "oxalic acid", "C2H2O4", 90.034, 2, -2,
        [Step(1.252, IupacPKa("McAuley and Nancollas 1961")), Step(4.266, Crc)], Ca(0, 3.19, ThermoChimie()));

    /// <summary>Succinic acid, E 363.</summary>
    public static Acid Succinic { get; } = new(9, "succinic acid", "C4H6O4", 118.088, 2, -2,
        [Step(4.207, Fromm), Step(5.636, Fromm)], Ca(0, 2.34, ThermoChimie()));

    /// <summary>D-Gluconic acid, E 574; the hydrolysed form of glucono-delta-lactone.</summary>
    public static Acid Gluconic { get; } = new(10, "gluconic acid", "C6H12O7", 196.155, 1, -1,
        [Step(3.9, ThermoChimie())], Ca(0, 1.94, Vavrusova));

    /// <summary>Pyrophosphoric acid, the acid of E 450.</summary>
    public static Acid Pyrophosphoric { get; } = new(11, "pyrophosphoric acid", "H4P2O7", 177.973, 2, -4,
        [Step(1.0, ThermoChimie()), Step(2.25, ThermoChimie()), Step(6.65, ThermoChimie()), Step(9.4, ThermoChimie())],
        Ca(0, 7.5, ThermoChimie()), Ca(1, 13.8, ThermoChimie()), Mg(0, 7.2, ThermoChimie()));

    /// <summary>Phthalic acid; not a food, but the acid of a pH standard.</summary>
    public static Acid Phthalic { get; } = new(12, "phthalic acid", "C8H6O4", 166.132, 2, -2,
        [Step(2.95, Minteq()), Step(5.408, Minteq())]);

    /// <summary>Boric acid; not a food, but the acid of a pH standard.</summary>
    public static Acid Boric { get; } = new(13, "boric acid", "H3BO3", 61.831, 1, -1, [Step(9.236, Minteq())]);

    /// <summary>Sulphate as a ligand: a strong ion, but it binds calcium. HSO4- is left out: it matters below pH 3 only.</summary>
    internal static Acid Sulphate { get; } = new(14, "sulphate", "SO4", 96.06, 2, -2, [], Ca(0, 2.36, Minteq()));

    /// <summary>Every acid, in the order of this page.</summary>
    public static ValueList<Acid> All { get; } = ValueList<Acid>.From(
        [Citric, Malic, Tartaric, Lactic, Acetic, Ascorbic, Phosphoric, Carbonic, Oxalic, Succinic, Gluconic, Pyrophosphoric, Phthalic, Boric]);

    /// <summary>The acids and sulphate, by index.</summary>
    internal static Acid[] Ligands { get; } = [.. All, Sulphate];

    private static Cited<double> Step(double pKa, Citation citation) => new(pKa, citation);

    private static Complex Ca(int protons, double logBeta, Citation citation) => new(false, protons, logBeta, citation);

    private static Complex Mg(int protons, double logBeta, Citation citation) => new(true, protons, logBeta, citation);
}
