using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using MeshSim.Propagation;

namespace MeshSim.Benchmarks;

/// <summary>The field kernel beside its yardsticks.</summary>
[Config(typeof(Short))]
public class FieldBenchmarks
{
    private Workload work = null!;

    [Params("S", "M", "L")]
    public string Size { get; set; } = "S";

    [Params(false, true)]
    public bool IsAngled { get; set; }

    [Params(ModelName.Detour, ModelName.LogDistance)]
    public ModelName Model { get; set; }

    [GlobalSetup]
    public void Prepare() => work = MakeWork(Size, IsAngled, Model);

    [Benchmark(Baseline = true)]
    public void Kernel() => work.Kernel(1);

    [Benchmark]
    public void KernelOnTwoThreads() => work.Kernel(2);

    [Benchmark]
    public void RowsOnTwoThreads() => work.KernelByRows(2);

    [Benchmark]
    public void WriteAlone() => work.WriteAlone();

    [Benchmark]
    public long Tracer() => work.Tracer(Stride(Size), 1);

    [Benchmark]
    public long BruteForce() => work.BruteForce(4 * Stride(Size), 1);

    internal static Workload MakeWork(string size, bool isAngled, ModelName model) =>
        new(size switch { "S" => BuildingSize.S, "M" => BuildingSize.M, _ => BuildingSize.L }, isAngled, model);

    internal static int Stride(string size) => size switch { "S" => 8, "M" => 16, _ => 40 };

    private sealed class Short : ManualConfig
    {
        public Short() => AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)).AddColumn(new LinksPerSecond());
    }

    private sealed class LinksPerSecond : IColumn
    {
        public string Id => nameof(LinksPerSecond);

        public string ColumnName => "10^6 links/s";

        public bool AlwaysShow => true;

        public ColumnCategory Category => ColumnCategory.Custom;

        public int PriorityInCategory => 0;

        public bool IsNumeric => true;

        public UnitType UnitType => UnitType.Dimensionless;

        public string Legend => "link evaluations per second, millions";

        public bool IsAvailable(Summary summary) => true;

        public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;

        public string GetValue(Summary summary, BenchmarkCase benchmarkCase)
        {
            string size = (string)benchmarkCase.Parameters[nameof(Size)];
            Workload of = MakeWork(size, (bool)benchmarkCase.Parameters[nameof(IsAngled)], (ModelName)benchmarkCase.Parameters[nameof(Model)]);
            long links = benchmarkCase.Descriptor.WorkloadMethod.Name switch
            {
                nameof(Tracer) => of.Tracer(Stride(size), 1),
                nameof(BruteForce) => of.BruteForce(4 * Stride(size), 1),
                _ => of.Links,
            };
            double? nanoseconds = summary[benchmarkCase]?.ResultStatistics?.Mean;
            return nanoseconds is { } mean ? FormattableString.Invariant($"{links * 1e3 / mean:0.0}") : "?";
        }

        public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style) => GetValue(summary, benchmarkCase);
    }
}
