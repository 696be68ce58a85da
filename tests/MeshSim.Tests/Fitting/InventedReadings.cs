using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Mesh;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Tests.Fitting;

/// <summary>
/// Readings as a home would give them if its losses were other than the catalogue says: the model with true values, shadowing of
/// each pair, an offset of each receiver, scatter of each reading, rounded to whole dBm, and nothing where the receiver needs more.
/// Mains devices report everybody whom they hear; battery devices report nothing.
/// </summary>
internal sealed record InventedReadings
{
    /// <summary>Scatter of one reading in time, dB.</summary>
    private const double ReadingDb = 1.5;

    public Decibels Shadowing { get; init; } = new(4);

    public Decibels OffsetSpread { get; init; } = new(2.5);

    public Decibels CommonOffset { get; init; }

    /// <summary>What devices lose that the plan does not say.</summary>
    public ImmutableDictionary<DeviceId, Decibels> Hidden { get; init; } = ImmutableDictionary<DeviceId, Decibels>.Empty;

    /// <summary>Where devices really are; the plan is right about the others.</summary>
    public ImmutableDictionary<DeviceId, Device> Really { get; init; } = ImmutableDictionary<DeviceId, Device>.Empty;

    /// <summary>What elements of the plan cost more than others of their construction, by name.</summary>
    public ImmutableDictionary<string, Decibels> Elements { get; init; } = ImmutableDictionary<string, Decibels>.Empty;

    /// <summary>The readings of one network.</summary>
    /// <param name="home">The home as planned.</param>
    /// <param name="network">The network; its fit is the truth about exponent, constructions and mountings.</param>
    /// <param name="seed">Chooses shadowing, offsets and scatter.</param>
    public ImmutableArray<Reading> Of(Home home, Network network, int seed)
    {
        var random = new Random(seed);
        Device[] devices = [.. home.DevicesOf(network).Select(device => Really.GetValueOrDefault(device.Id, device))];
        double[] offsetsDb = [.. OffsetsDb(devices.Length, seed).Select(offsetDb => CommonOffset.Value + offsetDb)];
        IPathLossModel model = home.ModelOf(network, ModelName.Detour, state: null);
        Dictionary<DeviceId, PowerLevel> needed = NeededLevels(home, network, model, devices);
        var readings = ImmutableArray.CreateBuilder<Reading>();
        for (int first = 0; first < devices.Length; first++)
        {
            for (int second = first + 1; second < devices.Length; second++)
            {
                double lossDb = LossDb(home, network, model, devices[first], devices[second]) - (Shadowing.Value * Normal(random));
                Read(devices[first], devices[second], lossDb, offsetsDb[second]);
                Read(devices[second], devices[first], lossDb, offsetsDb[first]);
            }
        }

        return readings.ToImmutable();

        void Read(Device from, Device to, double lossDb, double offsetDb)
        {
            double levelDbm = (from.TransmitPower ?? network.Radio.TransmitPower).Dbm + (2 * network.Radio.AntennaGain.Value) - lossDb + (ReadingDb * Normal(random));
            bool isHeard = levelDbm >= needed[to.Id].Dbm;
            if (to.Power != PowerSource.Battery) readings.Add(new(from.Id, to.Id, isHeard ? new(Math.Round(levelDbm + offsetDb)) : null, ""));
        }
    }

    /// <summary>By how much receivers report more than all of them together, in the order of the devices.</summary>
    public double[] OffsetsDb(int devices, int seed)
    {
        var random = new Random(seed ^ 0x5EED);
        return [.. Enumerable.Range(0, devices).Select(_ => OffsetSpread.Value * Normal(random))];
    }

    private double LossDb(Home home, Network network, IPathLossModel model, Device first, Device second)
    {
        PathLoss loss = model.Between(home.PositionOf(first), home.PositionOf(second));
        return loss.Total.Value + loss.Items.Sum(item => Elements.GetValueOrDefault(item.Name).Value * item.Sensitivity) + At(first) + At(second);

        double At(Device device) => (network.LossOf(device.Mounting) + Hidden.GetValueOrDefault(device.Id)).Value;
    }

    private static Dictionary<DeviceId, PowerLevel> NeededLevels(Home home, Network network, IPathLossModel model, Device[] devices)
    {
        var surroundings = new Surroundings(home, network, model, new(network.Radio, home.Parameters.Shadowing));
        return devices.ToDictionary(device => device.Id, device => surroundings.At(device).PlanningLevel);
    }

    public static double Normal(Random random)
    {
        double radius = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
        return radius * Math.Cos(2 * Math.PI * random.NextDouble());
    }
}
