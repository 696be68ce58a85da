using MeshSim.Devices;

namespace MeshSim.Dropouts;

/// <summary>
/// Something that a person could do about a dropout: a change of the home, in words and as a function. What it is worth is found
/// out by applying it and running the study again.
/// </summary>
public abstract record Fix
{
    /// <summary>What to do, in the words of the home folder, such as "plug a repeater into loft-stairhead (loft, loft room)".</summary>
    public abstract string Words { get; }

    /// <summary>The home after the change.</summary>
    /// <param name="home">The home before it.</param>
    public abstract Home On(Home home);

    /// <summary>The network that the device belongs to afterwards; null when that does not change.</summary>
    public virtual NetworkName? MovesTo => null;

    /// <summary>Whether somebody must remember it every day, so that it is a habit and no cure.</summary>
    public virtual bool IsHabit => false;

    /// <summary>Whether it changes the network for every device, and not for the one in question alone.</summary>
    public virtual bool ConcernsAll => false;

    /// <summary>Whether it needs work on fixed mains wiring.</summary>
    public virtual bool TouchesWiring => false;

    /// <summary>The home with one of its devices changed.</summary>
    private protected static Home With(Home home, DeviceId id, Func<Device, Device> change) =>
        home with { Devices = [.. home.Devices.Select(device => device.Id == id ? change(device) : device)] };

    /// <summary>Where an outlet is, such as "loft-stairhead (loft, loft room)".</summary>
    private protected static string Place(Outlet outlet)
    {
        string room = outlet.Room is { } name ? $", {name}" : "", assumed = outlet.IsAssumed ? "; that an outlet is there is assumed" : "";
        return $"{outlet.Id} ({outlet.Storey}{room}{assumed})";
    }
}
