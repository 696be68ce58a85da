using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Benchmarks.Masters;

/// <summary>Hitting sets as the placement meets them: all cuts of a search that has ended, and published set covers.</summary>
internal static class MasterProblems
{
    private const string DataVariable = "MESHSIM_DATA";
    private static readonly string[] Published = ["scp41", "scp51", "scp62", "scp65", "scpa1", "scpa3", "scpe1", "scpe3"];

    /// <summary>The masters of a generated floor: the least cost, and which of the least costly choices comes first.</summary>
    public static IEnumerable<MasterProblem> OfFloor(PlacementSize size, int seed, PlacementGoals goals)
    {
        Home home = PlacementBuilding.Of(size, seed);
        Network network = home.Networks[0];
        RepeaterSurvey survey = RepeaterSurvey.Of(home, network, new StateGraphs(home, network, new StudyOptions().Model), everyday: null, goals.Held(home, everyday: null));
        string name = FormattableString.Invariant($"{size.Name} {seed}, {(goals.Ways, goals.HoldStates) switch { (1, false) => "one way", (1, true) => "state", _ => "two ways" }}");
        ImmutableArray<int> costs = survey.CostsOf(home.Costs);
        return Collected(name, survey.Situations, goals.Ways, [.. costs.Select(cost => cost / 10)]);
    }

    /// <summary>
    /// The masters of outlets at the crossings of a grid, each of which hears its four neighbours; as many end devices as there are crossings on a side
    /// hang on some of them, the coordinator on another. These cuts leave gaps.
    /// </summary>
    public static IEnumerable<MasterProblem> OfGrid(int side, int seed)
    {
        var random = new Random(seed);
        int[] places = [.. Enumerable.Range(0, side * side).OrderBy(_ => random.Next()).Take(side + 1)];
        ImmutableArray<bool> relays = [true, .. Enumerable.Repeat(false, side)];
        RepeaterProblem grid = new(relays, 0, side * side, 3 * side, new(6), (a, b) => new(IsLink(a, b - places.Length) ? 9 : -9));
        return Collected(FormattableString.Invariant($"grid {side} x {side}, {seed}"), [Situation.WithAllPower(grid)], 1, [.. Enumerable.Repeat(1, side * side)]);

        bool IsLink(int a, int outlet) => outlet >= 0 && (a < places.Length ? places[a] == outlet : AreNeighbours(a - places.Length, outlet));

        bool AreNeighbours(int p, int q) => Math.Abs((p / side) - (q / side)) + Math.Abs((p % side) - (q % side)) == 1;
    }

    /// <summary>Set covers of the OR-Library (J. E. Beasley, 1990); none where the data are not at hand.</summary>
    public static IEnumerable<MasterProblem> OfLibrary()
    {
        string root = Environment.GetEnvironmentVariable(DataVariable) is { Length: > 0 } data ? data : Path.Combine("..", "shared", "datasets");
        string folder = Path.Combine(root, "optimisation", "scp");
        return Directory.Exists(folder) ? Published.Select(name => Read(name, Path.Combine(folder, name + ".txt"))) : [];
    }

    private static IEnumerable<MasterProblem> Collected(string name, ImmutableArray<Situation> situations, int ways, int[] costs)
    {
        CutPool pool = new();
        using CutSearch search = new(new DemandSet(situations, ways).Goals(), costs, exactly: null, below: null, pool);
        SearchResult found = search.Run(0, new());
        yield return new(name, costs, null, search.Candidates, [.. pool.Cuts]);

        ExactCost exactly = new(costs, found.Outlets!.Sum(outlet => costs[outlet]));
        yield return new(name + ", first", [.. Enumerable.Range(0, costs.Length)], exactly, [.. costs.Select(_ => true)], [.. pool.Cuts]);
    }

    /// <summary>Numbers of rows and columns, the costs of the columns, then per row how many columns hit it and which, from 1.</summary>
    private static MasterProblem Read(string name, string file)
    {
        int[] numbers = [.. File.ReadAllText(file).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(text => int.Parse(text, CultureInfo.InvariantCulture))];
        int[] costs = numbers[2..(2 + numbers[1])];
        Cut[] cuts = new Cut[numbers[0]];
        int at = 2 + costs.Length;
        for (int row = 0; row < cuts.Length; row++)
        {
            int count = numbers[at++];
            cuts[row] = Cut.One([.. numbers[at..(at + count)].Select(column => column - 1).Order()]);
            at += count;
        }

        return new(name, costs, null, [.. costs.Select(_ => true)], cuts);
    }
}
