using MeshSim.Devices;

namespace MeshSim.Tests.Placement;

/// <summary>Random homes with two circuits, each of which a state that must hold turns off: the hub is on one of them or on neither.</summary>
internal static class TrippedHomes
{
    /// <summary>Devices and outlets on either circuit or on none; the coordinator is turned off by one of the states in three homes of four.</summary>
    public static Home Of(int seed)
    {
        Home home = RandomHomes.Of(seed);
        var random = new Random(seed);
        string?[] circuits = ["front", "back", null];
        return home with
        {
            Costs = new() { HubMove = 10 * (seed % 4), SwitchGivenUp = 10 },
            Devices = [.. home.Devices.Select((device, i) => device with { Circuit = i == 0 ? HubCircuit(seed) : Circuit(device), SwitchedBy = i == 0 && seed % 4 == 2 ? "hall" : null })],
            Outlets = [.. home.Outlets.Select(outlet => outlet with { Circuit = circuits[random.Next(3)] })],
            States =
            [
                new() { Name = "front trips", CircuitsOff = ["front"], MustHold = true },
                new() { Name = "back trips", CircuitsOff = ["back"], MustHold = true },
                new() { Name = "night", SwitchesOff = ["hall"], DevicesOff = [.. home.Devices.Skip(1).Where(_ => random.Next(4) == 0).Select(device => device.Id)], MustHold = true },
            ],
        };

        string? Circuit(Device device) => device.Role == Role.Router || random.Next(3) == 0 ? circuits[random.Next(3)] : null;
    }

    private static string? HubCircuit(int seed) => (seed % 4) switch
    {
        0 => "front",
        1 => "back",
        _ => null,
    };
}
