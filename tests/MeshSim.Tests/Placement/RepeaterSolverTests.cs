using CsCheck;
using MeshSim.Placement;

namespace MeshSim.Tests.Placement;

public sealed class RepeaterSolverTests
{
    private const int Problems = 300;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_answer_is_the_best_of_all_subsets(bool isCoarse)
    {
        var counts = new HashSet<int>();
        int withUnservable = 0;
        for (int seed = 0; seed < Problems; seed++)
        {
            ProblemSample sample = ProblemSample.Random(seed, isCoarse);
            ExhaustivePlacement oracle = new(sample);
            RepeaterSolution solution = RepeaterSolver.Solve(sample.Problem());
            int subset = ExhaustivePlacement.SubsetOf(solution.Outlets);

            solution.Unservable.Should().Equal(oracle.Unservable, "seed {0}", seed);
            solution.Outlets.Should().HaveCount(oracle.Count, "seed {0}", seed).And.BeInAscendingOrder();
            solution.LowerBound.Should().Be(oracle.Count, "seed {0}", seed);
            solution.IsProven.Should().BeTrue("seed {0}", seed);
            oracle.Serves(subset).Should().BeTrue("seed {0}", seed);
            oracle.Steps(subset).Should().Be(oracle.BestSteps, "seed {0}", seed);
            solution.Outlets.Sum().Should().Be(oracle.LeastPlaces, "seed {0}", seed);
            counts.Add(oracle.Count);
            if (oracle.Unservable.Length > 0) withUnservable++;
        }

        counts.Should().Contain([0, 1, 2, 3, 4], "the samples must ask for several repeaters");
        withUnservable.Should().BeInRange(Problems / 10, Problems * 9 / 10);
    }

    [Fact]
    public void One_more_outlet_serves_no_fewer_and_the_same_devices_with_no_more() =>
        ProblemSample.Any.Sample(sample =>
        {
            RepeaterSolution without = RepeaterSolver.Solve(sample.WithoutLastOutlet().Problem());
            NoEasier(RepeaterSolver.Solve(sample.Problem()), without);
        });

    [Fact]
    public void A_tighter_margin_never_makes_it_easier() =>
        Gen.Select(ProblemSample.Any, Gen.Double[0, 3]).Sample((sample, byDb) =>
            NoEasier(
                RepeaterSolver.Solve(sample.Problem()),
                RepeaterSolver.Solve((sample with { DesignMarginDb = sample.DesignMarginDb + byDb }).Problem())));

    [Fact]
    public void A_lower_hop_limit_never_makes_it_easier() =>
        ProblemSample.Any.Where(sample => sample.HopLimit > 1).Sample(sample =>
            NoEasier(
                RepeaterSolver.Solve(sample.Problem()),
                RepeaterSolver.Solve((sample with { HopLimit = sample.HopLimit - 1 }).Problem())));

    [Fact]
    public void A_link_less_never_makes_it_easier() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, int.MaxValue], Gen.Int[0, int.MaxValue]).Sample((sample, a, b) =>
            NoEasier(
                RepeaterSolver.Solve(sample.Problem()),
                RepeaterSolver.Solve(sample.WithoutLink(a % sample.NodeCount, b % sample.NodeCount).Problem())));

    [Fact]
    public void The_same_problem_gets_the_same_answer() =>
        ProblemSample.Any.Sample(sample =>
        {
            RepeaterSolution first = RepeaterSolver.Solve(sample.Problem()), second = RepeaterSolver.Solve(sample.Problem());
            second.Outlets.Should().Equal(first.Outlets);
            second.Unservable.Should().Equal(first.Unservable);
        });

    [Fact]
    public void The_order_of_the_devices_changes_nothing() =>
        Gen.Select(ProblemSample.Any, Gen.Int[0, int.MaxValue]).Sample((sample, seed) =>
        {
            RepeaterSolution listed = RepeaterSolver.Solve(sample.Problem());
            RepeaterSolution shuffled = RepeaterSolver.Solve(sample.WithDevicesShuffled(seed).Problem());
            shuffled.Outlets.Should().HaveSameCount(listed.Outlets);
            shuffled.Outlets.Sum().Should().Be(listed.Outlets.Sum());
            shuffled.Unservable.Should().HaveSameCount(listed.Unservable);
        });

    [Fact]
    public void Without_work_the_answer_still_serves_and_the_bound_still_holds() =>
        ProblemSample.Any.Sample(sample =>
        {
            ExhaustivePlacement oracle = new(sample);
            RepeaterSolution solution = RepeaterSolver.Solve(sample.Problem(), new() { Rounds = 0 });
            oracle.Serves(ExhaustivePlacement.SubsetOf(solution.Outlets)).Should().BeTrue();
            solution.LowerBound.Should().BeInRange(0, oracle.Count);
            solution.IsProven.Should().Be(solution.Outlets.Length == solution.LowerBound);
        });

    [Fact]
    public void A_triangle_of_outlets_needs_two_where_three_halves_would_do()
    {
        // Three devices, three outlets, each outlet between two devices: half of each outlet hits every cut, so the relaxed bound
        // is 1.5, and the answer 2 has to be found. One end device hears outlets 0 and 1, one 1 and 2, one 2 and 0.
        (int, int)[] triangle = [(0, 4), (0, 5), (0, 6), (1, 4), (1, 5), (2, 5), (2, 6), (3, 6), (3, 4)];
        RepeaterProblem problem = Wired([true, false, false, false], 3, hopLimit: 2, triangle);
        RepeaterSolution solution = RepeaterSolver.Solve(problem);
        solution.Outlets.Should().Equal(0, 1);
        solution.IsProven.Should().BeTrue();
    }

    [Fact]
    public void A_chain_within_the_hop_limit_is_built_and_a_longer_one_is_not()
    {
        // Coordinator, three outlets in a row, an end device: four links.
        (int, int)[] chain = [(0, 2), (2, 3), (3, 4), (4, 1)];
        RepeaterSolver.Solve(Wired([true, false], 3, hopLimit: 4, chain)).Outlets.Should().Equal(0, 1, 2);
        RepeaterSolution tooLong = RepeaterSolver.Solve(Wired([true, false], 3, hopLimit: 3, chain));
        tooLong.Outlets.Should().BeEmpty();
        tooLong.Unservable.Should().Equal(1);
        tooLong.IsProven.Should().BeTrue();
    }

    [Fact]
    public void An_end_device_passes_nothing_on()
    {
        (int, int)[] overAnEndDevice = [(0, 1), (1, 2), (2, 3)];
        RepeaterSolver.Solve(Wired([true, false, false], 1, hopLimit: 5, overAnEndDevice)).Unservable.Should().Equal(2);
        RepeaterSolver.Solve(Wired([true, true, false], 1, hopLimit: 5, overAnEndDevice)).Unservable.Should().BeEmpty();
    }

    /// <summary>A problem with good links between some nodes and hopeless ones elsewhere.</summary>
    private static RepeaterProblem Wired(bool[] relays, int outlets, int hopLimit, params (int, int)[] links) =>
        new([.. relays], 0, outlets, hopLimit, new(6), (a, b) => new(links.Contains((a, b)) || links.Contains((b, a)) ? 10 : -30));

    /// <summary>What the harder problem serves, the easier one serves with no more outlets.</summary>
    private static void NoEasier(RepeaterSolution easier, RepeaterSolution harder)
    {
        easier.IsProven.Should().BeTrue();
        harder.IsProven.Should().BeTrue();
        easier.Unservable.Should().BeSubsetOf(harder.Unservable);
        if (easier.Unservable.SequenceEqual(harder.Unservable))
            easier.Outlets.Length.Should().BeLessThanOrEqualTo(harder.Outlets.Length);
    }
}
