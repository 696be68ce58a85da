using MeshSim.Cli.Wording;
using MeshSim.Placement;

namespace MeshSim.Cli.Tests.Wording;

public sealed class GoalWordsTests
{
    [Fact]
    public void The_default_asks_for_two_ways_and_for_states() =>
        GoalWords.Asked(PlacementGoals.Default, ["bedtime", "away"]).Should().Be(
            "Asked for: two ways to each device (one is left when any one router or repeater is off), and a way in bedtime and away");

    [Fact]
    public void That_no_state_must_hold_is_said() =>
        GoalWords.Asked(PlacementGoals.Default with { Ways = 1 }, []).Should().Be("Asked for: a way to each device; no other state is marked that must hold");

    [Fact]
    public void That_states_are_left_out_is_said() =>
        GoalWords.Asked(PlacementGoals.OneWayEveryday, []).Should().Be("Asked for: a way to each device, everyday alone");
}
