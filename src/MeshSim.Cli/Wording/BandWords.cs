using MeshSim.Devices;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>Two networks compared, in sentences.</summary>
internal static class BandWords
{
    /// <summary>The answer in a few sentences: rooms, devices, the main reason.</summary>
    public static string Answer(BandComparison bands)
    {
        (Network first, Network second) = (bands.First.Network, bands.Second.Network);
        string rooms = bands.Rooms.IsEmpty
            ? "The home has no rooms to compare."
            : $"{first.Name} ({first.Carrier}) covers {Covered(bands, room => room.First)} whole, "
                + $"{second.Name} ({second.Carrier}) {Covered(bands, room => room.Second)}, of {Figures.Counted(bands.Rooms.Length, "room")}.";
        string devices = bands.Devices.IsEmpty
            ? ""
            : $" Of {Figures.Counted(bands.Devices.Length, "device")} at their places, {first.Name} would reach {Reached(bands, device => device.First)}, "
                + $"{second.Name} {Reached(bands, device => device.Second)}.";
        return rooms + devices + Median(bands);
    }

    /// <summary>How the figures came about.</summary>
    public static string Basis(BandComparison bands)
    {
        string state = bands.First.State is { } s ? $", state {s.Name}" : "";
        return $"Model {ModelNames.Of(bands.First.Model)}, design margin {bands.First.DesignMargin}{state}; differences are {bands.First.Network.Name} less {bands.Second.Network.Name}";
    }

    private static string Median(BandComparison bands)
    {
        double[] differences = [.. bands.Rooms.Select(room => room.InTheMiddle).OfType<BandDifference>().Select(difference => difference.Total.Value).Order()];
        if (differences.Length == 0) return "";
        double median = differences[(differences.Length - 1) / 2];
        string better = (median >= 0 ? bands.First : bands.Second).Network.Name.Value;
        return $" In the middle of the median room {better} has {Figures.Tenths(Math.Abs(median))} dB more margin.";
    }

    private static string Covered(BandComparison bands, Func<BandRoom, BandFloor> side) => Figures.Count(bands.Rooms.Count(room => side(room).Covered >= 1));

    private static string Reached(BandComparison bands, Func<BandDevice, BandStanding> side) => Figures.Count(bands.Devices.Count(device => side(device).Hops is not null));
}
