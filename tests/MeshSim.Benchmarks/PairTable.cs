using System.Diagnostics;
using System.Globalization;

namespace MeshSim.Benchmarks;

/// <summary>All pairs of devices: the best of several rounds by the clock on the wall, and the processor time of that many.</summary>
public static class PairTable
{
    private const int WarmUps = 2, Rounds = 7;

    public static void Print(TextWriter output, IEnumerable<BuildingSize> sizes)
    {
        output.WriteLine("all pairs of devices, best round: wall ms on 1 thread, on 2; processor ms on 1 thread; 10^6 links per second of it; times the tracer");
        foreach (BuildingSize size in sizes)
        {
            foreach (bool isAngled in new[] { false, true })
            {
                var work = new Workload(size, isAngled);
                var rounds = Enumerable.Range(0, WarmUps + Rounds).Select(_ => Round(work)).Skip(WarmUps).ToArray();
                double one = rounds.Min(round => round.One), two = rounds.Min(round => round.Two), processor = rounds.Min(round => round.Processor);
                double rate = work.Pairs / processor / 1e3, ratio = rate / rounds.Max(round => round.TracerRate);
                output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{size.Name} {(isAngled ? "angled" : "constant"),-9} {work.Devices.Length,5} {one,9:0.00} {two,9:0.00} {processor,9:0.00} {rate,8:0.00} {ratio,8:0}"));
            }
        }
    }

    // Short work is repeated, because the processor's clock ticks in milliseconds.
    private static (double One, double Two, double Processor, double TracerRate) Round(Workload work)
    {
        int repeats = (int)Math.Max(1, 40_000 / work.Pairs);
        (double one, double processor) = Time(() => Repeat(1));
        (double two, _) = Time(() => Repeat(2));
        long links = 0;
        (_, double tracer) = Time(() => links = work.TracerPairs(Math.Max(1, work.Devices.Length / 5)));
        return (one / repeats, two / repeats, processor / repeats, links / tracer / 1e3);

        void Repeat(int threads)
        {
            for (int i = 0; i < repeats; i++) work.PairTotals(threads);
        }
    }

    private static (double WallMs, double ProcessorMs) Time(Action run)
    {
        using var process = Process.GetCurrentProcess();
        TimeSpan before = process.TotalProcessorTime;
        long start = Stopwatch.GetTimestamp();
        run();
        double wall = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        process.Refresh();
        return (wall, (process.TotalProcessorTime - before).TotalMilliseconds);
    }
}
