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

    /// <summary>Says when the powers that devices of a network state are above its limit: one notice for all of them.</summary>
    /// <param name="stated">Devices that state a power, each with the place of that power.</param>
    /// <param name="network">Their network.</param>
    /// <param name="home">The home.</param>
    /// <param name="problems">Takes the notice.</param>
    public static void OfDevices(
        IEnumerable<(SourcePlace Place, Device Device)> stated,
        NetworkDocument network,
        HomeDocument home,
        DiagnosticList problems)
    {
        if (network.Radio is not { } radio || home.Region.Length == 0 || (radio.Region is { } region && region != home.Region)) return;
        (SourcePlace Place, Device Device, BandVerdict Verdict)[] strong =
        [
            .. stated.Select(one => (one.Place, one.Device, Verdict: Judge(one.Device.TransmitPower!.Value, network, home)))
                .Where(one => !one.Verdict.IsAdmitted),
        ];
        if (strong.Length == 0) return;
        if (strong is [var (place, device, _)])
        {
            Say(place, KnownNames.Quote(device.Id.Value), device.TransmitPower!.Value, network, home, problems);
            return;
        }

        Frequency carrier = radio.Carrier(network.Channel);
        string names = string.Join(", ", strong.Select(one => KnownNames.Quote(one.Device.Id.Value)));
        string what = strong[0].Verdict.Row is null
            ? $"send at {carrier}, in no band of {home.Region}"
            : $"send above the limit of {home.Region} at {carrier}, by up to {strong.Max(one => one.Verdict.Excess)}";
        problems.Notice(strong[0].Place, FormattableString.Invariant($"{strong.Length} devices {what}: {names}"), Help);
    }

    private static BandVerdict Judge(PowerLevel power, NetworkDocument network, HomeDocument home) => BandCheck.Of(
        network.Radio!,
        network.Radio!.Carrier(network.Channel),
        power,
        Catalogues.BandLimits.Where(limit => limit.Region == home.Region));

    private static void Say(
        SourcePlace place,
        string what,
        PowerLevel power,
        NetworkDocument network,
        HomeDocument home,
        DiagnosticList problems)
    {
        Frequency carrier = network.Radio!.Carrier(network.Channel);
        BandVerdict verdict = Judge(power, network, home);
        if (verdict.IsAdmitted) return;
        string message = verdict.Row is null
            ? $"{what} sends at {carrier}, in no band of {home.Region}"
            : $"{what} sends at {power}, {verdict.Excess} above the limit of {home.Region} at {carrier}";
        problems.Notice(place, message, Help);
    }
}
