namespace Hydrocolloid.Formulation.Thermal;

/// <summary>The works that the figures of cooling, soaking and drying come from.</summary>
internal static class CoolingSources
{
    public static Citation FilmRecalled { get; } = new(new Source("film-coefficients-practice", "Film coefficients of kitchen cooling, as in textbooks on heat transfer", SourceKind.Handbook, "Incropera; Çengel", "2007"), basis: CitationBasis.Recalled);

    public static Citation FoodCodeCooling { get; } = new(new Source("fda-food-code-cooling", "FDA Food Code 3-501.14 as adopted in 16 Del. Admin. Code 3-501.14", SourceKind.Regulation, "State of Delaware", "2014"), "paragraphs (A) and (B)");

    public static Citation FoodCodeHolding { get; } = new(new Source("fda-food-code-holding", "WAC 246-215-03525 (2009 FDA Food Code 3-501.16)", SourceKind.Regulation, "State of Washington", "2013"), "paragraph (1)");

    public static Citation MaineCooling { get; } = new(new Source("maine-346", "C.M.R. 01-001 chapter 346, cooling times and temperatures", SourceKind.Regulation, "State of Maine", "2024"), "subsection 12");

    public static Citation EnglandChill { get; } = new(new Source("england-2013-2996", "The Food Safety and Hygiene (England) Regulations 2013", SourceKind.Regulation, "UK legislation", "2013", locator: "https://www.legislation.gov.uk/uksi/2013/2996"), "schedule 4, paragraph 2");

    public static Citation WalesHot { get; } = new(new Source("wales-2006-31", "The Food Hygiene (Wales) Regulations 2006", SourceKind.Regulation, "UK legislation", "2006", locator: "https://legislation.gov.uk/wsi/2006/31"), "schedule 4, paragraphs 2, 3 and 6");

    public static Citation UkGuide { get; } = new(new Source("uk-catering-guide", "Guidance on food hygiene in catering", SourceKind.Regulation, "UK Food Standards Agency; industry guide"), "cooling", CitationBasis.Recalled);

    public static Citation UkCouncil { get; } = new(new Source("east-devon-temperature", "Food safety tips for businesses: temperature control", SourceKind.Teaching, "East Devon District Council", "2020"), "section 5");

    public static Citation Fsanz { get; } = new(new Source("fsanz-3-2-2", "Food Standards Code 3.2.2, clause 7", SourceKind.Regulation, "Food Standards Australia New Zealand", "2001"), basis: CitationBasis.Recalled);

    public static Citation Codex { get; } = new(new Source("codex-cac-rcp-39", "Code of hygienic practice for precooked and cooked foods in mass catering, CAC/RCP 39-1993", SourceKind.Standard, "Codex Alimentarius", "1993"), basis: CitationBasis.Recalled);

    public static Citation Ribeiro { get; } = new(new Source("ribeiro-2006", "Binary mutual diffusion coefficients of aqueous solutions of sucrose, lactose, glucose and fructose", SourceKind.Paper, "Ribeiro et al.", "2006", locator: "doi:10.1021/je0602061"), "table 5, infinite dilution");

    public static Citation EthanolSheet { get; } = new(new Source("perry-ethanol-sheet", "Ethanol and water, course data sheet after Perry's Chemical Engineers' Handbook", SourceKind.Teaching, year: "2000"));

    public static Citation SaltRecalled { get; } = new(new Source("robinson-stokes", "Mutual diffusion coefficients of electrolytes in water at 25 °C", SourceKind.Handbook, "Robinson, Stokes; Lobo", "1993"), basis: CitationBasis.Recalled);

    public static Citation Caffeine { get; } = new(new Source("mccabe-1972", "Diffusion coefficient of caffeine through agar gels", SourceKind.Paper, "McCabe", "1972", locator: "PMC1178579"), "abstract, agar gel extrapolated to zero agar");

    public static Citation Lauffer { get; } = new(new Source("lauffer-1961", "Theory of diffusion in gels", SourceKind.Paper, "Lauffer", "1961"), "abstract");

    public static Source Gabardo { get; } = new("gabardo-2011", "Determination of lactose and ethanol diffusion coefficients in calcium alginate gel spheres", SourceKind.Paper, "Gabardo, Rech, Ayub", "2011");

    public static Source GelatinRecalled { get; } = new("geankoplis-6-4-2", "Transport Processes and Unit Operations, 3rd ed., table 6.4-2 (sucrose in gelatin, recalled)", SourceKind.Handbook, "Geankoplis", "1993");

    public static Source Potter { get; } = new("potter-1994", "The gelation of sodium alginate with calcium ions studied by MRI", SourceKind.Paper, "Potter, Balcom, Carpenter, Hall", "1994", locator: "doi:10.1016/0008-6215(94)84112-8");

    public static Source OpenSurface { get; } = new("cengel-open-surface", "Heat and Mass Transfer: A Practical Approach, examples 14-12 and 14-13", SourceKind.Handbook, "Çengel", "2006");

    public static Citation Judgement(string id, string title) => new(new Source(id, title, SourceKind.Judgement));
}
