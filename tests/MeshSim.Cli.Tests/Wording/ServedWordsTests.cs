using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class ServedWordsTests
{
    private static readonly UnservedDevice Shed = new(new("shed-sensor"), new(2.5), "outlet shed-wall");
    private static readonly UnservedDevice Lamp = Shed with { Device = new("lamp") };

    [Fact]
    public void Two_ways_one_and_none_are_counted_apart() =>
        ServedWords.Counts(Samples.Coverage, Samples.Placement with { Unserved = [Shed, Lamp with { Case = new(null, "plug") }] }, " then").Should().Be(
            "of 3 devices, 1 then has two reliable ways, 1 only one and 1 none");

    [Fact]
    public void Nobody_is_counted_twice() =>
        ServedWords.Counts(
            Samples.Coverage,
            Samples.Placement with { Unserved = [Shed, Shed with { Case = new(null, "plug") }, Shed with { Case = new("away", null) }], StatesHeld = ["away"] },
            "").Should().Be("of 3 devices, 2 have two reliable ways and 1 none; nobody else drops in away");

    [Fact]
    public void One_way_straight_to_the_coordinator_is_not_called_two()
    {
        NetworkCoverage straight = Samples.Coverage with { Devices = Samples.Coverage.Devices.SetItem(0, Samples.Coverage.Devices[0] with { DisjointRoutes = 1 }) };

        ServedWords.Counts(straight, Samples.Placement, "").Should().Be("every device has two reliable ways or one straight to stick");
        ServedWords.Counts(straight, Samples.Placement with { Unserved = [Shed with { Case = new(null, "lamp") }] }, "").Should().Be(
            "of 3 devices, 2 have two reliable ways or one straight to stick and 1 only one over others");
        ServedWords.Counts(straight with { Devices = straight.Devices[..1] }, Samples.Placement, "").Should().Be(
            "the only device has two reliable ways or one straight to stick");
    }

    [Fact]
    public void Where_one_way_is_asked_nobody_is_told_of_a_second() =>
        ServedWords.Counts(Samples.Coverage, Samples.Placement with { Unserved = [Shed], Goals = PlacementGoals.OneWayEveryday }, "").Should().Be(
            "of 3 devices, 2 have a reliable way and 1 none");

    [Fact]
    public void States_that_hold_and_states_that_do_not_are_told_apart() =>
        ServedWords.Counts(Samples.Coverage, Samples.Placement with { Unserved = [Lamp with { Case = new("away", null) }], StatesHeld = ["bedtime", "away"] }, "").Should().Be(
            "every device has two reliable ways; nobody drops in bedtime; without a way: 1 in away");

    [Fact]
    public void Who_hangs_on_the_same_is_named_together() =>
        ServedWords.Left(
            Samples.Coverage,
            Samples.Placement with { Unserved = [Lamp with { Case = new(null, "plug") }, Shed with { Case = new(null, "plug") }] }).Should().Equal(
            "Only one way: lamp and shed-sensor (hang on plug). Keep what they hang on powered.");

    [Fact]
    public void A_repeater_can_be_doubled_where_a_lamp_cannot() =>
        ServedWords.Left(Samples.Coverage, Samples.Placement with { Unserved = [Lamp with { Case = new(null, "the repeater at hall", IsRepeaterLost: true) }] }).Should().Equal(
            "Only one way: lamp (hangs on the repeater at hall). Keep what they hang on powered; a second repeater beside the first, in an outlet of its own, is a second way.");

    [Fact]
    public void A_device_that_hangs_on_each_of_two_names_both() =>
        ServedWords.Left(
            Samples.Coverage,
            Samples.Placement with { Unserved = [Lamp with { Case = new(null, "plug") }, Lamp with { Case = new(null, "fan") }] }).Should().Equal(
            "Only one way: lamp (hangs on plug and fan). Keep what they hang on powered.");

    [Fact]
    public void What_is_missing_in_a_state_says_what_it_lacks() =>
        ServedWords.Left(Samples.Coverage, Samples.Placement with { Unserved = [Lamp with { Case = new("away", null), Shortfall = null }] }).Should().Equal(
            "In away no way, whatever is plugged in: lamp (hears outlet shed-wall well, but the way would take too many hops).");

    [Fact]
    public void A_state_that_turns_the_coordinator_off_is_called_that() =>
        ServedWords.Left(
            Samples.Coverage,
            Samples.Placement with
            {
                CoordinatorOff = [new("blackout", PowerLoss.ByName, null, 0)],
                Unserved = [Lamp with { Case = new("blackout", null), Shortfall = null, IsCoordinatorOff = true }],
            }).Should().Equal("In blackout nobody can be served: coordinator stick has no power; the state turns it off by name. Only leaving it on helps.");
}
