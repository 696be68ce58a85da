using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

/// <summary>Problems with states and with losses of single routers.</summary>
public sealed class SurvivalSolverTests
{
    private const int Problems = 200;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void With_states_and_losses_the_answer_is_the_best_of_all_subsets(int ways)
    {
        var counts = new HashSet<int>();
        int withUnmet = 0, dearer = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways);
            ExhaustiveSurvival oracle = new(sample);
            RepeaterSolution solution = sample.Solve();
            int subset = ExhaustivePlacement.SubsetOf(solution.Outlets);

            solution.Unservable.Should().Equal(oracle.Unservable, "seed {0}", seed);
            solution.Unmet.Should().Equal(oracle.Unmet, "seed {0}", seed);
            solution.Outlets.Should().HaveCount(oracle.Count, "seed {0}", seed).And.BeInAscendingOrder();
            solution.LowerBound.Should().Be(oracle.Count, "seed {0}", seed);
            oracle.Serves(subset).Should().BeTrue("seed {0}", seed);
            oracle.Steps(subset).Should().Be(oracle.BestSteps, "seed {0}", seed);
            solution.Outlets.Sum().Should().Be(oracle.LeastPlaces, "seed {0}", seed);
            counts.Add(oracle.Count);
            if (oracle.Unmet.Length > 0) withUnmet++;
            if (oracle.Count > sample.WithFewerGoals().Solve().Outlets.Length) dearer++;
        }

        counts.Should().Contain([0, 1, 2, 3, 4], "the samples must ask for several repeaters");
        withUnmet.Should().BeInRange(Problems / 10, Problems * 9 / 10);
        dearer.Should().BeGreaterThan(Problems / 10, "the goals must matter");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void With_nodes_off_everyday_the_answer_is_the_best_of_all_subsets(int ways)
    {
        int needing = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            SurvivalSample sample = SurvivalSample.Random(seed, isCoarse: seed % 2 == 0, ways).WithSomeOffEveryday(seed);
            ExhaustiveSurvival oracle = new(sample);
            RepeaterSolution solution = sample.Solve();
            solution.Unservable.Should().Equal(oracle.Unservable, "seed {0}", seed);
            solution.Unmet.Should().Equal(oracle.Unmet, "seed {0}", seed);
            oracle.Serves(ExhaustivePlacement.SubsetOf(solution.Outlets)).Should().BeTrue("seed {0}", seed);
            (solution.Outlets.Length, solution.LowerBound).Should().Be((oracle.Count, oracle.Count), "seed {0}", seed);
            solution.Outlets.Sum().Should().Be(oracle.LeastPlaces, "seed {0}", seed);
            if (oracle.Count > 0 && sample.Off[0].Length > 0) needing++;
        }

        needing.Should().BeGreaterThan(Problems / 4);
    }

    [Fact]
    public void One_more_outlet_meets_no_fewer_goals_and_the_same_with_no_more() =>
        SurvivalSample.Any.Sample(sample =>
        {
            RepeaterSolution more = sample.Solve(), fewer = sample.WithoutLastOutlet().Solve();
            more.Unservable.Should().BeSubsetOf(fewer.Unservable);

            // The outlet that is left out may itself be the one whose loss is not survived.
            int last = sample.Everyday.NodeCount - 1;
            if (more.Unservable.SequenceEqual(fewer.Unservable) && more.Unmet.SequenceEqual(fewer.Unmet))
                more.Outlets.Length.Should().BeLessThanOrEqualTo(fewer.Outlets.Length);
            more.Unmet.Where(unmet => unmet.Lost != last && !fewer.Unservable.Contains(unmet.Device)).Should().BeSubsetOf(fewer.Unmet);
        });

    [Fact]
    public void More_goals_never_need_fewer_outlets() =>
        SurvivalSample.Any.Sample(sample =>
        {
            RepeaterSolution more = sample.Solve(), fewer = sample.WithFewerGoals().Solve();
            more.Unservable.Should().Equal(fewer.Unservable);
            more.Outlets.Length.Should().BeGreaterThanOrEqualTo(fewer.Outlets.Length);
        });

    [Fact]
    public void Two_ways_never_need_fewer_outlets_than_one() =>
        SurvivalSample.Any.Sample(sample =>
            (sample with { Ways = 2 }).Solve().Outlets.Length.Should().BeGreaterThanOrEqualTo((sample with { Ways = 1 }).Solve().Outlets.Length));

    [Fact]
    public void The_same_problem_gets_the_same_answer() =>
        SurvivalSample.Any.Sample(sample => sample.Solve().Outlets.Should().Equal(sample.Solve().Outlets));

    [Fact]
    public void Without_work_the_answer_still_meets_the_goals_and_the_bound_still_holds() =>
        SurvivalSample.Any.Sample(sample =>
        {
            ExhaustiveSurvival oracle = new(sample);
            foreach (WorkLimit limit in new WorkLimit[] { new() { Rounds = 0 }, new() { Rounds = 0, Searches = 0 }, new() { Searches = 50, SearchesForTies = 0 } })
            {
                RepeaterSolution solution = sample.Solve(limit);
                oracle.Serves(ExhaustivePlacement.SubsetOf(solution.Outlets)).Should().BeTrue();
                solution.LowerBound.Should().BeInRange(0, oracle.Count);
            }
        });

    [Fact]
    public void Of_three_outlets_side_by_side_two_are_taken_when_one_may_fail()
    {
        // Coordinator and end device hear the three outlets and not each other; the outlets hear one another.
        RepeaterProblem problem = new([true, false], 0, 3, 3, new(6), (a, b) => new((a, b) == (0, 1) ? -30 : 10));
        RepeaterSolver.Solve([Situation.WithAllPower(problem)], ways: 1).Outlets.Should().Equal(0);
        RepeaterSolution twice = RepeaterSolver.Solve([Situation.WithAllPower(problem)], ways: 2);
        twice.Outlets.Should().Equal(0, 1);
        twice.Unmet.Should().BeEmpty();
        twice.IsProven.Should().BeTrue();
    }

    [Fact]
    public void An_only_outlet_is_taken_and_its_loss_is_named()
    {
        RepeaterProblem problem = new([true, false], 0, 1, 3, new(6), (a, b) => new((a, b) == (0, 1) ? -30 : 10));
        RepeaterSolution solution = RepeaterSolver.Solve([Situation.WithAllPower(problem)], ways: 2);
        solution.Outlets.Should().Equal(0);
        solution.Unservable.Should().BeEmpty();
        solution.Unmet.Should().Equal(new UnmetDemand(Device: 1, Situation: 0, Lost: 2));
    }

    [Fact]
    public void Situations_that_do_not_belong_together_are_refused()
    {
        RepeaterProblem two = ProblemSample.Random(1, isCoarse: false).Problem(), other = ProblemSample.Random(2, isCoarse: false).Problem();
        Refused(() => RepeaterSolver.Solve([], ways: 1));
        Refused(() => RepeaterSolver.Solve([Situation.WithAllPower(two), Situation.WithAllPower(other)], ways: 1));
        Refused(() => RepeaterSolver.Solve([new(two, [0])], ways: 1));
        Refused(() => RepeaterSolver.Solve([Situation.WithAllPower(two)], ways: 3));

        static void Refused(Action solve) => solve.Should().Throw<ArgumentException>();
    }
}
