using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>The answer of a coverage in sentences.</summary>
internal static class CoverageWords
{
    /// <summary>
    /// What a device lacks that no links of the design margin lead to the coordinator. It may well be connected on many days;
    /// it cannot be planned with.
    /// </summary>
    public const string NoReliableWay = "no reliable way";

    /// <summary>The answer in one line, such as "2 of 18 devices have no reliable way to stick-24: shed-sensor (lacks 7.3 dB to shed-plug), …".</summary>
    public static string Answer(NetworkCoverage coverage)
    {
        ImmutableArray<DeviceReach> lost = Unreached(coverage);
        string coordinator = coverage.Network.Coordinator.Value;
        int count = coverage.Devices.Length;
        if (count == 0) return $"{coordinator} is alone: the network has no other device that is on.";
        if (IsCoordinatorOff(coverage)) return $"Coordinator {coordinator} is off in state {coverage.State!.Name}, so {Nobody(count)} a way to it.";
        if (lost.IsEmpty && count == 1) return $"The only device, {coverage.Devices[0].Device}, has a reliable way to {coordinator}.";
        if (lost.IsEmpty) return $"All {Figures.Counted(count, "device")} have a reliable way to {coordinator}.";

        string names = string.Join(", ", lost.Select(reach => $"{reach.Device} ({Shortfall.InWords(coverage, reach)})"));
        string have = lost.Length == 1 ? "has" : "have";
        return $"{Figures.Count(lost.Length)} of {Figures.Counted(count, "device")} {have} {NoReliableWay} to {coordinator}: {names}.";
    }

    private static string Nobody(int count) => count == 1 ? "the only device that is on does not have" : $"none of {Figures.Counted(count, "device")} that are on has";

    /// <summary>How the figures came about, such as "Network plugs, model log-distance, design margin 6.4 dB, state bedtime".</summary>
    public static string Basis(NetworkCoverage coverage)
    {
        string state = coverage.State is { } s ? $", state {s.Name}" : "";
        return $"Network {coverage.Network.Name}, {coverage.Network.Carrier}, model {ModelNames.Of(coverage.Model)}, "
            + $"design margin {coverage.DesignMargin}{state}{Fitted(coverage.Network)}";
    }

    /// <summary>What the figures after ± and under "Holds" mean.</summary>
    public static string Uncertainty(PlanningParameters parameters) =>
        "±: one standard deviation of what the margin may be off by. Holds: in how many of 100 houses of this plan the link meets what its receiver needs" + FadingAside(parameters) + ".";

    /// <summary>That the design margin allows for fading and "Holds" does not; empty where neither does.</summary>
    public static string FadingAside(PlanningParameters parameters) =>
        parameters.Fading == Fading.None ? "" : "; the small-scale fading that the design margin allows for as well is left out of it";

    /// <summary>That fitted values are in use, such as ", fitted to 288 readings (fit.yaml)"; empty when none are.</summary>
    public static string Fitted(Network network) =>
        network.Fit is { } fit ? $", fitted to {Figures.Counted(fit.Readings, "reading")} (fit.yaml)" : "";

    /// <summary>The devices without a reliable way.</summary>
    public static ImmutableArray<DeviceReach> Unreached(NetworkCoverage coverage) => [.. coverage.Devices.Where(reach => !reach.IsReached)];

    /// <summary>Whether the state leaves the coordinator without power, so that nobody can reach it.</summary>
    public static bool IsCoordinatorOff(NetworkCoverage coverage) =>
        coverage.Home.DevicesOf(coverage.Network).Any(device => device.Id == coverage.Network.Coordinator && coverage.State?.TurnsOff(device) == true);

    /// <summary>Where something is, such as "ground, hall".</summary>
    public static string Place(StoreyName storey, RoomName? room) => room is { } r ? $"{storey}, {r}" : storey.Value;

    /// <summary>Where a device is.</summary>
    public static string Place(Home home, DeviceId id)
    {
        Device device = home.Devices.First(d => d.Id == id);
        bool isOutdoors = device.Room is null && !home.FloorPlan.Storey(device.Storey).Rooms.IsEmpty;
        return Place(device.Storey, device.Room) + (isOutdoors ? ", outdoors" : "");
    }
}
