using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using MeshSim.Propagation;

namespace MeshSim.Benchmarks;

/// <summary>All pairs of devices beside the tracer, which is asked for the pairs of five devices.</summary>
[Config(typeof(Short))]
public class PairBenchmarks
{
    private Workload work = null!;

    [Params("S", "M", "L")]
    public string Size { get; set; } = "S";

    [Params(false, true)]
    public bool IsAngled { get; set; }

    [Params(ModelName.Detour, ModelName.LogDistance)]
    public ModelName Model { get; set; }

    [GlobalSetup]
    public void Prepare() => work = FieldBenchmarks.MakeWork(Size, IsAngled, Model);

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
