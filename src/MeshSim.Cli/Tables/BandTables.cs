using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Cli.Wording;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>Two networks compared.</summary>
internal static class BandTables
{
    /// <summary>Room by room: what is covered, with what margin.</summary>
    public static Table Rooms(BandComparison bands) => new(
        [
            new("Room"), new($"{bands.First.Network.Name} %", true), new($"{bands.Second.Network.Name} %", true),
            new($"{bands.First.Network.Name} dB", true), new($"{bands.Second.Network.Name} dB", true), new("Difference", true),
        ],
        [
            .. bands.Rooms.Select(room => ImmutableArray.Create(
                CoverageWords.Place(room.Storey, room.Room),
                Figures.Percent(room.First.Covered),
                Figures.Percent(room.Second.Covered),
                Margin(room.First.Median),
                Margin(room.Second.Median),
                Signed(room.First.Median - room.Second.Median))),
        ])
    {
        Notes = ["%: share of the floor where a battery device, mounted in the open, has the design margin. dB: the median of its margin over the floor."],
    };

    /// <summary>Room by room: where the difference in its middle comes from.</summary>
    public static Table Reasons(BandComparison bands) => new(
        [
            new("In the middle of"), new("Difference", true), new("First metre", true), new("Distance", true), new("Walls", true),
            new("Mounting", true), new("Power", true), new("Needed", true), new("Wi-Fi", true),
        ],
        [.. bands.Rooms.Select(room => Row(CoverageWords.Place(room.Storey, room.Room), room.InTheMiddle))])
    {
        Notes =
        [
            "dB in favour of " + bands.First.Network.Name + "; the parts sum to the difference. First metre: free space, which costs short waves more. Distance, walls: to the best "
            + "relay of each network, which need not be the same. Power: transmitters and antennas. Needed: what undisturbed receivers need. Wi-Fi: what it and other noise add.",
        ],
    };

    /// <summary>Device by device: hops, margin, and where the difference of its own link comes from.</summary>
    public static Table Devices(BandComparison bands) => new(
        [
            new("Device"), new($"in {bands.First.Network.Name}"), new($"in {bands.Second.Network.Name}"),
            new("Difference", true), new("First metre", true), new("Distance", true), new("Walls", true), new("Rest", true),
        ],
        [
            .. bands.Devices.Select(device => ImmutableArray.Create(
                device.Device.Id.Value,
                Standing(device.First),
                Standing(device.Second),
                Signed(device.Difference?.Total),
                Signed(device.Difference?.FreeSpace),
                Signed(device.Difference?.Distance),
                Signed(device.Difference?.Walls),
                Signed(device.Difference is { } d ? d.Mounting + d.Power + d.Sensitivity + d.Interference : null))),
        ])
    {
        Notes =
        [
            "Each device at its place and in its mounting, as if it belonged to either network: hops to the coordinator, then the margin (dB) of its "
                + "own link, the first on its way or the nearest that it has. Rest: mounting, power, what receivers need, Wi-Fi.",
        ],
    };

    private static ImmutableArray<string> Row(string name, BandDifference? difference) =>
    [
        name, Signed(difference?.Total), Signed(difference?.FreeSpace), Signed(difference?.Distance), Signed(difference?.Walls), Signed(difference?.Mounting),
        Signed(difference?.Power), Signed(difference?.Sensitivity), Signed(difference?.Interference),
    ];

    /// <summary>Hops and margin, such as "2 hops, 34.9"; "NONE, 3.3" without a route.</summary>
    private static string Standing(BandStanding standing)
    {
        string hops = standing.Hops is { } count ? Figures.Counted(count, "hop") : "NONE";
        return standing.Budget is { } budget ? $"{hops}, {Figures.Decibels(budget.Margin)}" : hops;
    }

    private static string Margin(Decibels margin) => double.IsFinite(margin.Value) ? Figures.Decibels(margin) : "-";

    private static string Signed(Decibels? value) => value is { } v && double.IsFinite(v.Value)
        ? Math.Round(v.Value, 1).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture)
        : "-";
}
