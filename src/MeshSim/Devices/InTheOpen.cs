using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Devices;

/// <summary>A device with nothing in front of it.</summary>
public static class InTheOpen
{
    /// <summary>Name of that mounting in the catalogue.</summary>
    public const string Name = "surface";

    /// <summary>The mounting that a home's devices in the open have; where there is none, the catalogue's: no loss, by definition.</summary>
    public static Mounting In(Home home) => home.Devices.Select(device => device.Mounting).FirstOrDefault(mounting => mounting.Name == Name) ?? new()
    {
        Name = Name,
        Description = "in the open",
        Losses = [.. new[] { 433.92, 868.4, 2440 }.Select(megahertz => (new Frequency(megahertz), Decibels.Zero))],
        Source = "by definition",
    };
}
