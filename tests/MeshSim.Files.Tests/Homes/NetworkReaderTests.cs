using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Homes;

/// <summary>What is noticed about networks.</summary>
public sealed class NetworkReaderTests
{
    [Theory]
    [InlineData("channel: 20, ", "", "home.yaml(34,16): notice: the network \"plugs\" states no channel; 11 is assumed; its channels are 11 to 26")]
    [InlineData("region: EU", "region: US", "home.yaml(35,16): notice: the radio short-range-868 is made for EU, the home is in US; choose a radio of the region")]
    public void An_assumption_or_a_doubt_is_a_notice(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);
}
