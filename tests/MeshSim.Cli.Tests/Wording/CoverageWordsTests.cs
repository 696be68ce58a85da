using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Mesh;
using MeshSim.Studies;

namespace MeshSim.Cli.Tests.Wording;

public sealed class CoverageWordsTests
{
    [Fact]
    public void The_answer_counts_and_names_the_unreachable_and_says_what_they_lack() =>
        CoverageWords.Answer(Samples.Coverage).Should().Be("1 of 3 devices has no reliable way to stick: shed-sensor (lacks 3.2 dB to lamp).");

    [Fact]
    public void When_all_are_reached_the_answer_says_so() =>
        CoverageWords.Answer(Samples.AllReached).Should().Be("All 2 devices have a reliable way to stick.");

    [Fact]
    public void What_is_below_the_design_margin_has_the_same_name_in_every_answer()
    {
        RoutesTable.Of(Samples.Coverage).Rows[0][1].Should().StartWith(CoverageWords.NoReliableWay);
        CoverageWords.Answer(Samples.Coverage).Should().Contain(CoverageWords.NoReliableWay);
        RepeaterWords.Answer(Samples.Coverage, Samples.Placement).Should().Contain("then has two reliable ways");
    }

    [Fact]
    public void A_coordinator_alone_is_no_success() =>
        CoverageWords.Answer(Samples.Coverage with { Devices = [] }).Should().Contain("alone");

    [Fact]
    public void A_device_that_only_hops_keep_out_lacks_no_level()
    {
        DeviceReach reach = Samples.Coverage.Devices[2] with { NearestLink = Samples.Link(new("lamp"), new("shed-sensor"), 9) };

        Shortfall.Of(Samples.Coverage, reach).Should().BeNull();
        Shortfall.InWords(Samples.Coverage, reach).Should().Be("hears lamp, but the way would take more than 4 hops");
    }

    [Fact]
    public void A_device_without_any_neighbour_hears_nobody() =>
        Shortfall.InWords(Samples.Coverage, Samples.Coverage.Devices[2] with { NearestLink = null }).Should().Be("has nobody to hear");

    [Fact]
    public void Where_the_coordinator_is_off_that_is_what_is_said()
    {
        NetworkCoverage dark = Samples.Coverage with { State = new() { Name = "dark", DevicesOff = [Samples.Network.Coordinator] } };

        Shortfall.InWords(dark, Samples.Coverage.Devices[2] with { NearestLink = null }).Should().Be("coordinator stick is off");
        CoverageWords.Answer(dark).Should().Be("Coordinator stick is off in state dark, so none of 3 devices that are on has a way to it.");
        CoverageWords.Answer(dark with { Devices = dark.Devices[..1] }).Should().Be("Coordinator stick is off in state dark, so the only device that is on does not have a way to it.");
    }

    [Fact]
    public void The_basis_names_network_carrier_model_margin_and_state()
    {
        NetworkCoverage atNight = Samples.Coverage with { State = new() { Name = "bedtime" } };

        CoverageWords.Basis(atNight).Should().Be("Network plugs, 2440 MHz, model log-distance, design margin 6.4 dB, state bedtime");
    }
}
