using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Mesh.Outages;

namespace MeshSim.Studies;

/// <summary>The device record of a network: for the binder, the electrician, and whoever inherits the house.</summary>
public static class RecordStudy
{
    /// <summary>The record of every device of a network, in the home's order.</summary>
    /// <exception cref="ArgumentException">The state opens a door that the home does not have.</exception>
    public static ImmutableArray<DeviceRecord> Run(Home home, Network network, StudyOptions options) =>
        Of(ResilienceStudy.Rehearse(home, network, options, new() { Draws = 0 }));

    /// <summary>The same from a rehearsal that was computed already.</summary>
    public static ImmutableArray<DeviceRecord> Of(NetworkRehearsal rehearsal)
    {
        ArgumentNullException.ThrowIfNull(rehearsal);
        NetworkCoverage coverage = rehearsal.Coverage;
        Dictionary<DeviceId, DeviceReach> reaches = coverage.Devices.ToDictionary(reach => reach.Device);
        Dictionary<string, Circuit> circuits = coverage.Home.Circuits.ToDictionary(circuit => circuit.Name, StringComparer.Ordinal);
        ILookup<string, Rehearsal> ofDevices = Named(rehearsal, OutageKind.Router, OutageKind.Hub), ofCircuits = Named(rehearsal, OutageKind.Circuit);
        return [.. coverage.Home.DevicesOf(coverage.Network).Select(RecordOf)];

        DeviceRecord RecordOf(Device device)
        {
            Rehearsal? alone = ofDevices[device.Id.Value].FirstOrDefault();
            Rehearsal? together = device.Circuit is { } circuit ? ofCircuits[circuit].FirstOrDefault() : null;
            return new()
            {
                Device = device,
                Network = coverage.Network,
                IsolatedAt = device.Circuit is { } fed ? circuits.GetValueOrDefault(fed)?.IsolatedAt : null,
                Reach = reaches.GetValueOrDefault(device.Id),
                Removal = Removal.StepsFor(device),
                Drops = alone?.Dropped ?? [],
                LeavesOneWay = alone?.LeftWithOneWay ?? [],
                OnSameCircuit = [.. coverage.Home.Devices.Where(other => other.Id != device.Id && device.Circuit is { } fed && other.Circuit == fed).Select(other => other.Id)],
                DropsWithCircuit = together?.Dropped ?? [],
            };
        }
    }

    private static ILookup<string, Rehearsal> Named(NetworkRehearsal rehearsal, params ReadOnlySpan<OutageKind> kinds)
    {
        OutageKind[] wanted = [.. kinds];
        return rehearsal.Rehearsals.Where(one => wanted.Contains(one.Outage.Kind)).ToLookup(one => one.Outage.Name, StringComparer.Ordinal);
    }
}
