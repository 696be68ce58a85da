using System.Diagnostics;
using System.Globalization;
using MeshSim.Propagation;

namespace MeshSim.Benchmarks;

/// <summary>
/// All figures of one building measured in turns, so that a busy machine slows them alike; medians over the rounds. Rates are
/// per second of processor time, the gain of a second thread is by the clock on the wall.
/// </summary>
public static class RatioTable
{
    private const int Rounds = 11;
    private const double WarmUpSeconds = 1.5, LeastSeconds = 0.05;

    public static void Print(TextWriter output, IEnumerable<BuildingSize> sizes)
    {
        output.WriteLine("10^6 link evaluations per second of processor time");
        output.WriteLine("building losses   model        walls       kernel      tracer brute force write alone   two threads   rows on two  kernel best");
        foreach (BuildingSize size in sizes)
        {
            foreach (bool isAngled in new[] { false, true })
                foreach (ModelName model in new[] { ModelName.Detour, ModelName.LogDistance }) PrintLine(output, new(size, isAngled, model));
        }
    }

    private static void PrintLine(TextWriter output, Workload work)
    {
        long start = Stopwatch.GetTimestamp();
        while (Stopwatch.GetElapsedTime(start).TotalSeconds < WarmUpSeconds) Round(work);
        double[][] rounds = [.. Enumerable.Range(0, Rounds).Select(_ => Round(work))];
        string rates = string.Join(" ", Enumerable.Range(0, 4).Select(i => Text(rounds, i).PadLeft(11)));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{work.Building.Size.Name,-8} {(work.IsAngled ? "angled" : "constant"),-8} {work.Name,-12} {work.Walls,6} {rates} {Text(rounds, 4),11} x "
                + $"{Text(rounds, 5),11} x {Best(rounds),11}"));
    }

    private static double[] Round(Workload work)
    {
        (int stride, int few) = work.Building.Size.Name switch { "L" => (40, 1), "M" => (16, 1), _ => (8, 2) };
        double one = SecondsOf(() => work.Kernel(1)), two = SecondsOf(() => work.Kernel(2)), byRows = SecondsOf(() => work.KernelByRows(2));
        return
        [
            Rate(() => AllLinks(() => work.Kernel(1))),
            Rate(() => work.Tracer(stride, few)),
            Rate(() => work.BruteForce(stride, few)),
            Rate(() => AllLinks(work.WriteAlone)),
            one / two,
            one / byRows,
        ];

        long AllLinks(Action run)
        {
            run();
            return work.Links;
        }
    }

    // By the clock on the wall, of one run. Repeated like the rates: a thread that slept wakes once, not in each run.
    private static double SecondsOf(Action run)
    {
        long start = Stopwatch.GetTimestamp();
        int runs = 0;
        do
        {
            run();
            runs++;
        }
        while (Stopwatch.GetElapsedTime(start).TotalSeconds < LeastSeconds);
        return Stopwatch.GetElapsedTime(start).TotalSeconds / runs;
    }

    // A run of the small building takes 5 ms, which reading the clock of the processor would blur: runs are repeated.
    private static double Rate(Func<long> run)
    {
        TimeSpan start = Environment.CpuUsage.TotalTime, spent;
        long links = 0;
        do
        {
            links += run();
            spent = Environment.CpuUsage.TotalTime - start;
        }
        while (spent.TotalSeconds < LeastSeconds);
        return links / spent.TotalSeconds / 1e6;
    }

    // The round least disturbed by other programs.
    private static string Best(double[][] rounds) => rounds.Max(round => round[0]).ToString("0.00", CultureInfo.InvariantCulture);

    private static string Text(double[][] rounds, int figure)
    {
        double[] ordered = [.. rounds.Select(round => round[figure]).Order()];
        return ordered[ordered.Length / 2].ToString("0.00", CultureInfo.InvariantCulture);
    }
}
