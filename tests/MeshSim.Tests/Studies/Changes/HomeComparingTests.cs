using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Studies;
using MeshSim.Studies.Changes;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Studies.Changes;

/// <summary>What is said about two homes before anything is computed.</summary>
public sealed class HomeComparingTests
{
    private static readonly Home Terrace = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "quay-terrace")).Home!;
    private static readonly Device Kettle = Terrace.Devices.Single(device => device.Id.Value == "kettle-plug");

    [Fact]
    public void A_device_moved_is_told_with_the_way_through_the_building()
    {
        Move move = CompareStudy.Changes(Terrace, With(Kettle with { Point = new(Kettle.Point.X + Lattice.FromMetres(3), Kettle.Point.Y), HeightMetres = Kettle.HeightMetres - 0.4 }))
            .Moved.Should().ContainSingle().Which;

        move.DistanceMetres.Should().BeApproximately(Math.Sqrt((3 * 3) + (0.4 * 0.4)), 1e-4, "positions are kept to a tenth of a millimetre");
        (move.Id, move.Before, move.After).Should().Be(("kettle-plug", "ground (3.2, 9.6) 1 m up", "ground (6.2, 9.6) 0.6 m up"));
    }

    [Fact]
    public void What_was_written_differently_is_told_by_the_names_of_the_columns()
    {
        Device changed = Kettle with { SwitchedBy = "kettle switch", Role = Role.EndDevice, TransmitPower = new(3.5), Before = "nothing", Name = "kettle" };

        CompareStudy.Changes(Terrace, With(changed)).Changed.Should().Equal(
            new("kettle-plug", "name", "plug of the kettle", "kettle"),
            new("kettle-plug", "role", "router", "end device"),
            new("kettle-plug", "switched_by", "", "kettle switch"),
            new("kettle-plug", "tx_dbm", "", "3.5"),
            new("kettle-plug", "before", "", "nothing"));
    }

    [Fact]
    public void Devices_and_outlets_come_and_go_the_other_way_round_when_the_homes_are_swapped()
    {
        Home less = Terrace with { Devices = Terrace.Devices.Remove(Kettle), Outlets = Terrace.Outlets.RemoveAt(0) };
        HomeChanges there = CompareStudy.Changes(Terrace, less), back = CompareStudy.Changes(less, Terrace);

        there.Gone.Should().Equal(back.Added).And.Equal(Kettle);
        there.OutletsGone.Should().Equal(back.OutletsAdded).And.Equal(Terrace.Outlets[0]);
        (there.Added.IsEmpty, there.OutletsAdded.IsEmpty, there.Any).Should().Be((true, true, true));
    }

    [Fact]
    public void Assumed_outlets_are_nobodys_change() =>
        CompareStudy.Changes(Terrace with { Outlets = [Terrace.Outlets[0] with { IsAssumed = true }] }, Terrace with { Outlets = [] }).Any.Should().BeFalse();

    [Fact]
    public void Settings_are_told_one_by_one()
    {
        Home after = Terrace with
        {
            Networks = Terrace.Networks.SetItem(0, Terrace.Networks[0] with { Channel = 26 }),
            States = [.. Terrace.States.RemoveAt(1).Select(state => state with { MustHold = false })],
            AccessPoints = [.. Terrace.AccessPoints.Select(point => point with { Busy = 0.75 })],
            Parameters = Terrace.Parameters with { Availability = 0.95, Detour = new(60) },
            Costs = Terrace.Costs with { HubMove = 5 },
            Circuits = [new("kitchen", "way 3")],
        };

        ImmutableArray<PropertyChange> changes = CompareStudy.Changes(Terrace, after).Settings;

        changes.Should().Contain(
        [
            new("", "availability", Terrace.Parameters.Availability.ToString(System.Globalization.CultureInfo.InvariantCulture), "0.95"),
            new("", "detour", "25", "60"),
            new("", "costs: hub move", "60", "5"),
            new("network plugs", "channel", Terrace.Networks[0].Channel.ToString(System.Globalization.CultureInfo.InvariantCulture), "26"),
            new("state away", "", "there", ""),
            new("state bedtime", "must hold", "true", ""),
            new("circuit kitchen", "", "", "there"),
        ]);
        changes.Should().Contain(change => change.Subject.StartsWith("access point ", StringComparison.Ordinal) && change.Property == "busy" && change.After == "0.75");
    }

    [Fact]
    public void What_readings_taught_is_a_change()
    {
        NetworkFit fit = new()
        {
            Model = ModelName.Detour,
            Readings = 12,
            Shadowing = new(4),
            Parameters = [new(FittedKind.Exponent, "", 2.25, 0.1, 12)],
            Correlations = [],
        };
        Home after = Terrace with { Networks = Terrace.Networks.SetItem(0, Terrace.Networks[0] with { Fit = fit }) };

        CompareStudy.Changes(Terrace, after).Settings.Should()
            .Equal(new PropertyChange("network plugs", "fit", "", "12 readings, exponent 2.25, scatter 4.0 dB, 0 corrections"));
    }

    [Fact]
    public void A_wall_written_from_its_other_end_is_the_same_wall()
    {
        Storey ground = Terrace.FloorPlan.Storeys[0];
        Wall[] plain = [.. ground.Walls.Where(wall => wall.Openings.IsEmpty)];
        Storey turned = ground with { Walls = [.. ground.Walls.Where(wall => !wall.Openings.IsEmpty), .. plain.Select(wall => wall with { Start = wall.End, End = wall.Start })] };

        CompareStudy.Changes(Terrace, On(turned)).Plan.Should().BeEmpty();
    }

    [Fact]
    public void Each_difference_of_the_building_is_named()
    {
        Storey ground = Terrace.FloorPlan.Storeys[0];
        Storey changed = ground with
        {
            Walls = [ground.Walls[0] with { Construction = new ConstructionName("brick-half") }, .. ground.Walls.Skip(1)],
            Rooms = [.. ground.Rooms.Skip(1)],
            Objects = [],
            CeilingMetres = ground.CeilingMetres + 0.1,
        };

        ImmutableArray<PlanChange> plan = CompareStudy.Changes(Terrace, On(changed)).Plan;

        plan.Select(change => change.Words)
            .Should().Equal("the room is gone", "the storey has other heights", "walls stand elsewhere or are built of something else", "objects are different");
        plan.Should().OnlyContain(change => !change.HidesTheMap);
    }

    [Fact]
    public void A_storey_of_one_home_alone_is_named()
    {
        StoreyName loft = new("loft");
        Home cottage = Terrace with
        {
            FloorPlan = new([.. Terrace.FloorPlan.Storeys.Take(2)]),
            Devices = [.. Terrace.Devices.Where(device => device.Storey != loft)],
            Outlets = [.. Terrace.Outlets.Where(outlet => outlet.Storey != loft)],
        };

        CompareStudy.Changes(Terrace, cottage).Plan.Should().Equal(new PlanChange("loft", "the storey is gone", true));
        CompareStudy.Changes(cottage, Terrace).Plan.Should().Equal(new PlanChange("loft", "the storey is new", true));
    }

    private static Home With(Device changed) => Terrace with { Devices = [.. Terrace.Devices.Select(device => device.Id == changed.Id ? changed : device)] };

    private static Home On(Storey ground) => Terrace with { FloorPlan = new([ground, .. Terrace.FloorPlan.Storeys.Skip(1)]) };
}
