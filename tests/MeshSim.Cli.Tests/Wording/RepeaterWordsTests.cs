using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Radio;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class RepeaterWordsTests
{
    private static readonly UnservedDevice Far = new(new("shed-sensor"), new(2.5), "outlet shed-wall");
    private static readonly PlacementGoals Kept = PlacementGoals.Default;

    [Fact]
    public void The_answer_names_the_outlet_the_gain_and_the_proof() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement).Should().Be(
            "Add 1 repeater: shed-wall (ground, <shed> & co, assumed outlet). Every device then has a reliable way (fewer will not do; 1 outlet considered).");

    [Fact]
    public void Without_a_proof_none_is_claimed() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement with { LowerBound = 0 }).Should().Contain("at least 0 are needed").And.NotContain("fewer will not do");

    [Fact]
    public void Nothing_is_sold_to_a_home_that_is_fine() =>
        RepeaterWords.Answer(Samples.AllReached, Samples.Placement with { Repeaters = [], LowerBound = 0 }).Should().StartWith("No repeater is needed");

    [Fact]
    public void Not_possible_says_which_device_lacks_how_much() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement with { Repeaters = [], Unserved = [Far] }).Should().Be(
            "No choice of outlets helps (1 outlet considered): shed-sensor (lacks 2.5 dB even from outlet shed-wall).");

    [Fact]
    public void A_star_is_not_told_to_buy_what_cannot_help()
    {
        NetworkCoverage star = Samples.Coverage with { Network = Samples.Network with { Radio = Samples.Network.Radio with { Topology = Topology.Star } } };

        RepeaterWords.Answer(star, Samples.Placement with { Repeaters = [], Unserved = [Far] }).Should().StartWith("No repeater helps").And.Contain("stick");
    }

    [Fact]
    public void Without_power_at_the_coordinator_that_is_what_is_said()
    {
        NetworkCoverage dark = Samples.Coverage with { State = new() { Name = "dark", DevicesOff = [Samples.Network.Coordinator] } };

        RepeaterWords.Answer(dark, RepeaterAdvice.WithoutCoordinator(Samples.Network, [new("shed-sensor")])).Should().Be("No repeater helps while stick has no power.");
    }

    [Fact]
    public void A_partial_answer_names_what_stays_out() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement with { Unserved = [Far with { Shortfall = null }] })
            .Should().EndWith("No outlet serves: shed-sensor (hears outlet shed-wall well, but the way would take too many hops).");

    [Fact]
    public void What_keeps_working_is_said_beside_the_gain() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement with { Goals = Kept, StatesHeld = ["bedtime", "away"] }).Should().Contain(
            "Every device then has a reliable way, also in bedtime and away and with any one router or repeater off (fewer will not do");

    [Fact]
    public void That_no_state_must_hold_is_said_when_states_are_to_hold() =>
        RepeaterWords.Answer(Samples.AllReached, Samples.Placement with { Repeaters = [], LowerBound = 0, Goals = new() { Ways = 1 } }).Should().Be(
            "No repeater is needed: every device has a reliable way already, and no other state is marked that must hold.");

    [Fact]
    public void What_cannot_be_kept_says_when() =>
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement with { Goals = Kept, Unserved = [Far with { Case = new(null, "plug") }, Far with { Case = new("away", null) }] })
            .Should().EndWith("No outlet serves: shed-sensor when plug is off (lacks 2.5 dB even from outlet shed-wall), "
                + "shed-sensor in away (lacks 2.5 dB even from outlet shed-wall).");
}
