using System.Text.Json;
using Hydrocolloid.Formulation.Thermal;
using UnitsNet;

namespace Hydrocolloid.Formulation.Tests.Published;

/// <summary>The checks of <c>cooling-checks.json</c>, which holds each one's source, tolerance and how it was seen.</summary>
public class PublishedCoolingTests
{
    private static readonly JsonElement s_document = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", "cooling-checks.json"))).RootElement;

    public static TheoryData<string> Ids => [.. s_document.GetProperty("checks").EnumerateArray().Select(c => c.GetProperty("id").GetString()!)];

    [Theory, MemberData(nameof(Ids))]
    public void Value_is_met(string id)
    {
        JsonElement check = s_document.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);
        JsonElement inputs = check.GetProperty("inputs"), expected = check.GetProperty("expected");
        string solve = check.GetProperty("solve").GetString()!;
        if (expected.ValueKind == JsonValueKind.String)
        {
            Outcome(solve, inputs).Should().Be(expected.GetString());
            return;
        }

        double tolerance = check.GetProperty("tolerance").GetDouble();
        double allowed = check.TryGetProperty("within", out JsonElement within) ? within.GetDouble() : tolerance;
        double[] values = Values(solve, inputs);
        double[] wanted = expected.ValueKind == JsonValueKind.Array ? [.. expected.EnumerateArray().Select(e => e.GetDouble())] : [expected.GetDouble()];

        allowed.Should().BeGreaterThanOrEqualTo(tolerance);
        values.Should().HaveSameCount(wanted);
        for (int i = 0; i < wanted.Length; i++)
        {
            values[i].Should().BeApproximately(wanted[i], allowed, $"{id} [{i}] of {check.GetProperty("source").GetString()}");
        }
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

    private static string Outcome(string solve, JsonElement inputs) => solve == "holding-rule"
        ? HoldingRule.UnitedKingdom.Check(Celsius(inputs, "celsius")).ToString()
        : CoolingRules.UsFoodCode.Check(inputs.GetProperty("readings").EnumerateArray()
            .Select(r => new CoolingReading(Duration.FromHours(r[0].GetDouble()), Temperature.FromDegreesCelsius(r[1].GetDouble())))).Outcome.ToString();

    private static double[] Values(string solve, JsonElement inputs)
    {
        double Number(string name) => inputs.GetProperty(name).GetDouble();
        switch (solve)
        {
            case "newton-temperature":
                return [NewtonCooling.TemperatureAfter(Celsius(inputs, "start"), Celsius(inputs, "medium"), TimeConstant(inputs), Duration.FromSeconds(Number("seconds"))).DegreesCelsius];
            case "newton-time":
                return [NewtonCooling.TimeUntil(Celsius(inputs, "start"), Celsius(inputs, "target"), Celsius(inputs, "medium"), TimeConstant(inputs)).Time!.Value.Seconds / Number("per")];
            case "newton-then-time":
                return [NewtonCooling.TimeUntil(Celsius(inputs, "thenStart"), Celsius(inputs, "thenEnd"), Celsius(inputs, "medium"), Observed(inputs)).Time!.Value.Minutes];
            case "newton-then-temperature":
                return [NewtonCooling.TemperatureAfter(Celsius(inputs, "end"), Celsius(inputs, "medium"), Observed(inputs), Duration.FromMinutes(Number("furtherMinutes"))).DegreesCelsius];
            case "newton-ratio":
                double Time(string target) => NewtonCooling.TimeUntil(Celsius(inputs, "start"), Celsius(inputs, target), Celsius(inputs, "medium"), Duration.FromHours(1)).Time!.Value.Hours;
                return [Time("second") / Time("first")];
            case "roots":
                return [.. Enum.GetValues<ConductionShape>().Select(s => new ConductionSeries(s, Number("biot"))).SelectMany(s => new[] { s.Roots[0], s.Uniform()[0] })];
            case "surface-ratio":
                return [new ConductionSeries(ConductionShape.Slab, Number("biot")).Surface[0]];
            case "time":
                // Warming is the mirror image of cooling: the equation is linear.
                double sign = Number("medium") > Number("start") ? -1 : 1;
                return [Course(inputs, sign).TimeUntilBelow(Temperature.FromDegreesCelsius(sign * Number("target"))).Time!.Value.Seconds / Number("per")];
            case "temperature":
                return [At(inputs, Number("at"))];
            case "flux":
                return [Number("h") * (At(inputs, 1) - Number("medium"))];
            case "product":
                return [Number("medium") + ((Number("start") - Number("medium")) * Unit(inputs, "half", Shape(inputs)).Centre
                    * (Number("ends") == 1 ? Unit(inputs, "halfHeight", ConductionShape.Slab).Surface : Unit(inputs, "halfHeight", ConductionShape.Slab).Centre))];
            case "heat":
                CoolingPoint point = Course(inputs).At(Duration.FromSeconds(Number("seconds")));
                double volume = Math.PI * Number("half") * Number("half") * 2 * Number("halfHeight");
                return [Number("rho") * Number("cp") * volume * (Number("start") - point.Mean.DegreesCelsius) / 1000];
            case "semi-infinite":
                return [SemiInfiniteSolid.TemperatureAt(Length.FromMeters(Number("depth")), Duration.FromSeconds(Number("seconds")), Properties(inputs), Celsius(inputs, "start"), Step(inputs)).DegreesCelsius];
            case "uptake":
                return [.. inputs.GetProperty("seconds").EnumerateArray().Select(t => Soak(inputs).UptakePercent(Duration.FromSeconds(t.GetDouble())) / 100)];
            case "fourier":
                return [Number("D") * Number("seconds") / (Number("half") * Number("half"))];
            case "left-at":
                double fourier = Number("D") * Number("seconds") / Math.Pow(Number("thickness") / Number("faces"), 2);
                return [Number("start") * Profile(new(ConductionShape.Slab, double.PositiveInfinity), fourier, Number("at"))];
            case "diffusivity":
                return [Number("D") * Soak(inputs).TimeUntil(100 * Number("uptake")).Seconds / Number("seconds")];
            case "soak-time":
                return [Soak(inputs).TimeUntil(100 * Number("uptake")).Seconds / Number("per")];
            case "bath-roots":
                return [.. Soaking.LimitedBathRoots(ConductionShape.Slab, Number("bathPerGel")).Take(2)];
            case "obstruction":
                return [Diffusivities.ObstructionRatio(Number("substancePercent"))];
            case "sucrose":
                Computed<double> sucrose = Diffusivities.Sucrose.InWater(Celsius(inputs, "celsius"));
                sucrose.InRange.Should().BeTrue();
                return [1e9 * sucrose.Value];
            case "membrane":
                return [AlginateMembrane.Millimetres(Number("D"), Number("bathOverBound"), Number("seconds"))];
            default:
                throw new InvalidOperationException(solve);
        }
    }

    private static Temperature Celsius(JsonElement inputs, string name) => Temperature.FromDegreesCelsius(inputs.GetProperty(name).GetDouble());

    private static ConductionShape Shape(JsonElement inputs) => Enum.Parse<ConductionShape>(inputs.GetProperty("shape").GetString()!, ignoreCase: true);

    private static ThermalProperties Properties(JsonElement inputs) => new(
        Density.FromKilogramsPerCubicMeter(inputs.GetProperty("rho").GetDouble()),
        SpecificEntropy.FromJoulesPerKilogramKelvin(inputs.GetProperty("cp").GetDouble()),
        ThermalConductivity.FromWattsPerMeterKelvin(inputs.GetProperty("k").GetDouble()));

    private static CoolingStep Step(JsonElement inputs, double sign = 1) => new(Temperature.FromDegreesCelsius(sign * inputs.GetProperty("medium").GetDouble()), Film(inputs));

    private static HeatTransferCoefficient Film(JsonElement inputs) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(inputs.GetProperty("h").GetDouble());

    private static Duration TimeConstant(JsonElement inputs) => NewtonCooling.TimeConstant(Film(inputs), Length.FromMeters(inputs.GetProperty("volumePerSurface").GetDouble()),
        Density.FromKilogramsPerCubicMeter(inputs.GetProperty("rho").GetDouble()), SpecificEntropy.FromJoulesPerKilogramKelvin(inputs.GetProperty("cp").GetDouble())).Value;

    private static Duration Observed(JsonElement inputs)
        => NewtonCooling.TimeConstant(Celsius(inputs, "start"), Celsius(inputs, "end"), Duration.FromMinutes(inputs.GetProperty("minutes").GetDouble()), Celsius(inputs, "medium"));

    private static CoolingCourse Course(JsonElement inputs, double sign = 1)
    {
        Length half = Length.FromMeters(inputs.GetProperty("half").GetDouble());
        GelBody body = Shape(inputs) switch
        {
            ConductionShape.Slab => GelBody.Slab(half, ExposedFaces.One),
            ConductionShape.Sphere => GelBody.Sphere(2 * half),
            _ => inputs.TryGetProperty("halfHeight", out JsonElement height) ? GelBody.Cylinder(2 * half, Length.FromMeters(2 * height.GetDouble())) : GelBody.LongCylinder(2 * half),
        };
        return new(body, Properties(inputs), Temperature.FromDegreesCelsius(sign * inputs.GetProperty("start").GetDouble()), Step(inputs, sign));
    }

    private static Soaking Soak(JsonElement inputs) => new(
        GelBody.Slab(Length.FromMeters(inputs.GetProperty("thickness").GetDouble()), inputs.GetProperty("faces").GetInt32() == 1 ? ExposedFaces.One : ExposedFaces.Both),
        inputs.GetProperty("D").GetDouble(), inputs.TryGetProperty("bathPerGel", out JsonElement ratio) ? ratio.GetDouble() : null);

    private static double At(JsonElement inputs, double x)
    {
        double half = inputs.GetProperty("half").GetDouble(), start = inputs.GetProperty("start").GetDouble(), medium = inputs.GetProperty("medium").GetDouble();
        ThermalProperties properties = Properties(inputs);
        double seconds = inputs.GetProperty("seconds").GetDouble();
        if (x is 0 or 1)
        {
            CoolingPoint point = Course(inputs).At(Duration.FromSeconds(seconds));
            return (x == 0 ? point.Centre : point.Surface).DegreesCelsius;
        }

        var series = new ConductionSeries(Shape(inputs), inputs.GetProperty("h").GetDouble() * half / properties.Conductivity.WattsPerMeterKelvin);
        return medium + ((start - medium) * Profile(series, properties.DiffusivitySquareMetresPerSecond * seconds / (half * half), x));
    }

    private static double Profile(ConductionSeries series, double fourier, double x)
        => series.Uniform().Select((c, n) => c * Math.Exp(-series.Roots[n] * series.Roots[n] * fourier) * series.Profile(n, x)).Sum();

    private static Places Unit(JsonElement inputs, string length, ConductionShape shape)
    {
        double metres = inputs.GetProperty(length).GetDouble();
        ThermalProperties properties = Properties(inputs);
        double perSecond = properties.DiffusivitySquareMetresPerSecond / (metres * metres);
        var response = new UnitResponse();
        response.Add(new(shape, inputs.GetProperty("h").GetDouble() * metres / properties.Conductivity.WattsPerMeterKelvin), perSecond);
        return response.At(0, inputs.GetProperty("seconds").GetDouble());
    }
}
