using System.Diagnostics;
using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Placement.Zones;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Benchmarks;

/// <summary>What a person waits for who asks <c>repeaters</c> about a floor, step by step.</summary>
public static class CommandTable
{
    private const int Rungs = 8;

    public static void Print(TextWriter output, PlacementSize size, int seed)
    {
        Home home = PlacementBuilding.Of(size, seed);
        Network network = home.Networks[0];
        StudyOptions options = new() { Goals = PlacementGoals.Default };
        output.WriteLine(FormattableString.Invariant($"{size.Name} {seed}: two ways, a state, {new RobustnessOptions().Draws} draws, ladder of {Rungs}"));
        output.WriteLine("step                    seconds  processor s  peak MB");

        NetworkCoverage coverage = Timed("links and routes", () => CoverageStudy.Run(home, network, options));
        RepeaterPlacement placement = Timed("repeaters", () => CoverageStudy.Repeaters(coverage, options));
        output.WriteLine(FormattableString.Invariant($"  cost {placement.Cost}, bound {placement.CostBound}, {placement.Repeaters.Length} repeaters, {placement.Unserved.Length} unserved"));
        Timed("ladder", () => LadderStudy.Run(coverage, Rungs, options));
        SurveyedPlacement? surveyed = Timed("survey again", () => SurveyedPlacement.Of(
            home, network, new(home, network, coverage.Model), coverage.State, placement.Goals,
            [.. placement.Repeaters.Select(repeater => repeater.Outlet)], [.. placement.KeptOn.Select(device => device.Device)]));
        if (surveyed is not null && surveyed.Chosen.Length > 0)
        {
            surveyed = surveyed with { CostBound = placement.CostBound };
            Timed("second best of each", () => SiteStandings.Of(surveyed, new WorkLimit().SharedBy(2)));
            Timed("zones", () => surveyed.Chosen.Where(choice => choice < surveyed.Survey.Outlets.Length).Select(choice => ZoneMapping.OfRepeater(surveyed, choice)).ToList());
            Timed("draws", () => GoalDraws.Estimate(surveyed, new()));
            Timed("pessimistic case", () => PessimisticCase.Solve(surveyed, new WorkLimit().SharedBy(2)));
        }

        if (!placement.ServesAll) Timed("giving in", () => ConcessionStudy.Run(coverage, options));

        T Timed<T>(string step, Func<T> work)
        {
            Process process = Process.GetCurrentProcess();
            TimeSpan processor = process.TotalProcessorTime;
            var watch = Stopwatch.StartNew();
            T result = work();
            process.Refresh();
            output.WriteLine(FormattableString.Invariant(
                $"{step,-20} {watch.Elapsed.TotalSeconds,10:0.0} {(process.TotalProcessorTime - processor).TotalSeconds,12:0.0} {process.PeakWorkingSet64 >> 20,8}"));
            output.Flush();
            return result;
        }
    }
}
