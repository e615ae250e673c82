namespace Hydrocolloid.Formulation.Chemistry;

/// <summary>The works the constants of this namespace come from.</summary>
internal static class ChemistrySources
{
    public static Citation Minteq(string? place = null) => new(new Source("minteqa2-4", "MINTEQA2 version 4 thermodynamic database (25 °C, zero ionic strength)", SourceKind.Dataset, "US EPA / NIST / USGS", "2016"), place);

    public static Citation ThermoChimie(string? place = null) => new(new Source("thermochimie-10a", "ThermoChimie thermodynamic database version 10a (25 °C, zero ionic strength)", SourceKind.Dataset, "Andra, NDA, Ondraf/Niras", "2018", locator: "https://www.thermochimie-tdb.com"), place);

    public static Citation IupacPKa(string? place = null) => new(new Source("iupac-pka", "IUPAC Digitized pKa Dataset, release 1.0", SourceKind.Dataset, "Zheng, Lafontant-Joseph", "2023"), place);

    public static Citation Fromm { get; } = new(new Source("fromm-1997", "Ionization constants of aqueous polyprotic acids", SourceKind.Teaching, "Fromm", "1997"));

    public static Citation EchaLactic { get; } = new(new Source("echa-lactic", "REACH registration dossier, lactic acid, dissociation constant", SourceKind.Regulation, "European Chemicals Agency", "2023"), "section 4.22, Martin and Tartar 1937");

    public static Citation Crc { get; } = new(new Source("crc-handbook", "CRC Handbook of Chemistry and Physics", SourceKind.Handbook, "CRC Press", "2005"), basis: CitationBasis.Recalled);

    public static Citation Merck { get; } = new(new Source("merck-index", "The Merck Index", SourceKind.Handbook, "Royal Society of Chemistry", "2013"), basis: CitationBasis.Recalled);

    public static Citation Vavrusova { get; } = new(new Source("vavrusova-2014", "Thermodynamics of dissolution of calcium hydroxycarboxylates in water", SourceKind.Paper, "Vavrusova, Liang, Skibsted", "2014", locator: "J Agric Food Chem 62:5675"), "abstract");

    public static Citation CalciumLactateArticle { get; } = new(new Source("calcium-lactate-article", "Encyclopaedia article Calcium lactate", SourceKind.Teaching, year: "2024"));

    public static Citation OimlR22 { get; } = new(new Source("oiml-r22", "International Alcoholometric Tables, Recommendation R 22", SourceKind.Standard, "OIML", "1975", locator: "https://www.oiml.org/en/files/pdf_r/r022-e75.pdf"), "general formula");

    public static Citation NorrishRecalled { get; } = new(new Source("norrish-chirife", "Norrish constants for sugars", SourceKind.Paper, "Norrish; Chirife et al.", "1966-1982"), basis: CitationBasis.Recalled);

    public static Citation AlditolReview { get; } = new(new Source("alditol-review", "Physicochemical properties of alditols at 25 °C", SourceKind.Paper, year: "2010", locator: "PMC2836749"), "table 3");

    public static Citation PitzerRecalled { get; } = new(new Source("pitzer-mayorga-1973", "Thermodynamics of electrolytes II", SourceKind.Paper, "Pitzer, Mayorga", "1973", locator: "doi:10.1021/j100638a009"), basis: CitationBasis.Recalled);
}
