using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Fitting;

/// <summary>What one device reported of another: the mean of what it heard, or that it heard nothing.</summary>
/// <param name="Level">The mean of its readings; null when none heard anything.</param>
/// <param name="Sent">At the sender's antenna connector.</param>
/// <param name="Needed">The level below which the receiver hears nothing.</param>
/// <param name="Readings">How many readings.</param>
internal sealed record HeardLevel(PowerLevel? Level, PowerLevel Sent, PowerLevel Needed, int Readings);

/// <summary>
/// All readings of two devices. Both directions and all repetitions go through the same walls and the same furniture, so together
/// they are one observation of the path.
/// </summary>
/// <param name="First">The device that comes first in the home.</param>
/// <param name="Second">The other one.</param>
/// <param name="AtSecond">What the second reported of the first; null when nobody looked.</param>
/// <param name="AtFirst">What the first reported of the second.</param>
internal sealed record ReadPair(Device First, Device Second, HeardLevel? AtSecond, HeardLevel? AtFirst)
{
    /// <summary>Whether anything was heard.</summary>
    public bool IsHeard => AtSecond?.Level is not null || AtFirst?.Level is not null;

    /// <summary>Whether both heard each other.</summary>
    public bool IsHeardBothWays => AtSecond?.Level is not null && AtFirst?.Level is not null;

    /// <summary>How many readings.</summary>
    public int Readings => (AtSecond?.Readings ?? 0) + (AtFirst?.Readings ?? 0);

    /// <summary>Whether a device is one of the two.</summary>
    public bool Has(DeviceId device) => First.Id == device || Second.Id == device;

    /// <summary>The pairs of a network, in the order of its devices.</summary>
    public static ImmutableArray<ReadPair> Of(Home home, Network network, ModelName model)
    {
        Device[] devices = [.. home.DevicesOf(network)];
        var budget = new LinkBudget(network.Radio, home.Parameters.Shadowing);
        var surroundings = new Surroundings(home, network, home.ModelOf(network, model, state: null), budget);
        ILookup<(DeviceId, DeviceId), Reading> readings = home.Readings.ToLookup(reading => (reading.From, reading.To));
        return
        [
            .. from first in Enumerable.Range(0, devices.Length)
               from second in Enumerable.Range(first + 1, devices.Length - first - 1)
               let pair = new ReadPair(devices[first], devices[second], Heard(devices[first], devices[second]), Heard(devices[second], devices[first]))
               where pair.AtFirst is not null || pair.AtSecond is not null
               select pair,
        ];

        HeardLevel? Heard(Device from, Device to)
        {
            Reading[] all = [.. readings[(from.Id, to.Id)]];
            if (all.Length == 0) return null;
            double[] levelsDbm = [.. all.Where(reading => reading.Level is not null).Select(reading => reading.Level!.Value.Dbm)];
            return new(
                levelsDbm.Length == 0 ? null : new PowerLevel(levelsDbm.Average()),
                from.TransmitPower ?? network.Radio.TransmitPower,
                surroundings.At(to).PlanningLevel,
                all.Length);
        }
    }
}
