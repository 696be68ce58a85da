using MeshSim.Devices;
using MeshSim.Placement;

namespace MeshSim.Dropouts;

/// <summary>Plug a further router in.</summary>
/// <param name="Network">The network.</param>
/// <param name="At">The outlet.</param>
public sealed record AddRepeater(NetworkName Network, Outlet At) : Fix
{
    /// <summary>The new device's id.</summary>
    public DeviceId Id => new($"repeater-{At.Id}");

    /// <inheritdoc/>
    public override string Words => $"plug a repeater into {Place(At)}";

    /// <inheritdoc/>
    public override bool TouchesWiring => At.IsAssumed;

    /// <inheritdoc/>
    public override Home On(Home home) => home with
    {
        Devices = home.Devices.Add(new()
        {
            Id = Id,
            Name = "repeater",
            Network = Network,
            Kind = "repeater",
            Power = PowerSource.Mains,
            Role = Role.Router,
            Storey = At.Storey,
            Point = At.Point,
            HeightMetres = At.HeightMetres,
            Room = At.Room,
            Mounting = InTheOpen.In(home),
            Circuit = At.Circuit,
        }),
    };
}

/// <summary>Put the network's coordinator elsewhere, in the open.</summary>
/// <param name="Coordinator">The coordinator.</param>
/// <param name="To">The outlet beside which it goes.</param>
public sealed record MoveCoordinator(DeviceId Coordinator, Outlet To) : Fix
{
    /// <inheritdoc/>
    public override string Words => $"move the coordinator {Coordinator} to {Place(To)}, in the open";

    /// <inheritdoc/>
    public override bool ConcernsAll => true;

    /// <inheritdoc/>
    public override bool TouchesWiring => To.IsAssumed;

    /// <inheritdoc/>
    public override Home On(Home home) => With(home, Coordinator, device => HubSites.MovedTo(home, device, To));
}

/// <summary>Change the channel of a network.</summary>
/// <param name="Network">The network.</param>
/// <param name="Channel">Its new channel.</param>
public sealed record ChangeChannel(NetworkName Network, int Channel) : Fix
{
    /// <inheritdoc/>
    public override string Words => FormattableString.Invariant($"set network {Network} to channel {Channel}");

    /// <inheritdoc/>
    public override bool ConcernsAll => true;

    /// <inheritdoc/>
    public override Home On(Home home) => home with
    {
        Networks = [.. home.Networks.Select(network => network.Name == Network ? network with { Channel = Channel } : network)],
    };
}
