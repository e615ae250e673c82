namespace Hydrocolloid.Formulation;

/// <summary>The works that the figures of weighing come from.</summary>
internal static class WeighingSources
{
    public static Citation Classes { get; } = new(new Source("oiml-r-76", "OIML R 76-1, Non-automatic weighing instruments", SourceKind.Standard, "OIML", "2006", locator: "https://scribd.com/document/314749659/Tablas-OIML-Alumnos"), "tables 3 and 6, in an extract for students");

    // The 1995 table prints 20 000 e where the first row of class II ends at 5 000 e; OIML is followed.
    public static Citation InService { get; } = new(new Source("uk-nawi-1995", "Non-automatic Weighing Instruments (EEC Requirements) Regulations 1995", SourceKind.Regulation, "UK legislation", "1995", locator: "https://legislation.gov.uk/uksi/1995/1907/schedule/2/paragraph/4/made"), "schedule 2, paragraph 4");

    public static Source MinimumWeight { get; } = new("usp-41", "USP chapter 41, Balances, as quoted in a forum and tabulated by makers of balances", SourceKind.Standard, "USP", "2019", locator: "https://www.scribd.com/document/274748068/Usp-Balances");

    public static Citation KitchenMinimum { get; } = new(MinimumWeight, "repeatability: 2 s / smallest weight, s at least 0.41 d; stated there for 0.10 %", CitationBasis.Estimated);

    public static Citation Reading { get; } = Citation.CommonPractice;
}
