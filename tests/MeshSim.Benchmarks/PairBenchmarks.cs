using BenchmarkDotNet.Attributes;

namespace MeshSim.Benchmarks;

/// <summary>All pairs of devices beside the tracer, which is asked for the pairs of five devices.</summary>
[Config(typeof(Short))]
public class PairBenchmarks : BuildingBenchmarks
{
    [Benchmark(Baseline = true)]
    public void Pairs() => Work.PairTotals(1);

    [Benchmark]
    public void PairsOnTwoThreads() => Work.PairTotals(2);

    [Benchmark]
    public long Tracer() => Work.TracerPairs(Work.Devices.Length / 5);
}
