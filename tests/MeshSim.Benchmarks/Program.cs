using BenchmarkDotNet.Running;
using MeshSim.Benchmarks;

// "ratios": the table of docs/performance.md, in a minute. Anything else goes to the benchmark runner.
if (args is ["ratios", ..])
    RatioTable.Print(Console.Out, args is [_, var name] ? new[] { BuildingSize.S, BuildingSize.M, BuildingSize.L }.Where(size => size.Name == name) : [BuildingSize.S, BuildingSize.M, BuildingSize.L]);
else
    BenchmarkSwitcher.FromAssembly(typeof(FieldBenchmarks).Assembly).Run(args);
