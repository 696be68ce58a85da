using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class RepeaterWordsTests
{
    private static readonly UnservedDevice Far = new(new("shed-sensor"), new(2.5), "outlet shed-wall");

    [Fact]
    public void The_answer_names_the_outlet_the_gain_and_the_proof() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement).Should().Be(
            "Add 1 repeater: shed-wall (ground, <shed> & co, assumed outlet). Every device then has two reliable ways (fewer will not do; 1 outlet considered).");

    [Fact]
    public void One_way_is_not_called_two() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement with { Goals = PlacementGoals.OneWayEveryday }).Should().Contain("Every device then has a reliable way (fewer");

    [Fact]
    public void Without_a_proof_none_is_claimed() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement with { LowerBound = 0 }).Should().Contain("at least 0 are needed").And.NotContain("fewer will not do");

    [Fact]
    public void With_a_device_kept_powered_what_is_not_proven_is_the_cost()
    {
        RepeaterPlacement kept = Samples.Placement with { KeptOn = [new(new("lamp"), null, [], new(20), new(20))], Cost = 50, CostBound = 40 };
        RepeaterWords.Answer(Samples.Coverage, kept).Should().Contain("(cost 50; less is not ruled out, but less than 40 is; ").And.NotContain("are needed");
    }

    [Fact]
    public void Nothing_is_sold_to_a_home_that_is_fine() =>
        RepeaterWords.Answer(Samples.AllReached, Samples.Placement with { Repeaters = [], LowerBound = 0, StatesHeld = ["bedtime"] }).Should().Be(
            "No repeater is needed: every device has two reliable ways; nobody drops in bedtime.");

    [Fact]
    public void Not_possible_says_how_many_have_none_and_then_which_lacks_how_much() =>
        RepeaterWords.Whole(Samples.Coverage, Samples.Placement with { Repeaters = [], Unserved = [Far] }).Should().Be(
            "No choice of outlets helps (1 outlet considered): of 3 devices, 2 have two reliable ways and 1 none. "
            + "No way, whatever is plugged in: shed-sensor (lacks 2.5 dB even from outlet shed-wall).");

    [Fact]
    public void A_star_is_not_told_to_buy_what_cannot_help()
    {
        NetworkCoverage star = Samples.Coverage with { Network = Samples.Network with { Radio = Samples.Network.Radio with { Topology = Topology.Star } } };

        RepeaterWords.Whole(star, Samples.Placement with { Repeaters = [], Unserved = [Far] }).Should().StartWith("No repeater helps").And.EndWith("Move one or the other.");
    }

    [Fact]
    public void A_star_that_is_fine_has_no_ways_to_count()
    {
        NetworkCoverage star = Samples.AllReached with { Network = Samples.Network with { Radio = Samples.Network.Radio with { Topology = Topology.Star } } };

        RepeaterWords.Answer(star, Samples.Placement with { Repeaters = [], StatesHeld = ["bedtime"] }).Should().Be(
            "No repeater is needed: every device reaches stick itself; nobody drops in bedtime.");
    }

    [Fact]
    public void A_star_that_a_state_cuts_names_the_state()
    {
        NetworkCoverage star = Samples.AllReached with { Network = Samples.Network with { Radio = Samples.Network.Radio with { Topology = Topology.Star } } };

        RepeaterWords.Whole(star, Samples.Placement with { Repeaters = [], StatesHeld = ["bedtime"], Unserved = [Far with { Case = new("bedtime", null) }] }).Should().EndWith(
            "Move one or the other. In bedtime no way, whatever is plugged in: shed-sensor (lacks 2.5 dB even from outlet shed-wall).");
    }

    [Fact]
    public void Without_power_at_the_coordinator_that_is_what_is_said()
    {
        NetworkCoverage dark = Samples.Coverage with { State = new() { Name = "dark", DevicesOff = [Samples.Network.Coordinator] } };

        RepeaterWords.Whole(dark, RepeaterAdvice.WithoutCoordinator(dark.Home, Samples.Network, [new("shed-sensor")], dark.State)).Should().Be(
            "No repeater helps. In dark nobody can be served: coordinator stick has no power; the state turns it off by name. Only leaving it on helps.");
    }

    [Fact]
    public void A_state_that_takes_the_coordinator_is_named_once_and_not_device_by_device() =>
        RepeaterWords.Whole(
            Samples.AllReached,
            Samples.Placement with
            {
                Repeaters = [],
                LowerBound = 0,
                Goals = new() { HoldStates = true },
                StatesHeld = ["bedtime", "fuse"],
                CoordinatorOff = [new("fuse", PowerLoss.Circuit, "ring", 3)],
                Unserved = [Far with { Shortfall = null, Case = new("fuse", null), IsCoordinatorOff = true }],
            }).Should().EndWith(
            "In fuse nobody can be served: coordinator stick has no power while circuit ring is off. "
                + "What helps is moving it to another circuit (3 outlets have power then; see hub) or a backup supply for it.").And.NotContain(Far.Device.Value);

    [Theory]
    [InlineData(PowerLoss.Circuit, "ring", 0, "has no power while circuit ring is off. No outlet has power then: only a backup supply for it helps.")]
    [InlineData(PowerLoss.Circuit, "ring", 1, "to another circuit (1 outlet has power then; see hub) or a backup supply for it.")]
    [InlineData(
        PowerLoss.Switch,
        "hall switch",
        4,
        "has no power while hall switch is off. What helps is moving it to an outlet (4 outlets have power then; see hub), feeding it past the switch")]
    public void What_helps_depends_on_what_takes_the_power(PowerLoss cause, string source, int outlets, string words) =>
        CoordinatorWords.Of("stick", new("fuse", cause, source, outlets)).Should().StartWith("In fuse nobody can be served: coordinator stick").And.Contain(words);

    [Fact]
    public void A_repeater_says_for_whom_it_is_and_when()
    {
        PlacedRepeater repeater = Samples.Placement.Repeaters[0] with
        {
            ServesWhen =
            [
                new(new("bedtime", null), [new("door")]),
                new(new(null, "lamp"), [new("door")]),
                new(new(null, "plug"), [new("door")]),
                new(new(null, "plug"), [new("fan"), new("oven")]),
            ],
        };

        RepeaterWords.Purpose(repeater).Should().Be("for shed-sensor; for door in bedtime or when lamp or plug is off; for fan and oven when plug is off");
    }
}
