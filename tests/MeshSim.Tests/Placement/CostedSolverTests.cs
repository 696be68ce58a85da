using System.Collections.Immutable;
using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>Outlets that cost different amounts.</summary>
public sealed class CostedSolverTests
{
    private const int Problems = 150;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void With_costs_the_answer_is_the_cheapest_of_all_subsets(int ways)
    {
        int notFewest = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways);
            ImmutableArray<int> costs = CostsOf(sample, seed);
            ExhaustiveSurvival oracle = new(sample);
            var best = Enumerable.Range(0, 1 << costs.Length).Where(oracle.Serves)
                .Select(subset => (Cost: Cost(subset), Steps: oracle.Steps(subset), Places: OutletsOf(subset).Sum()))
                .OrderBy(choice => choice.Cost).ThenByDescending(choice => choice.Steps).ThenBy(choice => choice.Places).First();

            RepeaterSolution solution = sample.SolveAt(costs);
            int subset = ExhaustivePlacement.SubsetOf(solution.Outlets);
            (solution.Cost, solution.LowerBound).Should().Be((best.Cost, best.Cost), "seed {0}", seed);
            oracle.Serves(subset).Should().BeTrue("seed {0}", seed);
            (Cost(subset), oracle.Steps(subset), solution.Outlets.Sum()).Should().Be((best.Cost, best.Steps, best.Places), "seed {0}", seed);
            if (solution.Outlets.Length > oracle.Count) notFewest++;

            int Cost(int chosen) => OutletsOf(chosen).Sum(outlet => costs[outlet]);

            IEnumerable<int> OutletsOf(int chosen) => Enumerable.Range(0, costs.Length).Where(outlet => (chosen >> outlet & 1) != 0);
        }

        notFewest.Should().BeGreaterThan(0, "costs must matter");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_quick_bound_is_never_above_the_cheapest_of_all_subsets_and_mostly_there(int ways)
    {
        int tight = 0, withTwo = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways).WithSomeOffEveryday(seed);
            if (seed % 5 == 0) sample = sample.Within(hopLimit: 3 * sample.Everyday.NodeCount);
            int[] costs = [.. CostsOf(sample, seed)];
            ExhaustiveSurvival oracle = new(sample);
            int least = Enumerable.Range(0, 1 << costs.Length).Where(oracle.Serves)
                .Min(chosen => Enumerable.Range(0, costs.Length).Where(outlet => (chosen >> outlet & 1) != 0).Sum(outlet => costs[outlet]));

            DemandSet demands = new(sample.Asked, ways);
            (double relaxed, int cost) = RepeaterSolver.Bound(demands, costs);
            cost.Should().BeLessThanOrEqualTo(least, "seed {0}", seed);
            relaxed.Should().BeInRange(cost - 1, cost + CutSearch.SolverTolerance, "seed {0}", seed);
            if (cost == least) tight++;
            if (demands.ReachGoals().Any(goal => goal.CutsMissedBy(goal.Graph.NothingChosen()).Any(cut => cut.Need == Survivals.Need))) withTwo++;
        }

        tight.Should().BeGreaterThan(Problems * 3 / 4);
        (withTwo > Problems / 10).Should().Be(ways == 2);
    }

    [Fact]
    public void A_dearer_outlet_never_makes_it_cheaper() =>
        Gen.Select(SurvivalSample.Any, Gen.Int[0, 1000], Gen.Int[0, 7]).Sample((sample, seed, which) =>
        {
            ImmutableArray<int> costs = CostsOf(sample, seed);
            int outlet = which % costs.Length;
            sample.SolveAt(costs.SetItem(outlet, costs[outlet] + 5)).Cost.Should().BeGreaterThanOrEqualTo(sample.SolveAt(costs).Cost);
        });

    [Fact]
    public void The_unit_of_the_costs_does_not_matter() =>
        Gen.Select(SurvivalSample.Any, Gen.Int[0, 1000]).Sample((sample, seed) =>
        {
            ImmutableArray<int> costs = CostsOf(sample, seed);
            RepeaterSolution once = sample.SolveAt(costs), tenfold = sample.SolveAt([.. costs.Select(cost => cost * 10)]);
            tenfold.Outlets.Should().Equal(once.Outlets);
            (tenfold.Cost, tenfold.LowerBound).Should().Be((once.Cost * 10, once.LowerBound * 10));
        });

    [Fact]
    public void Costs_that_do_not_fit_are_refused()
    {
        SurvivalSample sample = SurvivalSample.Random(1, isCoarse: false, ways: 1);
        ImmutableArray<int> costs = CostsOf(sample, 1);
        FluentActions.Invoking(() => sample.SolveAt(costs.Add(1))).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => sample.SolveAt(costs.SetItem(0, -1))).Should().Throw<ArgumentException>();
    }

    private static ImmutableArray<int> CostsOf(SurvivalSample sample, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, sample.Everyday.OutletCount).Select(_ => random.Next(0, 7))];
    }
}
