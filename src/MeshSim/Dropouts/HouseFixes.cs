using MeshSim.Devices;

namespace MeshSim.Dropouts;

/// <summary>Leave a door open.</summary>
/// <param name="Door">The door.</param>
public sealed record LeaveOpen(string Door) : Fix
{
    /// <inheritdoc/>
    public override string Words => $"leave the {Door} open";

    /// <inheritdoc/>
    public override bool IsHabit => true;

    /// <inheritdoc/>
    public override Home On(Home home) => home with { FloorPlan = home.FloorPlan.WithOpen([Door]) };
}

/// <summary>Keep a device powered that a state or a manual switch takes away.</summary>
/// <param name="Device">The device, a router.</param>
/// <param name="Switch">The manual switch that is bypassed; null when it has none.</param>
public sealed record KeepPowered(DeviceId Device, string? Switch) : Fix
{
    /// <inheritdoc/>
    public override string Words => Switch is null
        ? $"leave {Device} switched on at all times"
        : $"feed {Device} past the {Switch}, so that it stays powered when that is off";

    /// <inheritdoc/>
    public override bool TouchesWiring => Switch is not null;

    /// <inheritdoc/>
    public override Home On(Home home) => With(home, Device, device => device with { SwitchedBy = null }) with
    {
        States = [.. home.States.Select(state => state with { DevicesOff = state.DevicesOff.RemoveAll(id => id == Device) })],
    };
}
