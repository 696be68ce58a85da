using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace MeshSim.Benchmarks;

/// <summary>All pairs of devices beside the tracer, which is asked for the pairs of five devices.</summary>
[Config(typeof(Short))]
public class PairBenchmarks
{
    private Workload work = null!;

    [Params("S", "M", "L")]
    public string Size { get; set; } = "S";

    [GlobalSetup]
    public void Prepare() => work = FieldBenchmarks.MakeWork(Size, isAngled: false);

    [Benchmark(Baseline = true)]
    public void Pairs() => work.PairTotals(1);

    [Benchmark]
    public void PairsOnTwoThreads() => work.PairTotals(2);

    [Benchmark]
    public long Tracer() => work.TracerPairs(work.Devices.Length / 5);

    private sealed class Short : ManualConfig
    {
        public Short() => AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance));
    }
}
