using MeshSim.Cli.Wording;
using MeshSim.Devices;

namespace MeshSim.Cli.Tests.Wording;

public sealed class NameListTests
{
    [Theory]
    [InlineData(0, "")]
    [InlineData(1, "a0")]
    [InlineData(4, "a0, a1, a2, a3")]
    [InlineData(6, "a0, a1, a2, a3 and 2 more")]
    public void A_few_names_are_written_out_and_the_rest_counted(int count, string expected) =>
        NameList.Short([.. Enumerable.Range(0, count).Select(i => new DeviceId(FormattableString.Invariant($"a{i}")))]).Should().Be(expected);

    [Fact]
    public void Words_are_joined_as_in_speech()
    {
        NameList.Spoken([]).Should().BeEmpty();
        NameList.Spoken(["a"]).Should().Be("a");
        NameList.Spoken(["a", "b", "c"]).Should().Be("a, b and c");
    }
}
