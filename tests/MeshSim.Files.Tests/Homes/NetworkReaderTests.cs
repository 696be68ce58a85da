using MeshSim.Devices;
using MeshSim.Files.Tests.Fixtures;

namespace MeshSim.Files.Tests.Homes;

/// <summary>What is noticed about networks.</summary>
public sealed class NetworkReaderTests
{
    [Theory]
    [InlineData("channel: 20, ", "", "home.yaml(34,16): notice: the network \"plugs\" states no channel; 11 is assumed; its channels are 11 to 26")]
    [InlineData("region: EU", "region: US", "home.yaml(35,16): notice: the radio short-range-868 is made for EU, the home is in US; choose a radio of the region")]
    [InlineData(
        "coordinator: receiver }",
        "coordinator: receiver, usb3 beside: true }",
        "home.yaml(35,84): notice: the radio short-range-868 sends at 868.3 MHz, where no noise of USB 3 is assumed; only 2400 to 2500 MHz is disturbed")]
    [InlineData(
        "coordinator: stick }",
        "coordinator: stick, lead: 1.5 }",
        "home.yaml(34,86): notice: a lead changes nothing without USB 3 storage beside the stick; write \"usb3 beside: true\" if there is some")]
    public void An_assumption_or_a_doubt_is_a_notice(string find, string replacement, params string[] said) =>
        ChangedSample.Says("home.yaml", find, replacement).Should().Equal(said);

    [Theory]
    [InlineData("lead: 11", "home.yaml(34,105): error: \"lead\" is 11; it must be 0 to 10 m")]
    [InlineData("leed: 1", "home.yaml(34,99): error: a network has no key \"leed\"; did you mean \"lead\"?")]
    public void A_lead_that_cannot_be_is_an_error(string lead, params string[] said) =>
        ChangedSample.Says("home.yaml", "coordinator: stick }", $"coordinator: stick, usb3 beside: true, {lead} }}").Should().Equal(said);

    [Fact]
    public void Storage_beside_the_stick_and_its_lead_arrive_and_are_written()
    {
        using TemporaryFolder folder = ChangedSample.Folder("home.yaml", "coordinator: stick }", "coordinator: stick, usb3 beside: true, lead: 1.5 }");
        Network network = folder.Read().Home!.Networks[0];
        (network.IsBesideUsb3, network.LeadMetres).Should().Be((true, 1.5));

        HomeWriter.Write(folder.Read().Home!, folder.File("copy"));
        HomeFolder.Read(folder.File("copy")).Home!.Networks[0].Should().Be(network);
    }
}
