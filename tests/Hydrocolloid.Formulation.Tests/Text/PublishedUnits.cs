using Hydrocolloid.Formulation.Text;
using static Hydrocolloid.Formulation.Text.QuantityKind;

namespace Hydrocolloid.Formulation.Tests.Text;

/// <summary>
/// Published factors to the base unit, beside their source. "Recalled" marks a value written from memory of the source named,
/// not read from it here.
/// </summary>
public static class PublishedUnits
{
    public static TheoryData<QuantityKind, string, double, string> Factors => new()
    {
        // SI Brochure, 9th ed., tables 2, 7 and 8: prefixes, minute, hour, day, litre, tonne. Recalled.
        { Mass, "g", 1, "SI" },
        { Mass, "kg", 1e3, "SI" },
        { Mass, "mg", 1e-3, "SI" },
        { Mass, "ug", 1e-6, "SI" },
        { Mass, "t", 1e6, "SI; UK Weights and Measures Act 1985, Sch. 1: tonne = 1000 kilograms" },
        { Volume, "mL", 1, "UK Weights and Measures Act 1985, Sch. 1: millilitre = 1/1000 litre" },
        { Volume, "L", 1e3, "the same: litre = a cubic decimetre" },
        { Volume, "cL", 10, "the same: centilitre = 1/100 litre" },
        { Volume, "dL", 100, "the same: decilitre = 1/10 litre" },
        { Volume, "cm3", 1, "the same: cubic centimetre = 1/1000 cubic decimetre" },
        { Volume, "m3", 1e6, "SI" },
        { Duration, "s", 1, "SI" },
        { Duration, "min", 60, "SI" },
        { Duration, "h", 3600, "SI" },
        { Duration, "d", 86400, "SI" },
        { Length, "m", 1, "SI" },
        { Length, "mm", 1e-3, "SI" },
        { Length, "cm", 1e-2, "SI" },
        { Length, "km", 1e3, "SI" },
        { Temperature, "Cel", 1, "SI" },
        { Temperature, "K", 1, "SI" },
        { TemperatureDifference, "K", 1, "SI" },
        { TemperatureDifference, "Cel", 1, "SI" },
        { Pressure, "Pa", 1, "SI" },
        { Pressure, "kPa", 1e3, "SI" },
        { Pressure, "hPa", 1e2, "SI" },
        { Density, "kg/m3", 1, "SI" },
        { Density, "g/mL", 1e3, "SI" },
        { Density, "g/cm3", 1e3, "SI" },
        { Percent, "%", 1, "by definition" },

        // NIST Handbook 44, Appendix C, section 4: values underlined as exact there. Recalled.
        { Mass, "[lb_av]", 453.59237, "NIST HB 44 App. C: 1 pound avoirdupois = 453.592 37 g (exactly)" },
        { Mass, "[oz_av]", 28.349523125, "NIST HB 44 App. C: 1 ounce avoirdupois = 28.349 523 125 g (exactly)" },
        { Volume, "[gal_us]", 3785.411784, "NIST HB 44 App. C: 1 gallon = 231 cubic inches (exactly) = 3.785 411 784 L (exactly)" },
        { Volume, "[qt_us]", 946.352946, "NIST HB 44 App. C: 1 liquid quart = 1/4 gallon" },
        { Volume, "[pt_us]", 473.176473, "NIST HB 44 App. C: 1 liquid pint = 1/8 gallon" },
        { Volume, "[cup_us]", 236.5882365, "NIST HB 44 App. C: 1 cup = 8 fluid ounces" },
        { Volume, "[foz_us]", 29.5735295625, "NIST HB 44 App. C: 1 fluid ounce = 1/128 gallon" },
        { Volume, "[tbs_us]", 14.78676478125, "NIST HB 44 App. C: 1 tablespoon = 1/2 fluid ounce" },
        { Volume, "[tsp_us]", 4.92892159375, "NIST HB 44 App. C: 1 teaspoon = 1/3 tablespoon" },
        { Length, "[in_i]", 0.0254, "NIST HB 44 App. C: 1 inch = 2.54 cm (exactly)" },
        { Length, "[ft_i]", 0.3048, "NIST HB 44 App. C: 1 foot = 0.3048 m (exactly)" },

        // NIST SP 811 (2008), Appendix B. Recalled.
        { Pressure, "bar", 1e5, "NIST SP 811 App. B: bar to Pa 1.0 E+05 (exact)" },
        { Pressure, "mbar", 1e2, "NIST SP 811 App. B: millibar to Pa 1.0 E+02 (exact)" },
        { Pressure, "atm", 101325, "NIST SP 811 App. B: standard atmosphere to Pa 1.01325 E+05 (exact)" },
        { Temperature, "[degF]", 5.0 / 9, "NIST SP 811 App. B: t/°C = (t/°F - 32)/1.8 (exact)" },
        { TemperatureDifference, "[degF]", 5.0 / 9, "NIST SP 811 App. B: degree Fahrenheit to kelvin 5/9 (exact)" },

        // UCUM: m[Hg] = 133.3220 kPa. NIST SP 811 gives the conventional 133.3224 Pa, 3 parts per million more.
        { Pressure, "mm[Hg]", 133.322, "UCUM table of clinical units" },

        // UCUM ticket 120 and its table: metric household measures, after 21 CFR 101.9(b)(5)(viii): teaspoon 5, tablespoon 15, cup 240 mL.
        { Volume, "[tsp_m]", 5, "UCUM ticket 120; 21 CFR 101.9(b)(5)(viii)" },
        { Volume, "[tbs_m]", 15, "UCUM ticket 120; 21 CFR 101.9(b)(5)(viii)" },
        { Volume, "[cup_m]", 240, "UCUM ticket 120; 21 CFR 101.9(b)(5)(viii)" },

        // Metric cup and spoon set approved by the Standards Association of Australia, as printed by the government of New South
        // Wales, healthykids.nsw.gov.au, conversion chart: 1 cup 250 mL, 1 tablespoon 20 mL.
        { Volume, "cup-250", 250, "Standards Association of Australia" },
        { Volume, "tbs-au", 20, "Standards Association of Australia" },

        // UK Weights and Measures Act 1985, Schedule 1: gallon = 4.54609 cubic decimetres; quart 1/4, pint 1/8, fluid ounce 1/20 pint. Recalled.
        { Volume, "[gal_br]", 4546.09, "UK Weights and Measures Act 1985, Sch. 1" },
        { Volume, "[qt_br]", 4546.09 / 4, "UK Weights and Measures Act 1985, Sch. 1" },
        { Volume, "[pt_br]", 4546.09 / 8, "UK Weights and Measures Act 1985, Sch. 1" },
        { Volume, "[foz_br]", 4546.09 / 160, "UK Weights and Measures Act 1985, Sch. 1" },
    };
}
