using MeshSim.Cli.Tables;
using MeshSim.Mesh;
using MeshSim.Studies;
using MeshSim.Studies.Changes;

namespace MeshSim.Cli.Wording;

/// <summary>What became of the way of one device, in a few words.</summary>
internal static class ChangeWords
{
    /// <summary>What became of it.</summary>
    public static string Of(DeviceChange device) => device.Way switch
    {
        WayChange.Unchanged => "as before",
        WayChange.Won => "won",
        WayChange.Lost => "LOST",
        WayChange.GainedSecondWay => "gained a second",
        WayChange.LeftWithOneWay => "LEFT WITH ONE",
        WayChange.Added => device.IsWorse ? "new, NONE" : "new",
        WayChange.Gone => "gone",
        _ => "changed",
    };

    /// <summary>A way, or what is lacking.</summary>
    public static string Way(NetworkCoverage coverage, DeviceReach? reach) => reach switch
    {
        null => "-",
        { Route: { } route } => RoutesTable.Way(route),
        _ => Shortfall.InWords(coverage, reach),
    };
}
