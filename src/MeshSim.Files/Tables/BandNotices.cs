using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Files.Tables;

/// <summary>Notices about radios that the region's band limits do not admit. The law in force decides, not this table.</summary>
internal static class BandNotices
{
    private const string Help = "check the law in force; docs and datasets/band-limits.csv say where the limits come from";

    /// <summary>Says when the radio of a network, at its own power, is meant for another region or above its limit.</summary>
    public static void OfNetwork(SourcePlace place, NetworkDocument network, HomeDocument home, DiagnosticList problems)
    {
        if (network.Radio is not { } radio || home.Region.Length == 0) return;
        if (radio.Region is { } region && region != home.Region)
            problems.Notice(
                place,
                $"the radio {radio.Name} is made for {region}, the home is in {home.Region}",
                "choose a radio of the region");
        else
            Say(place, $"the radio {radio.Name}", radio.TransmitPower, network, home, problems);
    }

    /// <summary>Says when the power that a device states is above its limit.</summary>
    public static void OfDevice(SourcePlace place, Device device, NetworkDocument network, HomeDocument home, DiagnosticList problems)
    {
        if (network.Radio is not { } radio || device.TransmitPower is not { } power || home.Region.Length == 0) return;
        if (radio.Region is not { } region || region == home.Region) Say(place, KnownNames.Quote(device.Id.Value), power, network, home, problems);
    }

    private static void Say(
        SourcePlace place,
        string what,
        PowerLevel power,
        NetworkDocument network,
        HomeDocument home,
        DiagnosticList problems)
    {
        Frequency carrier = network.Radio!.Carrier(network.Channel);
        BandVerdict verdict = BandCheck.Of(network.Radio, carrier, power, Catalogues.BandLimits.Where(limit => limit.Region == home.Region));
        if (verdict.IsAdmitted) return;
        string message = verdict.Row is null
            ? $"{what} sends at {carrier}, in no band of {home.Region}"
            : $"{what} sends at {power}, {verdict.Excess} above the limit of {home.Region} at {carrier}";
        problems.Notice(place, message, Help);
    }
}
