using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Drawing.Routes;

/// <summary>A link that routes use, both ends on the drawn storey.</summary>
/// <param name="From">The end farther from the coordinator.</param>
/// <param name="To">The end nearer to it.</param>
internal readonly record struct RouteLine(DeviceId From, DeviceId To);

/// <summary>Links that routes use from one device to another storey, or from there to it.</summary>
/// <param name="Here">The end on the drawn storey.</param>
/// <param name="Others">The ends on the other storey, in the order of their ids.</param>
/// <param name="Storey">The other storey.</param>
/// <param name="IsUp">Whether it lies above.</param>
/// <param name="IsOutgoing">Whether frames leave the drawn storey on their way to the coordinator.</param>
internal sealed record StoreyStub(DeviceId Here, ImmutableArray<DeviceId> Others, StoreyName Storey, bool IsUp, bool IsOutgoing)
{
    /// <summary>What stands beside it.</summary>
    public string Caption => (IsUp ? "▲ " : "▼ ") + (Others.Length, IsOutgoing) switch
    {
        (_, true) => $"to {Storey}",
        (1, _) => $"from {Storey}",
        _ => FormattableString.Invariant($"{Others.Length} from {Storey}"),
    };
}

/// <summary>The links that the routes of a network use, as one storey shows them.</summary>
/// <param name="Lines">Each once, in the order of their ids.</param>
/// <param name="Stubs">Each once, in the order of their ids.</param>
internal sealed record RouteLines(ImmutableArray<RouteLine> Lines, ImmutableArray<StoreyStub> Stubs)
{
    /// <summary>Gathers the links of all routes.</summary>
    public static RouteLines On(StoreyName storey, NetworkCoverage coverage)
    {
        Dictionary<DeviceId, Device> devices = coverage.Home.DevicesOf(coverage.Network).ToDictionary(device => device.Id);
        RouteLine[] links =
        [
            .. coverage.Devices.Where(reach => reach.Route is not null)
                .SelectMany(reach => reach.Route!.Path.Zip(reach.Route.Path.Skip(1), (from, to) => new RouteLine(from, to)))
                .Distinct()
                .OrderBy(link => link.From).ThenBy(link => link.To),
        ];
        bool IsHere(DeviceId id) => devices[id].Storey == storey;
        double HeightOf(StoreyName name) => coverage.Home.FloorPlan.Storey(name).ElevationMetres;
        StoreyStub[] stubs =
        [
            .. links.Where(link => IsHere(link.From) != IsHere(link.To))
                .Select(link => IsHere(link.From) ? (Here: link.From, There: link.To, IsOutgoing: true) : (Here: link.To, There: link.From, IsOutgoing: false))
                .GroupBy(end => (end.Here, devices[end.There].Storey, end.IsOutgoing))
                .Select(group => new StoreyStub(
                    group.Key.Here, [.. group.Select(end => end.There).Order()], group.Key.Storey,
                    HeightOf(group.Key.Storey) > HeightOf(storey), group.Key.IsOutgoing))
                .OrderBy(stub => stub.Here).ThenBy(stub => stub.Storey.Value, StringComparer.Ordinal).ThenBy(stub => stub.IsOutgoing),
        ];
        return new([.. links.Where(link => IsHere(link.From) && IsHere(link.To))], [.. stubs]);
    }
}
