using MeshSim.Quantities;

namespace MeshSim.Devices;

/// <summary>
/// What changes of the home cost, in whole units of the person's choice: only their ratios matter. The defaults are assumed.
/// </summary>
public sealed record PlacementCosts
{
    /// <summary>Accepted costs of a repeater.</summary>
    public static readonly ValidRange RepeaterUnits = new(1, 10_000, "(units)");

    /// <summary>Accepted costs of anything else.</summary>
    public static readonly ValidRange OtherUnits = new(0, 10_000, "(units)");

    /// <summary>A repeater, bought and plugged in.</summary>
    public int Repeater { get; init; } = 20;

    /// <summary>A cable run that moves the hub away from where it is.</summary>
    public int HubMove { get; init; } = 60;

    /// <summary>Giving up a manual switch, or the habit of switching off, so that a mains device stays powered.</summary>
    public int SwitchGivenUp { get; init; } = 30;
}
