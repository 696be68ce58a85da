using MeshSim.Cli.Wording;
using MeshSim.Placement;
using MeshSim.Placement.Zones;
using MeshSim.Quantities;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Tests.Wording;

public sealed class ReviewWordsTests
{
    private static readonly UnservedDevice Shed = new(new("shed-sensor"), new(2.5), "plug");
    private static readonly UnservedDevice Lamp = Shed with { Device = new("lamp"), Case = new(null, "plug") };

    [Fact]
    public void Without_a_way_and_without_all_that_is_asked_are_told_apart() =>
        Sentence(new() { Repeaters = Samples.Home.Outlets, KeptOn = [], CostChange = 0, Fails = [Shed, Shed with { Case = new("away", null) }, Lamp] }).Should().EndWith(
            "and leaves shed-sensor without a way and lamp without all that is asked.");

    [Fact]
    public void Where_everybody_keeps_a_way_nobody_is_said_to_have_none() =>
        Sentence(new() { Repeaters = Samples.Home.Outlets, KeptOn = [], CostChange = 0, Fails = [Lamp] }).Should().EndWith("and leaves lamp without all that is asked.");

    [Fact]
    public void What_the_rest_alone_comes_to_is_told_and_who_lacks_something_then()
    {
        NextBest rest = new() { Repeaters = [], KeptOn = [new("lamp")], CostChange = -20, Fails = [Shed] };
        RepeaterPlacement kept = Samples.Placement with { KeptOn = [new(new("lamp"), null, [], new(20), new(20))] };
        Sentence(rest, kept).Should().EndWith(
            "No other outlet takes its place: the best without it is the rest alone, cost 20 less, and leaves shed-sensor without a way.");
        Sentence(rest with { KeptOn = [] }).Should().EndWith(
            "No other outlet takes its place: the best without it is no repeater, cost 20 less, and leaves shed-sensor without a way.");
    }

    private static string Sentence(NextBest next, RepeaterPlacement? placement = null) => ReviewWords.Sites(
        placement ?? Samples.Placement,
        PlacementReview.Nothing with { Sites = [new(Samples.Home.Outlets[0], new Decibels(1.5), next)], Zones = [new() { Spare = [], Parts = [] }] }).Single();
}
