using System.Text.Json;
using Hydrocolloid.Formulation.Chemistry;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>The checks of <c>heat-checks.json</c>, which holds each one's source, tolerance and how it was seen.</summary>
public class PublishedHeatTests
{
    private static readonly JsonElement s_document = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "heat-checks.json"))).RootElement;

    // The water bath of Çengel's example 14-13: 3.5 m² with a rim of 9 m at 50 °C, room at 25 °C and 52 %, 92 kPa; ν and D as printed there.
    private const double BathLength = 3.5 / 9, BathViscosity = 1.849e-5, BathDiffusivity = 2.991e-5;

    public static TheoryData<string> Ids => [.. s_document.GetProperty("checks").EnumerateArray().Select(c => c.GetProperty("id").GetString()!)];

    private static double BathGrashof => EvaporationRate.Grashof(50, 25, 0.52, 92e3, BathLength, BathViscosity);

    [Theory, MemberData(nameof(Ids))]
    public void Value_is_met(string id)
    {
        JsonElement check = s_document.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);
        double tolerance = check.GetProperty("tolerance").GetDouble();
        double allowed = check.TryGetProperty("within", out JsonElement within) ? within.GetDouble() : tolerance;

        allowed.Should().BeGreaterThanOrEqualTo(tolerance);
        Value(check).Should().BeApproximately(check.GetProperty("expected").GetDouble(), allowed);
    }

    [Fact]
    public void Every_check_is_cited_and_every_wider_tolerance_and_omission_has_its_reason()
    {
        foreach (JsonElement check in s_document.GetProperty("checks").EnumerateArray())
        {
            check.GetProperty("source").GetString().Should().NotBeNullOrWhiteSpace();
            check.GetProperty("seen").GetString().Should().BeOneOf("read", "recalled", "derived");
            (!check.TryGetProperty("within", out _) || check.TryGetProperty("note", out _)).Should().BeTrue(check.GetProperty("id").GetString());
        }

        s_document.GetProperty("leftOut").EnumerateArray().Should().OnlyContain(c => c.GetProperty("why").GetString()!.Length > 10);
    }

    /// <summary>The whole estimate of the bath, with the library's own viscosity and diffusivity of air: within 3 % of 1.45e-3 kg/s, whose inputs are the book's.</summary>
    [Fact]
    public void Bath_is_met_with_air_properties_of_our_own()
        => EvaporationRate.FromSurface(Area.FromSquareMeters(3.5), Length.FromMeters(9), Temperature.FromDegreesCelsius(50), Temperature.FromDegreesCelsius(25), 52,
            PotPressure.Measured(Pressure.FromKilopascals(92))).Rate.KilogramsPerSecond.Should().BeApproximately(1.45e-3, 0.045e-3);

    private static double Value(JsonElement check)
    {
        double Number(string name) => check.GetProperty(name).GetDouble();
        return check.GetProperty("kind").GetString() switch
        {
            "saturationKelvins" => SaturatedWater.TemperatureAt(Pressure.FromPascals(Number("pascals"))).Value.Kelvins,
            "saturationCelsius" => SaturatedWater.TemperatureAt(Pressure.FromPascals(Number("pascals"))).Value.DegreesCelsius,
            "saturationMegapascals" => SaturatedWater.PressureAt(Temperature.FromKelvins(Number("kelvins"))).Value.Megapascals,
            "airPascals" => PotPressure.AtAltitude(Length.FromMeters(Number("metres"))).Absolute.Pascals,
            "boilingCelsius" => Boiling.PointOf(new LiquidShares(100), PotPressure.AtAltitude(Length.FromMeters(Number("metres")))).Temperature.DegreesCelsius,
            "sucroseElevation" => Boiling.PointOf(new LiquidShares(100 - Number("percent"), sucrosePercent: Number("percent"))).BySugars.Kelvins,
            "saltElevation" => Boiling.PointOf(new LiquidShares(100 - Number("percent"), saltPercent: Number("percent"))).BySalt.Kelvins,
            "ethanolMassFraction" => EthanolMassFraction(Number("moleFraction"), Number("boilsAtCelsius")),
            "vaporization" => SaturatedWater.HeatOfVaporization(Temperature.FromDegreesCelsius(Number("celsius"))).Value.KilojoulesPerKilogram,
            "mix" => Joining.Of(Bodies(check)).Temperature.DegreesCelsius,
            "heatKilowattHours" => HeatTo(Joining.Of(Bodies(check)), Bodies(check), Number("celsius")),
            "coldRatio" => ColdRatio(Joining.LargestColdShare(Bodies(check)[0], Bodies(check)[1], [], Temperature.FromDegreesCelsius(Number("celsius")))),
            "boilOff" => EvaporationRate.ByHeater(Power.FromKilowatts(Number("kilowatts")), Power.FromWatts(0), Temperature.FromDegreesCelsius(Number("celsius"))).Rate.KilogramsPerHour,
            "grashof" => BathGrashof,
            "filmRate" => EvaporationRate.FilmRate(3.5, BathLength, BathGrashof, BathViscosity, BathDiffusivity, EvaporationRate.VapourDensity(50, 1) - EvaporationRate.VapourDensity(25, 0.52)),
            "radiation" => (double)HeatLoss.Radiated(Area.FromSquareMeters(Number("squareMetres")), Number("emissivity"), Temperature.FromKelvins(Number("kelvins")), Temperature.FromKelvins(Number("roomKelvins"))).Watts,
            "sucroseActivity" => SucroseActivity(Number("percent"), Temperature.FromDegreesCelsius(Number("celsius"))),
            "saltActivity" => WaterActivity.Ross([new SoluteAmount(Solute.SodiumChloride, 100 * Number("percent") / (100 - Number("percent")))]).Value,
            string other => throw new InvalidOperationException(other),
            null => throw new InvalidOperationException(),
        };
    }

    private static JoiningBody[] Bodies(JsonElement check) => [.. check.GetProperty("bodies").EnumerateArray().Select(b =>
    {
        var mass = Mass.FromKilograms(b.GetProperty("kilograms").GetDouble());
        var temperature = Temperature.FromDegreesCelsius(b.GetProperty("celsius").GetDouble());
        return b.TryGetProperty("ice", out _) ? JoiningBody.Ice(mass, temperature)
            : JoiningBody.OfSpecificHeat(mass, temperature, SpecificEntropy.FromKilojoulesPerKilogramKelvin(b.GetProperty("kilojoules").GetDouble()));
    })];

    // The loss that brings the bodies to a temperature, found by halving.
    private static double HeatTo(JoinedMix mix, JoiningBody[] bodies, double celsius)
    {
        mix.Temperature.DegreesCelsius.Should().BeGreaterThan(celsius);
        double low = 0, high = 1000;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Joining.Of(bodies, HeatLoss.Of(Energy.FromKilowattHours(middle))).Temperature.DegreesCelsius > celsius ? (middle, high) : (low, middle);
        }

        return low;
    }

    // Water activity is the pressure under which the solution boils at a temperature against that of water.
    private static double SucroseActivity(double percent, Temperature temperature)
    {
        var thin = PotPressure.Measured(Pressure.FromKilopascals(1));
        Pressure over = Boiling.Reaches(new TemperatureRange(temperature, null), new LiquidShares(100 - percent, percent), thin).GaugeNeeded!.Value;
        return (over.Pascals + 1000) / SaturatedWater.PressureAt(temperature).Value.Pascals;
    }

    private static double ColdRatio(ColdShare share) => share.ColdPercent / (100 - share.ColdPercent);

    // The mass fraction of a mole fraction, found by halving, and that the row boils where the table says, 0.03 K under which water boils at 99.97 °C.
    private static double EthanolMassFraction(double moles, double boils)
    {
        double low = 0, high = 1;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Boiling.EthanolMoleFraction(middle) < moles ? (middle, high) : (low, middle);
        }

        double percent = Math.Min(99.9, 100 * low);
        Boiling.PointOf(new LiquidShares(100 - percent, ethanolPercent: percent)).Temperature.DegreesCelsius.Should().BeApproximately(boils, 0.05);
        return low;
    }
}
