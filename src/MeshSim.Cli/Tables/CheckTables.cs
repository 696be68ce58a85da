using System.Collections.Immutable;
using MeshSim.Cli.Json;
using MeshSim.Cli.Wording;

namespace MeshSim.Cli.Tables;

/// <summary>What was read from a home folder.</summary>
internal static class CheckTables
{
    /// <summary>The storeys in numbers.</summary>
    public static Table Storeys(CheckJson check) => new(
        [new("Storey"), new("Rooms", true), new("Walls", true), new("Doors", true), new("Windows", true), new("Objects", true), new("Underfoot")],
        [.. check.Storeys.Select(s => ImmutableArray.Create(
            s.Storey, Figures.Count(s.Rooms), Figures.Count(s.Walls), Figures.Count(s.Doors), Figures.Count(s.Windows), Figures.Count(s.Objects), s.Floor ?? "the ground"))]);

    /// <summary>The networks in numbers.</summary>
    public static Table Networks(CheckJson check) => new(
        [new("Network"), new("Radio"), new("Channel", true), new("MHz", true), new("Coordinator"), new("Devices", true), new("Routers", true), new("End devices", true)],
        [.. check.Networks.Select(n => ImmutableArray.Create(
            n.Network, n.Radio, Figures.Count(n.Channel), Figures.Plain(n.CarrierMegahertz), n.Coordinator, Figures.Count(n.Devices), Figures.Count(n.Routers), Figures.Count(n.EndDevices)))]);
}
