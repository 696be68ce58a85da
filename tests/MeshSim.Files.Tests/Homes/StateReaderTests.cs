using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Homes;

/// <summary>What is said about the states of home.yaml.</summary>
public sealed class StateReaderTests
{
    private const string Bedtime = "- { state: bedtime, off: [lamp], circuits off: [kitchen], switches off: [bed switch], open: [kitchen door], must hold: true }";

    [Theory]
    [InlineData("- { state: bedtime, must hold: true }")]
    [InlineData("- { state: bedtime, off: [], circuits off: [] }")]
    public void A_state_that_changes_nothing_is_noticed(string state) =>
        ChangedSample.Says("home.yaml", Bedtime, state).Should().ContainSingle().Which.Should().EndWith(
            "notice: the state \"bedtime\" turns nothing off and opens nothing; that it holds says nothing: name what is off or open in it");

    [Theory]
    [InlineData("- { state: bedtime, open: [kitchen door] }")]
    [InlineData("- { state: bedtime, off: [lamp] }")]
    public void A_state_that_changes_one_thing_is_not(string state) => ChangedSample.Says("home.yaml", Bedtime, state).Should().BeEmpty();

    [Fact]
    public void What_cannot_be_read_is_an_error_and_no_notice() =>
        ChangedSample.Says("home.yaml", Bedtime, "- { state: bedtime, off: lamp }").Should().ContainSingle().Which.Should().Contain("error");
}
