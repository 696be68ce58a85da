using System.Collections.Immutable;
using System.Diagnostics;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Benchmarks;

/// <summary>Time, gap and number of cuts of placement in generated buildings: repeaters and the hub, each for three goals.</summary>
public static class PlacementTable
{
    /// <summary>The buildings of each size that are measured unless others are asked for.</summary>
    public static readonly ImmutableArray<int> Seeds = [1, 2, 3];

    private static readonly PlacementGoals[] Goals =
        [PlacementGoals.OneWayEveryday, new() { Ways = 1 }, PlacementGoals.Default];

    public static void Print(TextWriter output, IEnumerable<PlacementSize> sizes, ImmutableArray<int> seeds)
    {
        output.WriteLine("building seed network          goals            answer bound gap %   cuts  seconds  processor s  peak MB");
        foreach (PlacementSize size in sizes)
        {
            foreach (int seed in seeds)
            {
                Home home = PlacementBuilding.Of(size, seed);
                foreach (Network network in home.Networks)
                    foreach (PlacementGoals goals in Goals) PrintRepeaters(output, home, network, goals, seed);
                foreach (PlacementGoals goals in Goals) PrintHub(output, home, goals, seed);
            }
        }
    }

    private static void PrintRepeaters(TextWriter output, Home home, Network network, PlacementGoals goals, int seed)
    {
        ImmutableArray<State> held = goals.Held(home, everyday: null);
        RepeaterSurvey survey = RepeaterSurvey.Of(home, network, new StateGraphs(home, network, new StudyOptions().Model), everyday: null, held);
        RepeaterSolution solution = null!;
        string time = Timed(() => solution = RepeaterSolver.Solve(survey.Situations, goals.Ways, survey.CostsOf(home.Costs)));
        PrintLine(output, home, seed, network.Name.Value, goals, solution.Cost, solution.LowerBound, solution.Cuts, time);
    }

    private static void PrintHub(TextWriter output, Home home, PlacementGoals goals, int seed)
    {
        HubPlacement hub = null!;
        string time = Timed(() => hub = HubStudy.Run(home, home.Networks, [], new() { Goals = goals }));
        PrintLine(
            output,
            home,
            seed,
            FormattableString.Invariant($"hub, {hub.SitesConsidered} sites"),
            goals,
            hub.Best.Cost,
            BoundOf(hub),
            hub.Best.Networks.Sum(network => network.Cuts),
            time);
    }

    /// <summary>What any site costs at least that leaves out as few as the best one; 0 where another may leave out fewer, whose cost says nothing.</summary>
    private static int BoundOf(HubPlacement hub) =>
        hub.Open is not { } open ? hub.Best.LowerBound
        : (open.OutOfReach, open.Unserved) == (hub.Best.OutOfReach, hub.Best.Unserved) ? Math.Min(hub.Best.LowerBound, open.Cost)
        : 0;

    private static void PrintLine(TextWriter output, Home home, int seed, string what, PlacementGoals goals, int cost, int bound, int cuts, string time)
    {
        string words = (goals.Ways, goals.HoldStates) switch { (1, false) => "one way", (1, true) => "and a state", _ => "state, two ways" };
        double gapPercent = cost == 0 ? 0 : 100.0 * (cost - bound) / cost;
        output.WriteLine(FormattableString.Invariant($"{home.Name,-8} {seed,4} {what,-16} {words,-16} {cost,6} {bound,5} {gapPercent,5:0.0} {cuts,6}  {time}"));
        output.Flush();
    }

    private static string Timed(Action work)
    {
        Process process = Process.GetCurrentProcess();
        TimeSpan processor = process.TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        work();
        process.Refresh();
        return FormattableString.Invariant(
            $"{watch.Elapsed.TotalSeconds,7:0.00}  {(process.TotalProcessorTime - processor).TotalSeconds,11:0.00}  {process.PeakWorkingSet64 >> 20,7}");
    }
}
