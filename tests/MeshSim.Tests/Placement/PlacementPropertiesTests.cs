using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Tests.Placement;

/// <summary>
/// What must hold of every answer. A device that cannot be served is not paid for, so each statement about cost compares answers that
/// leave the same undone, and another says that a harder question leaves no less undone.
/// </summary>
public sealed class PlacementPropertiesTests
{
    private const int Homes = 40;
    private const double ThickWallLossDb = 12;
    private static readonly Decibels Tighter = new(1.5);

    [Fact]
    public void An_outlet_more_never_raises_the_optimum() =>
        SurvivalSample.Any.Sample(sample => IsNoHarder((sample with { Ways = 1 }).Solve(), (sample with { Ways = 1 }).WithoutLastOutlet().Solve()));

    [Fact]
    public void An_end_device_more_never_lowers_the_optimum() =>
        Gen.Select(SurvivalSample.Any, Gen.Int[1, 7]).Sample((sample, number) =>
        {
            int device = 1 + (number % (sample.Everyday.Relays.Length - 1));
            SurvivalSample asked = With(sample, problem => problem with { Relays = problem.Relays.SetItem(device, false) });
            RepeaterSolution more = asked.Solve(), fewer = Without(asked, device).Solve();
            more.Outlets.Length.Should().BeGreaterThanOrEqualTo(fewer.Outlets.Length);
            more.Unservable.Length.Should().BeGreaterThanOrEqualTo(fewer.Unservable.Length);
            more.Unmet.Length.Should().BeGreaterThanOrEqualTo(fewer.Unmet.Length);
        });

    [Fact]
    public void A_router_more_may_lower_the_optimum_because_it_passes_frames_on()
    {
        // 0 hears 1 and the outlet 3; both hear the end device 2. Without 1 a repeater is needed.
        double[,] margins = { { 9, 9, -9, 9 }, { 9, 9, 9, -9 }, { -9, 9, 9, 9 }, { 9, -9, 9, 9 } };
        SurvivalSample withRouter = new([new([true, true, false], 1, 3, ProblemSample.DefaultDesignMarginDb, margins)], [[]], Ways: 1);
        withRouter.Solve().Outlets.Should().BeEmpty();
        Without(withRouter, 1).Solve().Outlets.Should().Equal(0);
    }

    [Fact]
    public void A_tighter_margin_never_lowers_the_optimum() =>
        SurvivalSample.Any.Sample(sample =>
            IsNoHarder(sample.Solve(), With(sample, problem => problem with { DesignMarginDb = problem.DesignMarginDb + Tighter.Value }).Solve()));

    [Fact]
    public void Thicker_walls_never_lower_the_optimum()
    {
        int harder = 0;
        for (int seed = 0; seed < Homes; seed++)
        {
            Home home = RandomHomes.Of(seed);
            RepeaterSolution thin = SolutionOf(home), thick = SolutionOf(WithThickerWalls(home));
            IsNoHarder(thin, thick);
            harder += thick.Outlets.Length > thin.Outlets.Length || thick.Unservable.Length > thin.Unservable.Length ? 1 : 0;
        }

        harder.Should().BeGreaterThan(Homes / 4, "the walls must matter");
    }

    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    public async Task The_answer_is_the_same_whether_one_or_several_ask(int threads)
    {
        PlacementGoals goals = PlacementGoals.Default;
        Home[] homes = [.. Enumerable.Range(0, threads).Select(HeldHomes.Of)];
        string[] alone = [.. homes.Select(home => Told(home, goals))];
        Task<string>[] together = [.. homes.Select(home => Task.Factory.StartNew(
            () => Told(home, goals), TestContext.Current.CancellationToken, TaskCreationOptions.LongRunning, TaskScheduler.Default))];
        (await Task.WhenAll(together)).Should().Equal(alone);
    }

    [Fact]
    public void The_ladder_never_falls() =>
        Gen.Int[0, int.MaxValue].Sample(seed =>
        {
            ImmutableArray<Rung> rungs = LadderSample.Random(seed).Climb();
            rungs.Select(rung => rung.Best).Should().BeInAscendingOrder();
            rungs.Select(rung => rung.NestedBest).Should().BeInAscendingOrder();
        });

    private static void IsNoHarder(RepeaterSolution easier, RepeaterSolution harder)
    {
        easier.Unservable.Should().BeSubsetOf(harder.Unservable);
        if (easier.Unservable.SequenceEqual(harder.Unservable) && easier.Unmet.SequenceEqual(harder.Unmet))
            easier.Cost.Should().BeLessThanOrEqualTo(harder.Cost);
    }

    private static SurvivalSample With(SurvivalSample sample, Func<ProblemSample, ProblemSample> change) =>
        sample with { Situations = [.. sample.Situations.Select(change)] };

    /// <summary>The same without a device, which is not the coordinator.</summary>
    private static SurvivalSample Without(SurvivalSample sample, int device)
    {
        SurvivalSample fewer = With(sample, problem =>
        {
            int[] old = [.. Enumerable.Range(0, problem.NodeCount).Where(node => node != device)];
            double[,] margins = new double[old.Length, old.Length];
            for (int a = 0; a < old.Length; a++)
                for (int b = 0; b < old.Length; b++) margins[a, b] = problem.MarginsDb[old[a], old[b]];
            return problem with { Relays = problem.Relays.RemoveAt(device), MarginsDb = margins };
        });
        return fewer with { Off = [.. sample.Off.Select(off => off.Remove(device).Select(node => node > device ? node - 1 : node).ToImmutableArray())] };
    }

    private static Home WithThickerWalls(Home home) => home with
    {
        Constructions = home.Constructions.ToImmutableDictionary(
            pair => pair.Key,
            pair => pair.Value with { Stated = [.. pair.Value.Stated.Select(stated => stated with { Loss = stated.Loss + new Decibels(ThickWallLossDb) })] }),
    };

    private static RepeaterSolution SolutionOf(Home home)
    {
        Network network = home.Networks[0];
        RepeaterSurvey survey = RepeaterSurvey.Of(home, network, new StateGraphs(home, network, new StudyOptions().Model), everyday: null, []);
        return RepeaterSolver.Solve(survey.Situations, ways: 1);
    }

    private static string Told(Home home, PlacementGoals goals)
    {
        RepeaterPlacement placement = CoverageStudy.Repeaters(CoverageStudy.Run(home, home.Networks[0], new()), new() { Goals = goals });
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{string.Join(' ', placement.Repeaters.Select(repeater => repeater.Outlet.Id))} {string.Join(' ', placement.KeptOn)} {placement.Cost} "
                + $"{placement.CostBound} {string.Join(' ', placement.Unserved)}");
    }
}
