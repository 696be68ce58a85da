using System.Collections.Immutable;
using MeshSim.Devices;

namespace MeshSim.Cli.Json;

/// <summary>Devices and outlets as JSON names them.</summary>
internal static class JsonIds
{
    /// <summary>The ids of devices, in the order given.</summary>
    public static ImmutableArray<string> Of(IEnumerable<DeviceId> devices) => [.. devices.Select(device => device.Value)];

    /// <summary>The ids of outlets, in the order given.</summary>
    public static ImmutableArray<string> Of(IEnumerable<Outlet> outlets) => [.. outlets.Select(outlet => outlet.Id.Value)];
}
