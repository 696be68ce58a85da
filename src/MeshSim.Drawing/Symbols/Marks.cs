using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Drawing.Symbols;

/// <summary>All symbols of one storey.</summary>
/// <param name="Devices">The network's devices on the storey, in the home's order.</param>
/// <param name="Repeaters">The repeaters recommended on the storey, in the order of the recommendation.</param>
internal sealed record Marks(ImmutableArray<DeviceMark> Devices, ImmutableArray<RepeaterMark> Repeaters)
{
    /// <summary>Everything that is drawn as a symbol.</summary>
    public IEnumerable<Mark> All => Devices.Concat<Mark>(Repeaters);

    /// <summary>
    /// Places the symbols of a storey. Repeaters come first and stay where they are, because somebody will look for that very
    /// outlet; then the coordinator; then the others in the home's order.
    /// </summary>
    public static Marks On(StoreyName storey, NetworkCoverage coverage, RepeaterPlacement? placement, SheetLayout layout) =>
        On(storey, coverage, [.. (placement?.Repeaters ?? []).Select((repeater, index) => new NumberedSite(index + 1, repeater.Outlet))], layout);

    /// <summary>The same with any numbered sites.</summary>
    public static Marks On(StoreyName storey, NetworkCoverage coverage, ImmutableArray<NumberedSite> sites, SheetLayout layout)
    {
        var placer = new MarkPlacer(layout.Map);
        RepeaterMark[] repeaters =
        [
            .. sites.Where(site => site.Outlet.Storey == storey).Select(site => placer.Place(MarkOf(site, layout.Projection))),
        ];
        Dictionary<DeviceId, Standing> standings = StandingsOf(coverage);
        Device[] devices = [.. coverage.Home.DevicesOf(coverage.Network).Where(device => device.Storey == storey)];
        Dictionary<DeviceId, DeviceMark> placed = devices
            .OrderByDescending(device => device.Id == coverage.Network.Coordinator)
            .Select(device => placer.Place(MarkOf(device, StandingOf(device, coverage, standings), layout.Projection)))
            .ToDictionary(mark => mark.Device.Id);
        return new([.. devices.Select(device => placed[device.Id])], [.. repeaters]);
    }

    /// <summary>The devices of several networks on one plan; coordinators are placed first, the others in the order of their networks.</summary>
    /// <param name="storey">The storey.</param>
    /// <param name="coverages">The networks.</param>
    /// <param name="projection">From the plan to the sheet.</param>
    /// <param name="frame">The part of the sheet that shows the plan; devices outside are left out.</param>
    public static ImmutableArray<DeviceMark> OnPlan(StoreyName storey, ImmutableArray<NetworkCoverage> coverages, Projection projection, PixelBox frame)
    {
        var placer = new MarkPlacer(frame);
        DeviceMark[] marks =
        [
            .. from coverage in coverages
               let standings = StandingsOf(coverage)
               from device in coverage.Home.DevicesOf(coverage.Network)
               where device.Storey == storey && frame.Holds(PixelBox.About(projection.ToPixel(device.Point), 0, 0))
               select MarkOf(device, StandingOf(device, coverage, standings), projection),
        ];
        return [.. marks.OrderByDescending(mark => mark.Device.Role == Role.Coordinator).Select(placer.Place)];
    }

    private static Dictionary<DeviceId, Standing> StandingsOf(NetworkCoverage coverage) => coverage.Devices.ToDictionary(
        reach => reach.Device, reach => reach.IsReached ? Standing.Reached : Standing.Unreached);

    private static Standing StandingOf(Device device, NetworkCoverage coverage, Dictionary<DeviceId, Standing> standings)
    {
        if (standings.TryGetValue(device.Id, out Standing standing)) return standing;
        return device.Id == coverage.Network.Coordinator && coverage.State?.TurnsOff(device) != true ? Standing.Reached : Standing.Off;
    }

    private static DeviceMark MarkOf(Device device, Standing standing, Projection projection)
    {
        Pixel place = projection.ToPixel(device.Point);
        return new() { Device = device, Standing = standing, TruePlace = place, Centre = place };
    }

    private static RepeaterMark MarkOf(NumberedSite site, Projection projection)
    {
        Pixel place = projection.ToPixel(site.Outlet.Point);
        return new() { Outlet = site.Outlet, Number = site.Number, TruePlace = place, Centre = place };
    }
}
