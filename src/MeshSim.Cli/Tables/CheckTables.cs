using System.Collections.Immutable;
using MeshSim.Cli.Json;
using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Tables;

/// <summary>What was read from a home folder.</summary>
internal static class CheckTables
{
    /// <summary>The storeys in numbers.</summary>
    public static Table Storeys(CheckJson check) => new(
        [
            new("Storey"), new("Rooms", true), new("Walls", true), new("Doors", true), new("Windows", true), new("Objects", true),
            new("Underfoot"),
        ],
        [.. check.Storeys.Select(Row)]);

    /// <summary>The networks in numbers.</summary>
    public static Table Networks(CheckJson check) => new(
        [
            new("Network"), new("Radio"), new("Channel", true), new("MHz", true), new("Coordinator"), new("Devices", true),
            new("Routers", true), new("End devices", true),
        ],
        [.. check.Networks.Select(Row)]);

    private static ImmutableArray<string> Row(StoreyJson storey) =>
    [
        storey.Storey,
        Figures.Count(storey.Rooms),
        Figures.Count(storey.Walls),
        Figures.Count(storey.Doors),
        Figures.Count(storey.Windows),
        Figures.Count(storey.Objects),
        storey.Floor ?? "the ground",
    ];

    private static ImmutableArray<string> Row(NetworkJson network) =>
    [
        network.Network,
        network.Radio,
        Figures.Count(network.Channel),
        Figures.Plain(network.CarrierMegahertz),
        network.Coordinator,
        Figures.Count(network.Devices),
        Figures.Count(network.Routers),
        Figures.Count(network.EndDevices),
    ];
}
