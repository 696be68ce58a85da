using System.Diagnostics;
using System.Globalization;

namespace MeshSim.Benchmarks;

/// <summary>How the time for one field grows with walls and with points: the office floor M with either doubled again and again.</summary>
public static class ScaleTable
{
    private const int WarmUps = 10, Rounds = 11;

    public static void Print(TextWriter output)
    {
        // Once for nothing, so that the first line does not pay for compiling.
        PrintLine(TextWriter.Null, BuildingSize.M);
        output.WriteLine("walls   points  processor time for one field, ms");
        foreach (int rooms in new[] { 300, 600, 1200, 2400 }) PrintLine(output, BuildingSize.M with { Rooms = rooms });
        foreach (double halvings in new[] { 1.0, 2, 4 }) PrintLine(output, BuildingSize.M with { GridStepMetres = 0.1 / Math.Sqrt(halvings) });
    }

    private static void PrintLine(TextWriter output, BuildingSize size)
    {
        var work = new Workload(size, isAngled: false);
        double[] milliseconds = [.. Enumerable.Range(0, WarmUps + Rounds).Select(_ => Once(work)).Skip(WarmUps).Order()];
        string median = milliseconds[Rounds / 2].ToString("0.00", CultureInfo.InvariantCulture);
        output.WriteLine(FormattableString.Invariant($"{work.Walls,5} {work.Grids[0].Count,8}  {median}"));
    }

    private static double Once(Workload work)
    {
        TimeSpan start = Process.GetCurrentProcess().TotalProcessorTime;
        work.Kernel(1);
        return (Process.GetCurrentProcess().TotalProcessorTime - start).TotalMilliseconds / work.Building.Transmitters.Length;
    }
}
