using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Yaml;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Files.Homes;

/// <summary>Reads the networks of <c>home.yaml</c>.</summary>
internal static class NetworkReader
{
    private static readonly ValidRange AnyChannel = new(0, 10_000, "");
    private static readonly ValidRange Hops = new(1, 30, "hops");

    /// <summary>Reads every network.</summary>
    public static ImmutableArray<NetworkDocument> Read(MapReader home, DiagnosticList problems)
    {
        if (home.Require("networks") is null) return [];
        ImmutableArray<NetworkDocument> networks = [.. home.List("networks").Select(node => ReadOne(node, problems)).OfType<NetworkDocument>()];
        UniqueNames.Check(networks.Select(network => network.Name), "network", problems);
        if (home.Find("networks") is YamlList { Items.IsEmpty: true } or YamlText { IsEmpty: true })
            problems.Error(home.PlaceOf("networks"), "the home has no network", "list at least one under \"networks:\"");
        return networks;
    }

    private static NetworkDocument? ReadOne(YamlNode node, DiagnosticList problems)
    {
        MapReader? map = MapReader.Open(node, "a network", problems, "network", "radio", "channel", "coordinator", "hops", "usb3 beside", "lead");
        if (map?.RequiredText("network") is not { } name) return null;
        RadioProfile? radio = FindRadio(map, problems);
        string? coordinator = map.RequiredText("coordinator");
        return new(
            new(name, map.PlaceOf("network")),
            radio,
            Channel(map, name, radio, problems),
            coordinator is null ? null : new PlacedName(coordinator, map.PlaceOf("coordinator")),
            HopLimit(map, radio, problems),
            IsBesideUsb3(map, radio, problems),
            Lead(map, problems));
    }

    private static bool IsBesideUsb3(MapReader map, RadioProfile? radio, DiagnosticList problems)
    {
        bool isBeside = map.Flag("usb3 beside");
        if (isBeside && radio is not null && !SharedHubNoise.DisturbedMegahertz.Contains(radio.FirstCarrier.Megahertz))
        {
            problems.Notice(
                map.PlaceOf("usb3 beside"),
                $"the radio {radio.Name} sends at {radio.FirstCarrier}, where no noise of USB 3 is assumed",
                FormattableString.Invariant($"only {SharedHubNoise.DisturbedMegahertz} is disturbed"));
        }

        return isBeside;
    }

    private static double Lead(MapReader map, DiagnosticList problems)
    {
        if (map.Has("lead") && !map.Has("usb3 beside"))
            problems.Notice(map.PlaceOf("lead"), "a lead changes nothing without USB 3 storage beside the stick", "write \"usb3 beside: true\" if there is some");
        return map.Number("lead", SharedHubNoise.LeadMetres) ?? 0;
    }

    private static RadioProfile? FindRadio(MapReader map, DiagnosticList problems)
    {
        if (map.RequiredText("radio") is not { } name) return null;
        RadioProfile? radio = Catalogues.Radios.FirstOrDefault(profile => profile.Name == name);
        if (radio is null)
            problems.Error(
                map.PlaceOf("radio"),
                $"no radio is called {KnownNames.Quote(name)}",
                KnownNames.Help(name, [.. Catalogues.Radios.Select(profile => profile.Name)], "radios"));
        return radio;
    }

    private static int Channel(MapReader map, string name, RadioProfile? radio, DiagnosticList problems)
    {
        int? channel = map.WholeNumber("channel", AnyChannel);
        if (radio is null) return 0;
        string known = radio.FirstChannel == radio.LastChannel
            ? FormattableString.Invariant($"its only channel is {radio.FirstChannel}")
            : FormattableString.Invariant($"its channels are {radio.FirstChannel} to {radio.LastChannel}");
        if (channel is { } number)
        {
            if (number >= radio.FirstChannel && number <= radio.LastChannel) return number;
            problems.Error(map.PlaceOf("channel"), FormattableString.Invariant($"the radio {radio.Name} has no channel {number}"), known);
        }
        else if (!map.Has("channel") && radio.FirstChannel != radio.LastChannel)
        {
            problems.Notice(
                map.PlaceOf("network"),
                FormattableString.Invariant($"the network {KnownNames.Quote(name)} states no channel; {radio.FirstChannel} is assumed"),
                known);
        }

        return radio.FirstChannel;
    }

    private static int? HopLimit(MapReader map, RadioProfile? radio, DiagnosticList problems)
    {
        int? hops = map.WholeNumber("hops", Hops);
        if (hops is not > 1 || radio is not { Topology: Topology.Star }) return hops;
        problems.Error(map.PlaceOf("hops"), $"the radio {radio.Name} reaches its coordinator in one hop only", "leave \"hops\" out");
        return null;
    }
}
