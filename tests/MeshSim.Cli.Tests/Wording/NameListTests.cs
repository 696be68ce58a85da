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

    [Fact]
    public void A_dozen_names_are_spoken_in_full_and_more_are_counted()
    {
        string[] names = [.. Enumerable.Range(1, 13).Select(number => FormattableString.Invariant($"n{number}"))];
        NameList.SpokenShort(names[..12]).Should().Be(NameList.Spoken(names[..12])).And.EndWith("n11 and n12");
        NameList.SpokenShort(names).Should().Be("n1, n2, n3, n4 and 9 more");
    }
}
