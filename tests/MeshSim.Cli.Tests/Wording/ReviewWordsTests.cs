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

    private static string Sentence(NextBest next) => ReviewWords.Sites(
        Samples.Placement, PlacementReview.Nothing with { Sites = [new(Samples.Home.Outlets[0], new Decibels(1.5), next)], Zones = [new() { Spare = [], Parts = [] }] }).Single();
}
