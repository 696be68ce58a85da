using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using MeshSim.Propagation;

namespace MeshSim.Benchmarks;

/// <summary>What is measured on generated buildings of three sizes, square and turned, with either model.</summary>
public abstract class BuildingBenchmarks
{
    [Params("S", "M", "L")]
    public string Size { get; set; } = "S";

    [Params(false, true)]
    public bool IsAngled { get; set; }

    [Params(ModelName.Detour, ModelName.LogDistance)]
    public ModelName Model { get; set; }

    /// <summary>The building of the case that is measured.</summary>
    internal Workload Work { get; private set; } = null!;

    [GlobalSetup]
    public void Prepare() => Work = MakeWork(Size, IsAngled, Model);

    internal static Workload MakeWork(string size, bool isAngled, ModelName model) =>
        new(size switch { "S" => BuildingSize.S, "M" => BuildingSize.M, _ => BuildingSize.L }, isAngled, model);

    /// <summary>Few runs, in this process.</summary>
    protected class Short : ManualConfig
    {
        public Short() => AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance));
    }
}
