using System.Diagnostics;
using System.Globalization;

namespace MeshSim.Benchmarks;

/// <summary>
/// All figures of one building measured in turns, so that a busy machine slows them alike; medians over the rounds.
/// </summary>
public static class RatioTable
{
    private const int Rounds = 9;

    public static void Print(TextWriter output, IEnumerable<BuildingSize> sizes)
    {
        output.WriteLine("building losses     walls     kernel 1   kernel 2 threads    tracer  brute force      write alone   [10^6 link evaluations/s]");
        foreach (BuildingSize size in sizes)
        {
            foreach (bool isAngled in new[] { false, true })
            {
                var work = new Workload(size, isAngled);
                (int stride, int few) = size.Name == "L" ? (40, 1) : size.Name == "M" ? (16, 1) : (8, 2);
                double[][] rates = [.. Enumerable.Range(0, Rounds + 1).Select(_ => new[]
                {
                    Rate(() => { work.Kernel(1); return work.Links; }),
                    Rate(() => { work.Kernel(2); return work.Links; }),
                    Rate(() => work.Tracer(stride, few)),
                    Rate(() => work.BruteForce(stride * 4, few)),
                    Rate(() => { work.WriteAlone(); return work.Links; }),
                }).Skip(1)];
                IEnumerable<string> medians = Enumerable.Range(0, 5).Select(i => Median(rates.Select(rate => rate[i])).ToString("0.00", CultureInfo.InvariantCulture).PadLeft(12));
                output.WriteLine(FormattableString.Invariant($"{size.Name,-8} {(isAngled ? "angled" : "constant"),-9} {work.Walls,6} {string.Join(" ", medians)}"));
            }
        }
    }

    private static double Rate(Func<long> run)
    {
        TimeSpan start = Process.GetCurrentProcess().TotalProcessorTime;
        long links = run();
        return links / (Process.GetCurrentProcess().TotalProcessorTime - start).TotalSeconds / 1e6;
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] ordered = [.. values.Order()];
        return ordered[ordered.Length / 2];
    }
}
