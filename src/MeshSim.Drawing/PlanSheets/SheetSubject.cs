using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>What a set of sheets is about: one home with some of its networks, and the numbers and letters that hold on every sheet.</summary>
internal sealed class SheetSubject
{
    /// <summary>Numbers devices in the home's order, and letters its circuits by name.</summary>
    public SheetSubject(Home home, ImmutableArray<NetworkCoverage> coverages)
    {
        Home = home;
        Coverages = coverages;
        Numbers = home.Devices.Select((device, index) => (device.Id, Number: index + 1)).ToImmutableDictionary(pair => pair.Id, pair => pair.Number);
        Circuits =
        [
            .. home.Devices.Select(device => device.Circuit).Concat(home.Outlets.Select(outlet => outlet.Circuit)).OfType<string>()
                .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>The home.</summary>
    public Home Home { get; }

    /// <summary>Links and routes of the networks that are drawn.</summary>
    public ImmutableArray<NetworkCoverage> Coverages { get; }

    /// <summary>The number of each device: its place in the home's table, the same on every sheet and whatever networks are drawn.</summary>
    public ImmutableDictionary<DeviceId, int> Numbers { get; }

    /// <summary>Circuits in the order of their letters.</summary>
    public ImmutableArray<string> Circuits { get; }

    /// <summary>The device of an id.</summary>
    public Device Device(DeviceId id) => Home.Devices[Numbers[id] - 1];

    /// <summary>The letters of a circuit: a to z, then aa, ab, …; "" for none.</summary>
    public string LetterOf(string? circuit) => circuit is null ? "" : Letters(Circuits.IndexOf(circuit));

    /// <summary>The dashes of the routes of a network, pixels; 0 draws through. Networks are told apart by their strokes, in grey too.</summary>
    public float DashOf(NetworkName network)
    {
        int index = Coverages.Select(coverage => coverage.Network.Name).ToList().IndexOf(network);
        return (index % 4) switch { 0 => 0, 1 => 9, 2 => 3.5f, _ => 18 };
    }

    /// <summary>Where a circuit is isolated, or null when the home does not say.</summary>
    public string? IsolationOf(string circuit) => Home.Circuits.FirstOrDefault(known => known.Name == circuit)?.IsolatedAt;

    private static string Letters(int index) => index < 26
        ? ((char)('a' + index)).ToString()
        : Letters((index / 26) - 1) + (char)('a' + (index % 26));
}
