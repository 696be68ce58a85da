using System.Collections.Immutable;
using MeshSim.Placement;
using MeshSim.Placement.Concessions;
using MeshSim.Quantities;

namespace MeshSim.Tests.Placement.Concessions;

/// <summary>What stands in the way against mending each link in turn, and against every margin that occurs.</summary>
public sealed class ObstacleFinderTests
{
    private const int Problems = 150;

    [Fact]
    public void Each_link_of_which_one_is_enough_is_counted_and_the_nearest_named()
    {
        int tooFar = 0, several = 0, all = 0;
        foreach (ProblemSample sample in Samples())
        {
            foreach (FoundObstacle found in ObstaclesOf(sample))
            {
                (int From, int To)[] would = [.. Pairs(sample).Where(pair => Serves(Mended(sample, pair), found.Devices))];
                found.LinksThatWouldDo.Should().Be(would.Length).And.BePositive("everybody could hear the coordinator");
                (int from, int to) = found.Link!.Value;
                would.Should().Contain((Math.Max(from, to), Math.Min(from, to)));
                sample.MarginsDb[from, to].Should().Be(would.Max(pair => sample.MarginsDb[pair.From, pair.To]), "it is the nearest to being enough");
                tooFar += found.Hops is null ? 0 : 1;
                several += found.Devices.Length > 1 ? 1 : 0;
                all++;
            }
        }

        tooFar.Should().BePositive("hop limits must bind now and then");
        several.Should().BePositive();
        all.Should().BeGreaterThan(Problems / 2);
    }

    [Fact]
    public void Every_device_that_cannot_be_served_has_one_obstacle_and_nobody_else_has()
    {
        foreach (ProblemSample sample in Samples())
            ObstaclesOf(sample).SelectMany(found => found.Devices).Order().Should().Equal(new ExhaustivePlacement(sample).Unservable);
    }

    [Fact]
    public void At_the_least_margin_everything_can_be_had_and_above_it_not()
    {
        int lowered = 0;
        foreach (ProblemSample sample in Samples())
        {
            RepeaterSolution solution = RepeaterSolver.Solve(sample.Problem());
            Decibels least = ObstacleFinder.LeastMargin([Situation.WithAllPower(sample.Problem())], solution.Undone);
            double[] margins = [.. sample.MarginsDb.Cast<double>().Append(sample.DesignMarginDb).Where(margin => margin <= sample.DesignMarginDb).Distinct().OrderDescending()];
            double expected = margins.First(margin => new ExhaustivePlacement(sample with { DesignMarginDb = margin }).Unservable.Length == 0);
            least.Value.Should().Be(expected);
            lowered += expected < sample.DesignMarginDb ? 1 : 0;
        }

        lowered.Should().BeInRange(Problems / 4, Problems * 9 / 10);
    }

    [Fact]
    public void Devices_behind_the_same_link_are_told_together()
    {
        // 0 is the coordinator, 1 and 2 hear each other across a wall, 3 hears nobody well.
        ProblemSample sample = Row([true, true, false, false], hopLimit: 5, ((0, 1), 3), ((1, 2), 9), ((0, 3), -10));
        ImmutableArray<FoundObstacle> found = ObstaclesOf(sample);
        found.Should().HaveCount(2);
        found[0].Devices.Should().Equal(1, 2);
        found[0].Link.Should().Be((0, 1));
        found[0].LinksThatWouldDo.Should().Be(1, "a link from the coordinator to 2 would not help 1, because 2 passes nothing on");
        found[1].Devices.Should().Equal(3);
        found[1].Link.Should().Be((0, 3));
    }

    [Fact]
    public void Where_hops_are_missing_the_way_that_there_is_is_counted()
    {
        ProblemSample sample = Row([true, true, true, false], hopLimit: 2, ((0, 1), 9), ((1, 2), 9), ((2, 3), 9), ((1, 3), 2));
        FoundObstacle found = ObstaclesOf(sample).Should().ContainSingle().Subject;
        found.Devices.Should().Equal(3);
        found.Hops.Should().Be(3);
        found.Link.Should().Be((1, 3));
        found.LinksThatWouldDo.Should().Be(3, "the coordinator to 2 or to 3 would do as well");
    }

    private static IEnumerable<ProblemSample> Samples() => Enumerable.Range(0, Problems).Select(seed => ProblemSample.Random(seed, isCoarse: seed % 2 == 0));

    /// <summary>The pairs of nodes of which one passes frames on, the higher node first.</summary>
    private static IEnumerable<(int From, int To)> Pairs(ProblemSample sample) =>
        from a in Enumerable.Range(0, sample.NodeCount) from b in Enumerable.Range(0, a) where Relays(sample, a) || Relays(sample, b) select (a, b);

    private static ImmutableArray<FoundObstacle> ObstaclesOf(ProblemSample sample) =>
    [
        .. ObstacleFinder.Find([Situation.WithAllPower(sample.Problem())], RepeaterSolver.Solve(sample.Problem()).Undone),
    ];

    private static ProblemSample Row(ImmutableArray<bool> relays, int hopLimit, params ImmutableArray<((int A, int B) Ends, double MarginDb)> links)
    {
        double[,] margins = new double[relays.Length, relays.Length];
        for (int a = 0; a < relays.Length; a++)
            for (int b = 0; b < relays.Length; b++) margins[a, b] = -60;
        foreach (((int a, int b), double marginDb) in links) margins[a, b] = margins[b, a] = marginDb;
        return new(relays, 0, hopLimit, ProblemSample.DefaultDesignMarginDb, margins);
    }

    private static bool Relays(ProblemSample sample, int node) => node >= sample.Relays.Length || sample.Relays[node];

    private static ProblemSample Mended(ProblemSample sample, (int From, int To) link)
    {
        double[,] margins = (double[,])sample.MarginsDb.Clone();
        margins[link.From, link.To] = margins[link.To, link.From] = sample.DesignMarginDb;
        return sample with { MarginsDb = margins };
    }

    private static bool Serves(ProblemSample sample, ImmutableArray<int> devices) =>
        devices.All(device => ExhaustivePlacement.StrongestRoutesDb(sample, (1 << sample.OutletCount) - 1)[device] >= sample.DesignMarginDb);
}
