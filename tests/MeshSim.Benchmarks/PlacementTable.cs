using System.Diagnostics;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Propagation;

namespace MeshSim.Benchmarks;

/// <summary>Time, gap and cuts of placement on generated buildings.</summary>
public static class PlacementTable
{
    private const int Seeds = 3;

    public static void Print(TextWriter output, IEnumerable<PlacementSize> sizes)
    {
        output.WriteLine("building seed network          goals  repeaters bound  seconds memory-MB");
        foreach (PlacementSize size in sizes)
            for (int seed = int.Parse(Environment.GetEnvironmentVariable("SEED") ?? "1"); seed <= Seeds; seed++)
            {
                Home home = PlacementBuilding.Of(size, seed);
                foreach (Network network in home.Networks) { PrintLine(output, size, seed, home, network, 1, false);  PrintLine(output, size, seed, home, network, 1, true);  PrintLine(output, size, seed, home, network, 2, true); }
            }
    }

    private static void PrintLine(TextWriter output, PlacementSize size, int seed, Home home, Network network, int ways, bool hold)
    {
        StateGraphs graphs = new(home, network, ModelName.LogDistance);
        RepeaterSurvey survey = RepeaterSurvey.Of(home, network, graphs, null, hold ? home.States : []);
        var watch = Stopwatch.StartNew();
        RepeaterSolution solution = RepeaterSolver.Solve(survey.Situations, ways);
        output.WriteLine(FormattableString.Invariant($"{size.Name,-8} {seed,4} {network.Name,-16} {ways}/{hold} {solution.Outlets.Length,4} {solution.LowerBound,4}  {watch.Elapsed.TotalSeconds,7:0.00} unserv {solution.Unservable.Length} unmet {solution.Unmet.Length} {Process.GetCurrentProcess().PeakWorkingSet64 / 1048576}"));
        output.Flush();
    }
}
