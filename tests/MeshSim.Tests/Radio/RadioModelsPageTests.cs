using MeshSim.Quantities;
using MeshSim.Radio;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Radio;

/// <summary>Keeps docs/models-radio.md to the four parts of a model and to the ranges that the guards use.</summary>
public sealed class RadioModelsPageTests
{
    private static readonly string[] Parts = ["**Formula.**", "**Symbols.**", "**Range.**", "**Outside.**"];
    private static readonly string[] Sections = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "models-radio.md")).Split("\n## ")[1..];

    private static readonly Dictionary<string, ValidRange[]> Ranges = new()
    {
        ["Bit error rate, O-QPSK"] = [BitErrorRate.Ratio],
        ["Bit error rate, FSK and BPSK"] = [BitErrorRate.Ratio],
        ["Bit error rate, on-off keying"] = [BitErrorRate.Ratio],
        ["Packet error rate and required level"] = [PacketErrorRate.Octets, PacketErrorRate.Target, ThermalNoise.BandwidthKilohertz],
        ["Delivery ratio"] = [DeliveryRatio.ShadowingDb],
        ["Margins"] = [FadingMargin.Availability, FadingMargin.ShadowingDb, FadingMargin.SteadyToScatteredDb],
        ["Airtime"] = [PacketErrorRate.Octets, Airtime.DutyCycle],
        ["Duty cycle"] = [DutyBudget.PollSeconds],
        ["Wi-Fi in a channel"] = [WifiOverlap.DisturbedMegahertz],
        ["Required level among interference"] = [Reception.Busy],
        ["Noise of a shared hub"] = [SharedHubNoise.LeadMetres, SharedHubNoise.DisturbedMegahertz],
        ["Attempts"] = [DeliveryRatio.ShadowingDb],
        ["Hop time"] = [BackOff.Busy, PacketErrorRate.Octets],
        ["Power limits"] = [RadiatedPower.FieldMicrovoltsPerMetre, RadiatedPower.DistanceMetres],
        ["Mounting loss"] = [],
    };

    [Fact]
    public void Every_model_has_its_four_parts_in_order()
    {
        Sections.Select(section => section.Split('\n')[0]).Should().Equal(Ranges.Keys);
        foreach (string section in Sections)
            Parts.Select(part => section.IndexOf(part, StringComparison.Ordinal)).Should().BeInAscendingOrder().And.OnlyContain(index => index > 0);
    }

    [Fact]
    public void The_ranges_are_those_of_the_guards()
    {
        foreach (string section in Sections)
        {
            string range = section[section.IndexOf("**Range.**", StringComparison.Ordinal)..section.IndexOf("**Outside.**", StringComparison.Ordinal)]
                .Replace('\n', ' ').Replace('−', '-');
            foreach (ValidRange guard in Ranges[section.Split('\n')[0]])
                range.Should().Contain(guard.ToString());
        }
    }
}
