using System.Globalization;
using BenchmarkDotNet.Running;
using MeshSim.Benchmarks;

BuildingSize[] sizes = [BuildingSize.S, BuildingSize.M, BuildingSize.L];

PlacementSize[] placements = [PlacementSize.House, PlacementSize.Block, PlacementSize.Sparse, PlacementSize.Faint];

// "ratios [S|M|L]", "pairs [S|M|L]", "placement [house|block|sparse|faint [SEED]]" and "scale": the tables of docs/performance.md. Anything else goes to the benchmark runner.
if (args is ["ratios", ..])
    RatioTable.Print(Console.Out, args is [_, var name] ? sizes.Where(size => size.Name == name) : sizes);
else if (args is ["pairs", ..])
    PairTable.Print(Console.Out, args is [_, var only] ? sizes.Where(size => size.Name == only) : sizes);
else if (args is ["placement", ..])
    PlacementTable.Print(
        Console.Out,
        args is [_, var building, ..] ? placements.Where(size => size.Name == building) : placements,
        args is [_, _, var seed] ? [int.Parse(seed, CultureInfo.InvariantCulture)] : PlacementTable.Seeds);
else if (args is ["scale"])
    ScaleTable.Print(Console.Out);
else
    BenchmarkSwitcher.FromAssembly(typeof(FieldBenchmarks).Assembly).Run(args);
