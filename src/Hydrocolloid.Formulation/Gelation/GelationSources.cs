namespace Hydrocolloid.Formulation.Gelation;

/// <summary>The works the constants of this namespace come from.</summary>
internal static class GelationSources
{
    public static Citation GelatinHandbooks { get; } = Recalled("gelatin-handbooks", "Gelatin reviews and manufacturers' handbook", SourceKind.Handbook, "Ward, Courts; Johnston-Banks; Schrieber, Gareis; GMIA", "1977-2007");

    public static Citation BloomMethod { get; } = Recalled("aoac-948-21", "Jelly strength of gelatin, official method 948.21, and the GME/GMIA standard methods", SourceKind.Standard, "AOAC International; GME; GMIA");

    public static Citation Nguyen { get; } = Read("nguyen-2014", "Development of oil-in-gelatin phantoms for viscoelasticity measurement in ultrasound shear wave elastography", SourceKind.Paper, "Nguyen et al.", "2014", "Ultrasound Med Biol 40:168, abstract");

    public static Citation Hall { get; } = Recalled("hall-1997", "Phantom materials for elastography", SourceKind.Paper, "Hall, Bilgen, Insana, Krouskop", "1997");

    public static Citation Leaf { get; } = Read("leaf-conversion-2012", "Gelatin conversion factors", SourceKind.Teaching, "an independent cooking-science page", "2012", "whole page");

    public static Citation Yamazaki { get; } = Recalled("chori-to-riron", "Chori to riron (Cookery and theory)", SourceKind.Handbook, "Yamazaki, Shimada et al.");

    public static Citation GelatinMaturation { get; } = Read("gelatin-producer-maturation", "Gelatin gel maturation times", SourceKind.Bulletin, "a hydrocolloid producer", null, "gelation paragraph");

    public static Citation GelatinHeat { get; } = Read("gelatin-producer-heat", "Gelatin basics: maturation and heat degradation", SourceKind.Bulletin, "a hydrocolloid producer", null, "chapter on heat degradation");

    public static Citation Shauli { get; } = Read("shauli-2025", "A Simple Method for Measuring Agar Gel Strength", SourceKind.Paper, "Shauli, Salomon", "2025", "Phycology 5:6, abstract");

    public static Citation FaoAgar { get; } = Read("fao-agar-1987", "Production and utilization of products from commercial seaweeds, chapter 1", SourceKind.Handbook, "Armisen, Galatas / FAO", "1987", "introduction");

    public static Citation AgarSugar { get; } = Read("agar-vn", "Effect of NaCl, CaCl2 and sucrose on the rheological properties of agar from Gracilaria in Vietnam", SourceKind.Paper, null, null, "abstract");

    public static Citation AgarAcid { get; } = Read("matsumoto-1979", "Organic acid salts and the loss of gel-forming ability of agar", SourceKind.Paper, "Matsumoto, Mega, Kobayashi", "1979", "J Home Econ Japan 30:613, abstract");

    public static Citation Syneresis { get; } = Read("nagasaka-2000", "Effects of sugars on syneresis of agarose gel", SourceKind.Paper, "Nagasaka, Taneya", "2000", "Nippon Shokuhin Kagaku Kogaku Kaishi 47:670, abstract");

    public static Citation Hermansson { get; } = Read("hermansson-1991", "Effects of potassium, sodium and calcium on the microstructure and rheological behaviour of kappa-carrageenan gels", SourceKind.Paper, "Hermansson, Eriksson, Jordansson", "1991", "Carbohydr Polym 16:297, abstract");

    public static Citation CarrageenanAcid { get; } = Recalled("carrageenan-chapters", "Carrageenan chapters of Thickening and Gelling Agents for Food and the Handbook of Hydrocolloids", SourceKind.Handbook, "Imeson; Phillips, Williams", null, "processing-time table; the factor 3 per 0.5 pH was read in a chapter extract, the anchor and the factor 3 per 10 K were not");

    public static Citation Masson { get; } = Read("masson-1955", "The degradation of carrageenin in aqueous solution at pH 7", SourceKind.Paper, "Masson", "1955", "Canadian Journal of Chemistry, abstract");

    public static Citation KappaPotassium { get; } = Read("jhej-1988-kappa-cations", "Effects of cations on rheological and thermal properties of kappa-carrageenan gels", SourceKind.Paper, "Journal of Home Economics of Japan", "1988", "39:1249, abstract");

    public static Citation KappaMelting { get; } = Read("syamsuar-2006", "Gelling and melting temperature of kappa-carrageenan", SourceKind.Paper, "Syamsuar, cited in a university thesis", "2006", "section 2.5.3");

    public static Citation Tang { get; } = Read("tang-1996", "Compression strength and deformation of gellan gels formed with mono- and divalent cations", SourceKind.Paper, "Tang, Tung, Zeng", "1996", "Carbohydr Polym 29:11, abstract");

    public static Citation Alginate { get; } = Recalled("alginate-handbooks", "Alginate in papers and handbooks", SourceKind.Handbook, "Smidsrød, Haug; McHugh; Handbook of Hydrocolloids");

    public static Citation SagMethod { get; } = Recalled("ift-1959", "Pectin standardization, final report of the IFT committee", SourceKind.Standard, "Institute of Food Technologists", "1959");

    public static Citation SagModulus { get; } = Read("nielsen-2001", "Correlation between sagging and shear elasticity in pectin, gelatin and polyacrylamide gels", SourceKind.Paper, "Nielsen, Marr, Hvidt", "2001", "Carbohydr Polym 45:395, abstract");

    public static Citation PectinTypes { get; } = Read("pectin-types-note", "Pectin basics: gelling properties and applications", SourceKind.Bulletin, "a hydrocolloid consultancy", null, "table of high-methoxyl types");

    public static Citation PectinPercolation { get; } = Read("sol-gel-biopolymers", "Sol-gel transition in biopolymers", SourceKind.Paper, null, null, "abstract");

    public static Citation Methylcellulose { get; } = Read("mc-salts-2012", "Synergistic effect of salt mixture on the gelation temperature and morphology of methylcellulose hydrogel", SourceKind.Paper, "International Journal of Biological Macromolecules", "2012", "51:831, abstract");

    public static Citation Swallowing { get; } = Recalled("jp-swallowing-2009", "Criteria for foods for persons with difficulty in swallowing", SourceKind.Regulation, "Consumer Affairs Agency of Japan", "2009");

    private static Citation Read(string id, string title, SourceKind kind, string? authors, string? year, string? place)
        => new(new Source(id, title, kind, authors, year), place);

    private static Citation Recalled(string id, string title, SourceKind kind, string? authors, string? year = null, string? place = null)
        => new(new Source(id, title, kind, authors, year), place, CitationBasis.Recalled);
}
