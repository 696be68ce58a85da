using System.Collections.Immutable;
using CsCheck;
using MeshSim.Placement;
using MeshSim.Placement.Trees;

namespace MeshSim.Tests.Placement.Trees;

public sealed class TreeBoundTests
{
    private const int Side = 8;

    [Fact]
    public void No_choice_of_outlets_costs_less_than_the_bound() =>
        ProblemSample.Any.Sample(sample =>
        {
            if (GoalOf(sample.Problem()) is not { } goal) return;
            ExhaustivePlacement oracle = new(sample);
            SearchResult tree = TreeBound.Of(goal, Ones(sample.OutletCount), new());
            tree.LowerBound.Should().BeInRange(0, oracle.Count);
            if (tree.Outlets is { } outlets) oracle.Serves(ExhaustivePlacement.SubsetOf(outlets)).Should().BeTrue();
        });

    [Fact]
    public void Outlets_in_a_grid_leave_a_gap_to_the_cuts_and_none_to_the_trees()
    {
        RepeaterProblem grid = Grid(seed: 1);
        IPlacementGoal[] goals = new DemandSet([Situation.WithAllPower(grid)], ways: 1).Goals();
        SearchResult byCuts = RepeaterSolver.Search(goals, Ones(Side * Side), null, null, new(), 0, new());
        byCuts.Outlets!.Length.Should().BeGreaterThan(byCuts.LowerBound, "otherwise trees are not needed here");

        RepeaterSolution solution = RepeaterSolver.Solve(grid);
        solution.IsProven.Should().BeTrue();
        solution.LowerBound.Should().BeGreaterThan(byCuts.LowerBound);
        RepeaterSolver.Solve(grid, new() { TreeRelaxations = 0 }).LowerBound.Should().BeInRange(byCuts.LowerBound, solution.Cost);
    }

    /// <summary>An outlet at each crossing hears its four neighbours; at some crossings there is an end device, at one the coordinator.</summary>
    private static RepeaterProblem Grid(int seed)
    {
        var random = new Random(seed);
        int[] places = [.. Enumerable.Range(0, Side * Side).OrderBy(_ => random.Next()).Take(Side + 1)];
        ImmutableArray<bool> relays = [true, .. Enumerable.Repeat(false, Side)];
        return new(relays, 0, Side * Side, 3 * Side, new(6), (a, b) => new(IsLink(a, b - places.Length) ? 9 : -9));

        bool IsLink(int a, int outlet) => outlet >= 0 && (a < places.Length ? places[a] == outlet : AreNeighbours(a - places.Length, outlet));

        static bool AreNeighbours(int p, int q) => Math.Abs((p / Side) - (q / Side)) + Math.Abs((p % Side) - (q % Side)) == 1;
    }

    private static ReachGoal? GoalOf(RepeaterProblem problem) => new DemandSet([Situation.WithAllPower(problem)], ways: 1).Goals().OfType<ReachGoal>().FirstOrDefault();

    private static int[] Ones(int count) => [.. Enumerable.Repeat(1, count)];
}
