using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using System.Text.Json;
using UnitsNet;

namespace Hydrocolloid.Formulation.Benchmarks;

/// <summary>
/// First uses, each in a fresh process after a document of its own has warmed up the JSON reader: wall time, and how much of it the
/// just-in-time compiler took. Medians over the processes.
/// </summary>
internal static class ColdStart
{
    public const string Switch = "--cold-start";

    private const int DefaultProcesses = 15;

    private static readonly (string Name, Func<object?> Use)[] Probes =
    [
        ("first Hydrocolloids.Agar", () => Hydrocolloids.Agar),
        ("first .Profile", () => Hydrocolloids.Agar.Profile),
        ("first .Composition", () => Pantry.PearJuice.Composition),
        ("all facts of all", () => AllFacts()),
        ("first formula, scaled", () => TwelveLines.Build().ScaleTo(Yield.OfBase(Mass.FromGrams(1000)))),
    ];

    public static int Run(string[] args)
    {
        if (args is ["probe", string probe])
        {
            return Probe(Probes[int.Parse(probe, CultureInfo.InvariantCulture)].Use);
        }

        int processes = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : DefaultProcesses;
        Console.WriteLine($"Medians of {processes} processes");
        Console.WriteLine($"{"",-28}{"total ms",10}{"JIT ms",10}{"own ms",10}{"methods",10}");
        for (int i = 0; i < Probes.Length; i++)
        {
            int index = i;
            double[][] runs = [.. Enumerable.Range(0, processes).Select(_ => InFreshProcess(index))];
            double[] medians = [.. Enumerable.Range(0, 4).Select(column => Median(runs.Select(r => r[column])))];
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{Probes[i].Name,-28}{medians[0],10:0.00}{medians[1],10:0.00}{medians[2],10:0.00}{medians[3],10:0}"));
        }

        return 0;
    }

    private static int Probe(Func<object?> use)
    {
        using (var warm = JsonDocument.Parse("""{"a":[1.5,"b",true]}"""u8.ToArray()))
        {
            foreach (JsonProperty member in warm.RootElement.EnumerateObject())
            {
                _ = member.Name + member.Value.GetArrayLength() + member.Value[0].GetDouble() + member.Value[1].GetString();
            }
        }

        TimeSpan jitBefore = JitInfo.GetCompilationTime(currentThread: true);
        long methodsBefore = JitInfo.GetCompiledMethodCount(currentThread: true);
        long start = Stopwatch.GetTimestamp();
        object? result = use();
        double total = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        double jit = (JitInfo.GetCompilationTime(currentThread: true) - jitBefore).TotalMilliseconds;
        long methods = JitInfo.GetCompiledMethodCount(currentThread: true) - methodsBefore;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{total} {jit} {total - jit} {methods}"));
        return result is null ? 1 : 0;
    }

    private static double[] InFreshProcess(int probe)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!)
        {
            RedirectStandardOutput = true,
            ArgumentList = { Switch, "probe", probe.ToString(CultureInfo.InvariantCulture) },
        };
        using Process process = Process.Start(start)!;
        string line = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? [.. line.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture))]
            : throw new InvalidOperationException("A probe failed: " + line);
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static int AllFacts()
    {
        int figures = 0;
        foreach (Ingredient ingredient in Catalogue.BuiltIn.All)
        {
            figures += ingredient.Cautions.Count;
        }

        return figures;
    }
}
