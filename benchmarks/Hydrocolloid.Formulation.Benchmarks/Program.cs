using BenchmarkDotNet.Running;
using Hydrocolloid.Formulation.Benchmarks;

// --cold-start measures first uses in fresh processes; everything else is the benchmark runner's.
if (args is [ColdStart.Switch, .. string[] rest])
{
    return ColdStart.Run(rest);
}

BenchmarkSwitcher.FromAssembly(typeof(ColdStart).Assembly).Run(args);
return 0;
