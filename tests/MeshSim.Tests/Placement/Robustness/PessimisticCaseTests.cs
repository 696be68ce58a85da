using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Mesh;
using MeshSim.Placement;
using MeshSim.Placement.Robustness;
using MeshSim.Quantities;
using MeshSim.Tests.Architecture;
using MeshSim.Tests.Placement.Zones;

namespace MeshSim.Tests.Placement.Robustness;

public sealed class PessimisticCaseTests
{
    [Fact]
    public void In_the_open_it_is_the_exponent_that_is_dearer()
    {
        // As computed o0 suffices alone; with an exponent of 2.3 the links of 100 m lack, and two repeaters make the way.
        Home home = PlacedHomes.Row(hopLimit: 5, deviceMetres: [200], outletMetres: [100, 50, 150]);
        (RepeaterPlacement placement, SurveyedPlacement surveyed) = PlacedHomes.Of(home, PlacementGoals.OneWayEveryday);
        placement.Repeaters.Select(repeater => repeater.Outlet.Id.Value).Should().Equal("o0");

        PessimisticPlacement pessimistic = PessimisticCase.Solve(surveyed);

        Home dearer = home with { Parameters = home.Parameters with { Exponent = home.Parameters.Exponent + MarginUncertainties.ExponentDeviation } };
        RepeaterPlacement then = PlacedHomes.Of(dearer, PlacementGoals.OneWayEveryday).Placement;
        pessimistic.Repeaters.Should().Equal(then.Repeaters.Select(repeater => repeater.Outlet));
        pessimistic.IsSame.Should().BeFalse();
        pessimistic.IsProven.Should().BeTrue();
        pessimistic.CostChange.Should().Be(then.Cost - placement.Cost);
        pessimistic.LostAsRecommended.Should().Equal(home.Devices[1].Id);
        pessimistic.Fails.Should().HaveCount(then.Unserved.Length);
    }

    [Fact]
    public void On_quay_terrace_each_margin_falls_by_one_deviation_of_everything()
    {
        Home home = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;
        (_, SurveyedPlacement surveyed) = PlacedHomes.Of(home, new() { Ways = 1 });
        PessimisticPlacement pessimistic = PessimisticCase.Solve(surveyed);

        // Plainly: every pair traced, one deviation of each unknown taken off, and the problem solved.
        MarginUncertainties uncertainties = new(home, home.Networks[0]);
        ImmutableArray<Situation> dearer = [.. surveyed.Survey.Situations.Zip(surveyed.Models, (situation, model) => situation with
        {
            Problem = new(
                situation.Problem.Relays, situation.Problem.Coordinator, situation.Problem.OutletCount, situation.Problem.HopLimit, situation.Problem.DesignMargin,
                (a, b) => situation.Problem.Margin(a, b) - new Decibels(uncertainties
                    .SlopesOf(model.Between(surveyed.PlaceOf(a), surveyed.PlaceOf(b)), surveyed.MountingsOf(a, b)).Sum(slope => slope.Slope * slope.Deviation))),
        })];
        RepeaterSolution solution = RepeaterSolver.Solve(dearer, 1, surveyed.Survey.CostsOf(home.Costs));
        pessimistic.Repeaters.Should().Equal(surveyed.Survey.OutletsOf(solution.Outlets));
        pessimistic.Fails.Length.Should().Be(solution.Unservable.Length + solution.Unmet.Length);
    }
}
