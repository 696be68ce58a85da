using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class DarkWordsTests
{
    [Fact]
    public void Rooms_that_are_mostly_dark_are_named() =>
        DarkWords.Answer([Samples.Map]).Should().Be("Dark in more than half of the floor: <shed> & co (75.0 %).");

    [Fact]
    public void A_dark_corner_is_told_apart_from_a_dark_room() => Answer(0.5).Should().Be("No room is mostly dark; partly: hall (50.0 %).");

    [Fact]
    public void A_home_without_dark_spots_is_told_so() => Answer(0).Should().Be("No room is dark anywhere.");

    [Fact]
    public void Without_rooms_no_room_is_called_bright() =>
        DarkWords.Answer([Samples.Map with { Rooms = [] }]).Should().StartWith("No rooms are drawn").And.Contain("--out");

    private static string Answer(double share) => DarkWords.Answer(ImmutableArray.Create<MarginMap>(Samples.Map with { Rooms = [(new("hall"), share)] }));
}
