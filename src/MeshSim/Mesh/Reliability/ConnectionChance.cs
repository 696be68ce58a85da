using MeshSim.Devices;

namespace MeshSim.Mesh.Reliability;

/// <summary>How often a device is connected to the coordinator when shadowing is drawn again and again.</summary>
/// <param name="Device">The device.</param>
/// <param name="Connected">Draws in which it has a route within the hop limit.</param>
/// <param name="Draws">Draws in all.</param>
public sealed record ConnectionChance(DeviceId Device, int Connected, int Draws)
{
    /// <summary>The estimate, 0 to 1.</summary>
    public double Probability => (double)Connected / Draws;

    /// <summary>Where the probability lies with 95 % confidence.</summary>
    public (double Low, double High) Interval => new DrawnShare(Connected, Draws).Interval;
}
