using System.Collections.Immutable;
using MeshSim.Cli.Answers;
using MeshSim.Drawing;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Json;

/// <summary>Two networks compared, as JSON. Differences are the first less the second.</summary>
internal sealed record BandsJson(
    string Home,
    ModelName Model,
    string? State,
    string First,
    string Second,
    double FirstMegahertz,
    double SecondMegahertz,
    double DesignMarginDb,
    ImmutableArray<string> Pictures,
    ImmutableArray<BandRoomJson> Rooms,
    ImmutableArray<BandDeviceJson> Devices)
{
    /// <summary>The record of a comparison.</summary>
    /// <param name="bands">The comparison.</param>
    /// <param name="names">How its pictures are called, or null when none was asked for.</param>
    /// <param name="format">What kind they are.</param>
    public static BandsJson Of(BandComparison bands, PictureNames? names, PictureFormat format = PictureFormat.Png) => new(
        bands.First.Home.Name,
        bands.First.Model,
        bands.First.State?.Name,
        bands.First.Network.Name.Value,
        bands.Second.Network.Name.Value,
        bands.First.Network.Carrier.Megahertz,
        bands.Second.Network.Carrier.Megahertz,
        bands.First.DesignMargin.Value,
        names is null ? [] : [.. bands.Maps.Select(map => names.Difference(bands, map, format))],
        [.. bands.Rooms.Select(BandRoomJson.Of)],
        [.. bands.Devices.Select(BandDeviceJson.Of)]);
}

/// <summary>One room in two networks.</summary>
internal sealed record BandRoomJson(
    string Storey, string Room, double FirstCovered, double SecondCovered, double FirstMedianDb, double SecondMedianDb, BandDifferenceJson? InTheMiddle)
{
    /// <summary>The record of a room.</summary>
    public static BandRoomJson Of(BandRoom room) => new(
        room.Storey.Value,
        room.Room.Value,
        room.First.Covered,
        room.Second.Covered,
        room.First.Median.Value,
        room.Second.Median.Value,
        BandDifferenceJson.Of(room.InTheMiddle));
}

/// <summary>One device in two networks.</summary>
internal sealed record BandDeviceJson(
    string Device, string NetworkNow, int? FirstHops, double? FirstMarginDb, int? SecondHops, double? SecondMarginDb, BandDifferenceJson? Difference)
{
    /// <summary>The record of a device.</summary>
    public static BandDeviceJson Of(BandDevice device) => new(
        device.Device.Id.Value,
        device.Device.Network.Value,
        device.First.Hops,
        device.First.Budget?.Margin.Value,
        device.Second.Hops,
        device.Second.Budget?.Margin.Value,
        BandDifferenceJson.Of(device.Difference));
}

/// <summary>Where a difference comes from. The parts sum to the total.</summary>
internal sealed record BandDifferenceJson(
    double TotalDb, double FreeSpaceDb, double DistanceDb, double WallsDb, double MountingDb, double PowerDb, double SensitivityDb, double InterferenceDb)
{
    /// <summary>The record of a difference; null for none.</summary>
    public static BandDifferenceJson? Of(BandDifference? difference) => difference is null
        ? null
        : new(
            difference.Total.Value,
            difference.FreeSpace.Value,
            difference.Distance.Value,
            difference.Walls.Value,
            difference.Mounting.Value,
            difference.Power.Value,
            difference.Sensitivity.Value,
            difference.Interference.Value);
}
