using MeshSim.Devices;

namespace MeshSim.Tests.Placement;

/// <summary>Random homes with two states that must hold.</summary>
internal static class HeldHomes
{
    /// <summary>One state that takes a circuit of some outlets and devices, one that takes single devices; the coordinator stays on.</summary>
    public static Home Of(int seed)
    {
        Home home = RandomHomes.Of(seed);
        var random = new Random(seed);
        Device[] others = [.. home.Devices.Skip(1)];
        return home with
        {
            Costs = new() { SwitchGivenUp = 10 },
            Devices = [home.Devices[0], .. home.Devices.Skip(1).Select(device => device with { Circuit = random.Next(4) == 0 ? "ring" : null })],
            Outlets = [.. home.Outlets.Select(outlet => outlet with { Circuit = random.Next(3) == 0 ? "ring" : null })],
            States =
            [
                new() { Name = "fuse", CircuitsOff = ["ring"], MustHold = true },
                new() { Name = "night", DevicesOff = [.. others.Where(device => random.Next(device.Role == Role.Router ? 2 : 3) == 0).Select(device => device.Id)], MustHold = true },
            ],
        };
    }
}
