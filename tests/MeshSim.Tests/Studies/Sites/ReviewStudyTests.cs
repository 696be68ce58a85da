using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Mesh.Outages;
using MeshSim.Placement;
using MeshSim.Propagation.Fields;
using MeshSim.Studies;
using MeshSim.Studies.Sites;
using MeshSim.Tests.Architecture;
using MeshSim.Tests.Mesh;
using MeshSim.Tests.Placement;
using MeshSim.Tests.Placement.Zones;

namespace MeshSim.Tests.Studies.Sites;

/// <summary>Zones against a house in which a repeater really stands at the point, and everything is rehearsed: rehearsal knows nothing of zones.</summary>
public sealed class ReviewStudyTests
{
    private const int Homes = 60, PointsPerZone = 12;

    /// <summary>A field may differ from the path by half a step of angle at each wall; nearer to the edge than this a point is not asked.</summary>
    private const double EdgeDb = 0.3;

    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;

    [Fact]
    public void In_random_homes_a_point_is_in_the_zone_exactly_when_a_repeater_there_loses_nobody()
    {
        (int inside, int outside) = (0, 0);
        for (int seed = 0; seed < Homes; seed++)
            Compare(HeldHomes.Of(seed), new() { Ways = 1 + (seed % 2) }, seed, ref inside, ref outside);
        new[] { inside, outside }.Should().OnlyContain(count => count > Homes);
    }

    [Fact]
    public void On_quay_terrace_a_point_is_in_the_zone_exactly_when_a_repeater_there_loses_nobody()
    {
        (int inside, int outside) = (0, 0);
        Compare(Terrace, new() { Ways = 1 }, 1, ref inside, ref outside);
        new[] { inside, outside }.Should().OnlyContain(count => count >= 5);
    }

    [Fact]
    public void On_quay_terrace_the_hub_can_stand_exactly_where_moving_it_loses_nobody()
    {
        PlacementGoals goals = new() { Ways = 1 };
        StudyOptions options = new() { Goals = goals };
        HubPlacement hub = HubStudy.Run(Terrace, Terrace.Networks, [], options);
        SiteZone zone = ReviewStudy.Hub(Terrace, hub, options, new() { Draws = 0 })!.Zone;
        (int inside, int outside) = (0, 0);
        foreach ((Position place, StoreySpare at) in Samples(zone, Terrace, new Random(5), 40))
        {
            Outlet spot = At(Terrace, at, place, null, 0.6);
            Home moved = FollowedAdvice.With(Terrace, hub with { Sites = [hub.Best with { Outlet = spot }] });
            bool holds = Terrace.Networks.All(network => Lost(Rehearse(moved, network, options), hasLosses: false, spot).IsSubsetOf(
                Lost(Rehearse(FollowedAdvice.With(Terrace, hub), network, options), hasLosses: false, spot)));
            holds.Should().Be(at.SpareDb >= 0, "{0} has {1} dB to spare", place, at.SpareDb);
            if (holds) inside++;
            else outside++;
        }

        new[] { inside, outside }.Should().OnlyContain(count => count > 3);
    }

    [Fact]
    public void The_outlet_itself_has_to_spare_in_the_zone_what_its_standing_says()
    {
        (RepeaterPlacement placement, _) = PlacedHomes.Of(Terrace, new() { Ways = 1 });
        NetworkCoverage coverage = CoverageStudy.Run(Terrace, Terrace.Networks[0], new());
        PlacementReview review = ReviewStudy.Repeaters(coverage, placement, new() { Draws = 0 });
        review.Chances.Should().BeNull();
        foreach ((SiteZone zone, PlacedRepeater repeater, int index) in review.Zones.Zip(placement.Repeaters, Enumerable.Range(0, 9)))
        {
            Outlet outlet = repeater.Outlet;
            Field field = zone.Spare.Single(field => field.Grid.Storey == outlet.Storey);
            int column = (int)Math.Round((outlet.Point.X - field.Grid.Origin.X) / (double)field.Grid.Step);
            int row = (int)Math.Round((outlet.Point.Y - field.Grid.Origin.Y) / (double)field.Grid.Step);
            if (field.Grid.At(column, row).Plan == outlet.Point) ((double)field[column, row]).Should().BeApproximately(review.Sites[index].Spare!.Value.Value, EdgeDb);
            zone.Parts.Should().Contain(part => part.Room == outlet.Room && part.Share > 0 && part.Share <= 1);
            zone.AreaSquareMetres.Should().BePositive();
        }
    }

    [Fact]
    public void A_hub_has_to_spare_and_needs_in_the_pessimistic_case_what_a_review_finds_once_it_is_there()
    {
        StudyOptions options = new() { Goals = new() { HoldStates = true, Ways = 2 } };
        HubPlacement hub = HubStudy.Run(Terrace, [Terrace.Networks[0]], [], options);
        HubReview review = ReviewStudy.Hub(Terrace, hub, options, new() { Draws = 0 })!;
        Outlet outlet = hub.Best.Outlet!;
        Home moved = FollowedAdvice.WithHubAt(Terrace, hub.Networks, outlet);
        review.Spare!.Value.Value.Should().Be(review.Networks.Min(network => network.Spare!.Value.Value)).And.BeGreaterThan(0);
        Field field = review.Zone.Spare.Single(field => field.Grid.Storey == outlet.Storey);
        int column = (int)Math.Round((outlet.Point.X - field.Grid.Origin.X) / (double)field.Grid.Step);
        int row = (int)Math.Round((outlet.Point.Y - field.Grid.Origin.Y) / (double)field.Grid.Step);
        if (field.Grid.At(column, row).Plan == outlet.Point) ((double)field[column, row]).Should().BeApproximately(review.Spare.Value.Value, EdgeDb);
        HubNetworkReview network = review.Networks.Single();
        network.Chances.Should().BeNull();
        NetworkCoverage coverage = CoverageStudy.Run(moved, moved.Networks[0], options);
        PlacementReview there = ReviewStudy.Repeaters(coverage, CoverageStudy.Repeaters(coverage, options), new() { Draws = 0 });
        network.Pessimistic.Should().BeEquivalentTo(there.Pessimistic!);
    }

    [Fact]
    public void Where_nothing_is_recommended_there_is_nothing_to_review()
    {
        Network lighting = Terrace.Networks.First(network => network.Name.Value == "lighting");
        NetworkCoverage coverage = CoverageStudy.Run(Terrace, lighting, new());
        ReviewStudy.Repeaters(coverage, CoverageStudy.Repeaters(coverage, new()), new()).Should().Be(PlacementReview.Nothing);
    }

    private readonly record struct StoreySpare(FieldGrid Grid, float SpareDb);

    private static void Compare(Home home, PlacementGoals goals, int seed, ref int inside, ref int outside)
    {
        StudyOptions options = new() { Goals = goals };
        Network network = home.Networks[0];
        NetworkCoverage coverage = CoverageStudy.Run(home, network, options);
        RepeaterPlacement placement = CoverageStudy.Repeaters(coverage, options);
        PlacementReview review = ReviewStudy.Repeaters(coverage, placement, new() { Draws = 0 });
        foreach ((SiteZone zone, PlacedRepeater repeater) in review.Zones.Zip(placement.Repeaters))
        {
            var before = Lost(Rehearse(Applied(home, placement), network, options), goals.Ways > 1, repeater.Outlet);
            foreach ((Position place, StoreySpare at) in Samples(zone, home, new Random(seed), PointsPerZone))
            {
                PlacedRepeater moved = repeater with { Outlet = At(home, at, place, repeater.Outlet.Circuit, repeater.Outlet.HeightMetres) };
                Home there = Applied(home, placement with { Repeaters = placement.Repeaters.Replace(repeater, moved) });
                bool holds = Lost(Rehearse(there, network, options), goals.Ways > 1, moved.Outlet).IsSubsetOf(before);
                holds.Should().Be(at.SpareDb >= 0, "seed {0}: {1} has {2} dB to spare", seed, place, at.SpareDb);
                if (holds) inside++;
                else outside++;
            }
        }
    }

    private static IEnumerable<(Position Place, StoreySpare At)> Samples(SiteZone zone, Home home, Random random, int count)
    {
        (Position, StoreySpare)[] all =
        [
            .. from field in zone.Spare
               from point in Enumerable.Range(0, field.Values.Length)
               let spareDb = field.Values[point]
               where !float.IsNaN(spareDb) && !(Math.Abs(spareDb) < EdgeDb)
               select (field.Grid.At(point % field.Grid.Columns, point / field.Grid.Columns), new StoreySpare(field.Grid, spareDb)),
        ];
        ILookup<bool, (Position, StoreySpare)> sides = all.ToLookup(entry => entry.Item2.SpareDb >= 0);
        return new[] { true, false }.SelectMany(side => sides[side].OrderBy(_ => random.Next()).Take(count / 2));
    }

    private static Outlet At(Home home, StoreySpare at, Position place, string? circuit, double heightMetres) =>
        new() { Id = new("spot"), Storey = at.Grid.Storey, Point = place.Plan, HeightMetres = heightMetres, Circuit = circuit };

    /// <summary>Random homes call a mounting "surface" that costs something; a repeater has nothing in front of it.</summary>
    private static Home Applied(Home home, RepeaterPlacement placement)
    {
        Home applied = FollowedAdvice.With(home, [placement]);
        return applied with { Devices = [.. applied.Devices.Select(device => device.Kind == "repeater" ? device with { Mounting = MeshSamples.Surface } : device)] };
    }

    private static NetworkRehearsal Rehearse(Home home, Network network, StudyOptions options) =>
        ResilienceStudy.Rehearse(home, home.Networks.First(other => other.Name == network.Name), options, new() { Draws = 0 });

    /// <summary>Which devices of the home are out of reach everyday, in states that must hold, and when a router other than the one at an outlet is off.</summary>
    private static HashSet<(string Case, DeviceId Device)> Lost(NetworkRehearsal rehearsal, bool hasLosses, Outlet except)
    {
        HashSet<DeviceId> devices = [.. rehearsal.Coverage.Home.Devices.Where(device => device.Kind != "repeater").Select(device => device.Id)];
        DeviceId[] dark = [.. rehearsal.Coverage.Devices.Where(reach => !reach.IsReached).Select(reach => reach.Device)];
        IEnumerable<Rehearsal> counted = rehearsal.Rehearsals.Where(outage =>
            outage.Outage.MustHold || (hasLosses && outage.Outage.Kind == OutageKind.Router && outage.Outage.Name != $"repeater-{except.Id}"));
        return
        [
            .. dark.Where(devices.Contains).Select(device => ("", device)),
            .. from outage in counted
               from device in outage.Dropped.Concat(dark)
               where devices.Contains(device)
               select (outage.Outage.Name, device),
        ];
    }
}
