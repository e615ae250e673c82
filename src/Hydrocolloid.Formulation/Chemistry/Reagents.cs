using static Hydrocolloid.Formulation.Chemistry.ChemistrySources;

namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>Acids and salts to weigh in, each hydrate for itself. Polyphosphates of changing length (E 452) are left out: no constants are at hand.</summary>
public static class Reagents
{
    /// <summary>Citric acid.</summary>
    public static Reagent CitricAcid { get; } = new("citric acid", "C6H8O7", 192.123, Acids.Citric);

    /// <summary>Citric acid monohydrate.</summary>
    public static Reagent CitricAcidMonohydrate { get; } = new("citric acid monohydrate", "C6H8O7.H2O", 210.138, Acids.Citric, water: 1);

    /// <summary>Malic acid.</summary>
    public static Reagent MalicAcid { get; } = new("malic acid", "C4H6O5", 134.087, Acids.Malic);

    /// <summary>Tartaric acid.</summary>
    public static Reagent TartaricAcid { get; } = new("tartaric acid", "C4H6O6", 150.086, Acids.Tartaric);

    /// <summary>Lactic acid.</summary>
    public static Reagent LacticAcid { get; } = new("lactic acid", "C3H6O3", 90.078, Acids.Lactic);

    /// <summary>Acetic acid.</summary>
    public static Reagent AceticAcid { get; } = new("acetic acid", "C2H4O2", 60.052, Acids.Acetic);

    /// <summary>Ascorbic acid.</summary>
    public static Reagent AscorbicAcid { get; } = new("ascorbic acid", "C6H8O6", 176.124, Acids.Ascorbic);

    /// <summary>Phosphoric acid.</summary>
    public static Reagent PhosphoricAcid { get; } = new("phosphoric acid", "H3PO4", 97.994, Acids.Phosphoric);

    /// <summary>Glucono-delta-lactone as gluconic acid, after it has hydrolysed.</summary>
    public static Reagent GluconoDeltaLactone { get; } = new("glucono-delta-lactone", "C6H10O6", 178.140, Acids.Gluconic, water: -1);

    /// <summary>Trisodium citrate dihydrate.</summary>
    public static Reagent TrisodiumCitrateDihydrate { get; } = new("trisodium citrate dihydrate", "Na3C6H5O7.2H2O", 294.099, Acids.Citric, ions: new() { SodiumMolPerKg = 3 }, water: 2);

    /// <summary>Trisodium citrate, anhydrous.</summary>
    public static Reagent TrisodiumCitrate { get; } = new("trisodium citrate, anhydrous", "Na3C6H5O7", 258.069, Acids.Citric, ions: new() { SodiumMolPerKg = 3 });

    /// <summary>Disodium hydrogen citrate.</summary>
    public static Reagent DisodiumCitrate { get; } = new("disodium hydrogen citrate", "Na2C6H6O7", 236.087, Acids.Citric, ions: new() { SodiumMolPerKg = 2 });

    /// <summary>Monosodium citrate.</summary>
    public static Reagent MonosodiumCitrate { get; } = new("monosodium citrate", "NaC6H7O7", 214.105, Acids.Citric, ions: new() { SodiumMolPerKg = 1 });

    /// <summary>Tripotassium citrate monohydrate.</summary>
    public static Reagent TripotassiumCitrateMonohydrate { get; } = new("tripotassium citrate monohydrate", "K3C6H5O7.H2O", 324.408, Acids.Citric, ions: new() { PotassiumMolPerKg = 3 }, water: 1);

    /// <summary>Potassium dihydrogen citrate.</summary>
    public static Reagent PotassiumDihydrogenCitrate { get; } = new("potassium dihydrogen citrate", "KC6H7O7", 230.213, Acids.Citric, ions: new() { PotassiumMolPerKg = 1 });

    /// <summary>Disodium malate.</summary>
    public static Reagent DisodiumMalate { get; } = new("disodium malate", "Na2C4H4O5", 178.051, Acids.Malic, ions: new() { SodiumMolPerKg = 2 });

    /// <summary>Disodium tartrate dihydrate.</summary>
    public static Reagent DisodiumTartrateDihydrate { get; } = new("disodium tartrate dihydrate", "Na2C4H4O6.2H2O", 230.080, Acids.Tartaric, ions: new() { SodiumMolPerKg = 2 }, water: 2);

    /// <summary>Potassium hydrogen tartrate.</summary>
    public static Reagent PotassiumHydrogenTartrate { get; } = new("potassium hydrogen tartrate", "KC4H5O6", 188.176, Acids.Tartaric, ions: new() { PotassiumMolPerKg = 1 },
        solubility: new(0.57, Crc, "0.57 g per 100 mL at 20 °C, taken for 25 °C"));

    /// <summary>Sodium lactate.</summary>
    public static Reagent SodiumLactate { get; } = new("sodium lactate", "NaC3H5O3", 112.060, Acids.Lactic, ions: new() { SodiumMolPerKg = 1 });

    /// <summary>Sodium acetate, anhydrous.</summary>
    public static Reagent SodiumAcetate { get; } = new("sodium acetate, anhydrous", "NaC2H3O2", 82.034, Acids.Acetic, ions: new() { SodiumMolPerKg = 1 });

    /// <summary>Sodium acetate trihydrate.</summary>
    public static Reagent SodiumAcetateTrihydrate { get; } = new("sodium acetate trihydrate", "NaC2H3O2.3H2O", 136.079, Acids.Acetic, ions: new() { SodiumMolPerKg = 1 }, water: 3);

    /// <summary>Sodium ascorbate.</summary>
    public static Reagent SodiumAscorbate { get; } = new("sodium ascorbate", "NaC6H7O6", 198.106, Acids.Ascorbic, ions: new() { SodiumMolPerKg = 1 });

    /// <summary>Sodium bicarbonate; its carbon dioxide stays in the liquid (see <see cref="AcidBaseSystem.WithoutCarbonDioxide"/>).</summary>
    public static Reagent SodiumBicarbonate { get; } = new("sodium bicarbonate", "NaHCO3", 84.006, Acids.Carbonic, ions: new() { SodiumMolPerKg = 1 },
        solubility: new(10.3, Crc));

    /// <summary>Sodium carbonate, anhydrous.</summary>
    public static Reagent SodiumCarbonate { get; } = new("sodium carbonate, anhydrous", "Na2CO3", 105.988, Acids.Carbonic, ions: new() { SodiumMolPerKg = 2 });

    /// <summary>Sodium dihydrogen phosphate, anhydrous.</summary>
    public static Reagent SodiumDihydrogenPhosphate { get; } = new("sodium dihydrogen phosphate, anhydrous", "NaH2PO4", 119.976, Acids.Phosphoric, ions: new() { SodiumMolPerKg = 1 });

    /// <summary>Disodium hydrogen phosphate, anhydrous.</summary>
    public static Reagent DisodiumHydrogenPhosphate { get; } = new("disodium hydrogen phosphate, anhydrous", "Na2HPO4", 141.958, Acids.Phosphoric, ions: new() { SodiumMolPerKg = 2 });

    /// <summary>Disodium hydrogen phosphate dihydrate.</summary>
    public static Reagent DisodiumHydrogenPhosphateDihydrate { get; } = new("disodium hydrogen phosphate dihydrate", "Na2HPO4.2H2O", 177.988, Acids.Phosphoric, ions: new() { SodiumMolPerKg = 2 }, water: 2);

    /// <summary>Disodium hydrogen phosphate dodecahydrate.</summary>
    public static Reagent DisodiumHydrogenPhosphateDodecahydrate { get; } = new("disodium hydrogen phosphate dodecahydrate", "Na2HPO4.12H2O", 358.138, Acids.Phosphoric, ions: new() { SodiumMolPerKg = 2 }, water: 12);

    /// <summary>Trisodium phosphate, anhydrous.</summary>
    public static Reagent TrisodiumPhosphate { get; } = new("trisodium phosphate, anhydrous", "Na3PO4", 163.940, Acids.Phosphoric, ions: new() { SodiumMolPerKg = 3 });

    /// <summary>Tetrasodium pyrophosphate, anhydrous.</summary>
    public static Reagent TetrasodiumPyrophosphate { get; } = new("tetrasodium pyrophosphate, anhydrous", "Na4P2O7", 265.901, Acids.Pyrophosphoric, ions: new() { SodiumMolPerKg = 4 });

    /// <summary>Tetrasodium pyrophosphate decahydrate.</summary>
    public static Reagent TetrasodiumPyrophosphateDecahydrate { get; } = new("tetrasodium pyrophosphate decahydrate", "Na4P2O7.10H2O", 446.051, Acids.Pyrophosphoric, ions: new() { SodiumMolPerKg = 4 }, water: 10);

    /// <summary>Sodium chloride.</summary>
    public static Reagent SodiumChloride { get; } = new("sodium chloride", "NaCl", 58.440, ions: new() { SodiumMolPerKg = 1, ChlorideMolPerKg = 1 });

    /// <summary>Potassium chloride.</summary>
    public static Reagent PotassiumChloride { get; } = new("potassium chloride", "KCl", 74.548, ions: new() { PotassiumMolPerKg = 1, ChlorideMolPerKg = 1 });

    /// <summary>Magnesium chloride hexahydrate.</summary>
    public static Reagent MagnesiumChlorideHexahydrate { get; } = new("magnesium chloride hexahydrate", "MgCl2.6H2O", 203.295, ions: new() { MagnesiumMolPerKg = 1, ChlorideMolPerKg = 2 }, water: 6);

    /// <summary>Calcium chloride, anhydrous.</summary>
    public static Reagent CalciumChloride { get; } = new("calcium chloride, anhydrous", "CaCl2", 110.978, ions: new() { CalciumMolPerKg = 1, ChlorideMolPerKg = 2 });

    /// <summary>Calcium chloride dihydrate.</summary>
    public static Reagent CalciumChlorideDihydrate { get; } = new("calcium chloride dihydrate", "CaCl2.2H2O", 147.008, ions: new() { CalciumMolPerKg = 1, ChlorideMolPerKg = 2 }, water: 2);

    /// <summary>Calcium chloride hexahydrate.</summary>
    public static Reagent CalciumChlorideHexahydrate { get; } = new("calcium chloride hexahydrate", "CaCl2.6H2O", 219.068, ions: new() { CalciumMolPerKg = 1, ChlorideMolPerKg = 2 }, water: 6);

    /// <summary>Calcium lactate, anhydrous.</summary>
    public static Reagent CalciumLactate { get; } = new("calcium lactate, anhydrous", "CaC6H10O6", 218.218, Acids.Lactic, acids: 2, ions: new() { CalciumMolPerKg = 1 }, solubility: Lactate(1));

    /// <summary>Calcium lactate pentahydrate.</summary>
    public static Reagent CalciumLactatePentahydrate { get; } = new("calcium lactate pentahydrate", "CaC6H10O6.5H2O", 308.293, Acids.Lactic, acids: 2, ions: new() { CalciumMolPerKg = 1 }, water: 5, solubility: Lactate(308.293 / 218.218));

    /// <summary>Calcium gluconate, anhydrous.</summary>
    public static Reagent CalciumGluconate { get; } = new("calcium gluconate, anhydrous", "CaC12H22O14", 430.372, Acids.Gluconic, acids: 2, ions: new() { CalciumMolPerKg = 1 }, solid: CalciumSolid.Gluconate);

    /// <summary>Calcium gluconate monohydrate.</summary>
    public static Reagent CalciumGluconateMonohydrate { get; } = new("calcium gluconate monohydrate", "CaC12H22O14.H2O", 448.387, Acids.Gluconic, acids: 2, ions: new() { CalciumMolPerKg = 1 }, water: 1, solid: CalciumSolid.Gluconate);

    /// <summary>Calcium lactate gluconate, idealised 1:1; trade material is a blend, so read its certificate.</summary>
    public static Reagent CalciumLactateGluconate { get; } = new("calcium lactate gluconate, idealised 1:1", "CaC9H16O10", 324.295, Acids.Lactic, ions: new() { CalciumMolPerKg = 1 }, second: Acids.Gluconic, solid: CalciumSolid.Gluconate);

    /// <summary>Calcium carbonate.</summary>
    public static Reagent CalciumCarbonate { get; } = new("calcium carbonate", "CaCO3", 100.086, Acids.Carbonic, ions: new() { CalciumMolPerKg = 1 }, solid: CalciumSolid.Calcite);

    /// <summary>Calcium sulphate, anhydrous.</summary>
    public static Reagent CalciumSulphate { get; } = new("calcium sulphate, anhydrous", "CaSO4", 136.134, ions: new() { CalciumMolPerKg = 1, SulphateMolPerKg = 1 }, solid: CalciumSolid.Gypsum);

    /// <summary>Calcium sulphate dihydrate.</summary>
    public static Reagent CalciumSulphateDihydrate { get; } = new("calcium sulphate dihydrate", "CaSO4.2H2O", 172.164, ions: new() { CalciumMolPerKg = 1, SulphateMolPerKg = 1 }, water: 2, solid: CalciumSolid.Gypsum);

    /// <summary>Calcium hydrogen phosphate dihydrate.</summary>
    public static Reagent CalciumHydrogenPhosphateDihydrate { get; } = new("calcium hydrogen phosphate dihydrate", "CaHPO4.2H2O", 172.086, Acids.Phosphoric, ions: new() { CalciumMolPerKg = 1 }, water: 2, solid: CalciumSolid.HydrogenPhosphate);

    /// <summary>Tricalcium phosphate, idealised.</summary>
    public static Reagent TricalciumPhosphate { get; } = new("tricalcium phosphate, idealised", "Ca3(PO4)2", 310.174, Acids.Phosphoric, acids: 2, ions: new() { CalciumMolPerKg = 3 }, solid: CalciumSolid.TricalciumPhosphate);

    /// <summary>Tricalcium citrate tetrahydrate.</summary>
    public static Reagent TricalciumCitrateTetrahydrate { get; } = new("tricalcium citrate tetrahydrate", "Ca3(C6H5O7)2.4H2O", 570.492, Acids.Citric, acids: 2, ions: new() { CalciumMolPerKg = 3 }, water: 4, solid: CalciumSolid.Citrate);

    // 6.7 g of the anhydrous salt in 100 mL of water at 25 °C, taken as 100 g of water.
    private static Cited<double> Lactate(double massOfAnhydrous) => new(6.7 * massOfAnhydrous, CalciumLactateArticle, "6.7 g of anhydrous salt per 100 mL at 25 °C");
}
