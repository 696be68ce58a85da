using MeshSim.Devices;
using MeshSim.Radio;

namespace MeshSim.Dropouts;

/// <summary>Put a device higher.</summary>
/// <param name="Device">The device.</param>
/// <param name="HeightMetres">Its new height above the floor, m.</param>
public sealed record RaiseDevice(DeviceId Device, double HeightMetres) : Fix
{
    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"put {Device} at {HeightMetres:0.0} m above the floor, if its job allows");

    /// <inheritdoc/>
    public override Home On(Home home) => With(home, Device, device => device with { HeightMetres = HeightMetres });
}

/// <summary>Take a device out of what hides it.</summary>
/// <param name="Device">The device.</param>
/// <param name="From">What hides it now.</param>
/// <param name="Wired">Whether it is wired to the mains.</param>
public sealed record UnboxDevice(DeviceId Device, Mounting From, bool Wired) : Fix
{
    /// <inheritdoc/>
    public override string Words => $"take {Device} out into the open (now: {From.Name})";

    /// <inheritdoc/>
    public override bool TouchesWiring => Wired;

    /// <inheritdoc/>
    public override Home On(Home home) => With(home, Device, device => device with { Mounting = InTheOpen.In(home) });
}

/// <summary>Plug a device in elsewhere.</summary>
/// <param name="Device">The device.</param>
/// <param name="To">The outlet.</param>
public sealed record MoveToOutlet(DeviceId Device, Outlet To) : Fix
{
    /// <inheritdoc/>
    public override string Words => $"plug {Device} into {Place(To)}";

    /// <inheritdoc/>
    public override bool TouchesWiring => To.IsAssumed;

    /// <inheritdoc/>
    public override Home On(Home home) => With(home, Device, device => device with
    {
        Storey = To.Storey,
        Point = To.Point,
        HeightMetres = To.HeightMetres,
        Room = To.Room,
        Circuit = To.Circuit,
        SwitchedBy = null,
        Mounting = InTheOpen.In(home),
    });
}

/// <summary>Take a device of the same kind that speaks another network's language.</summary>
/// <param name="Device">The device.</param>
/// <param name="To">The other network.</param>
public sealed record ChangeNetwork(DeviceId Device, Network To) : Fix
{
    /// <inheritdoc/>
    public override string Words => $"use such a device of network {To.Name} ({To.Carrier}) for {Device}, if there is one to buy";

    /// <inheritdoc/>
    public override NetworkName? MovesTo => To.Name;

    /// <inheritdoc/>
    public override Home On(Home home) => With(home, Device, device => Joined(device, To)) with
    {
        // What was read of it was read in the network that it leaves.
        Readings = [.. home.Readings.Where(reading => reading.From != Device && reading.To != Device)],
    };

    /// <summary>A device as it would be in a network: same place, same mounting, same supply, the profile's power.</summary>
    public static Device Joined(Device device, Network network) => device.Network == network.Name
        ? device
        : device with
        {
            Network = network.Name,
            TransmitPower = null,
            Role = device.Power == PowerSource.Mains && network.Radio.Topology == Topology.Mesh ? Role.Router : Role.EndDevice,
        };
}
