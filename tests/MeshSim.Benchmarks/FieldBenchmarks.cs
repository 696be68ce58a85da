using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using MeshSim.Propagation;

namespace MeshSim.Benchmarks;

/// <summary>The field kernel beside its yardsticks.</summary>
[Config(typeof(WithLinksPerSecond))]
public class FieldBenchmarks : BuildingBenchmarks
{
    [Benchmark(Baseline = true)]
    public void Kernel() => Work.Kernel(1);

    [Benchmark]
    public void KernelOnTwoThreads() => Work.Kernel(2);

    [Benchmark]
    public void RowsOnTwoThreads() => Work.KernelByRows(2);

    [Benchmark]
    public void WriteAlone() => Work.WriteAlone();

    [Benchmark]
    public long Tracer() => Work.Tracer(Stride(Size), 1);

    [Benchmark]
    public long BruteForce() => Work.BruteForce(4 * Stride(Size), 1);

    internal static int Stride(string size) => size switch { "S" => 8, "M" => 16, _ => 40 };

    private sealed class WithLinksPerSecond : Short
    {
        public WithLinksPerSecond() => AddColumn(new LinksPerSecond());
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
