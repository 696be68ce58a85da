using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Tables;
using MeshSim.Files.Yaml;

namespace MeshSim.Files.Homes;

/// <summary>Checks what <c>home.yaml</c> says of things in the tables.</summary>
internal static class CrossChecks
{
    /// <summary>Each network's coordinator must be one of its devices.</summary>
    public static void Coordinators(HomeDocument home, DeviceTable devices, DiagnosticList problems)
    {
        foreach (NetworkDocument network in home.Networks)
        {
            if (network.Coordinator is not { } coordinator) continue;
            string name = KnownNames.Quote(network.Name.Name);
            if (!devices.Ids.TryGetValue(coordinator.Name, out string? actual))
            {
                string[] own = [.. devices.Ids.Where(entry => entry.Value == network.Name.Name).Select(entry => entry.Key)];
                if (devices.IsComplete)
                    problems.Error(
                        coordinator.Place,
                        $"the network {name} has no coordinator: no device is called {KnownNames.Quote(coordinator.Name)}",
                        () => KnownNames.Help(coordinator.Name, own, "devices of this network"));
            }
            else if (actual is not null && actual != network.Name.Name)
            {
                problems.Error(
                    coordinator.Place,
                    $"{KnownNames.Quote(coordinator.Name)} is in network {KnownNames.Quote(actual)}",
                    $"name a device of network {name}");
            }
        }
    }

    /// <summary>What states turn off or open must exist.</summary>
    /// <param name="home">The home.</param>
    /// <param name="devices">Its devices.</param>
    /// <param name="circuits">Every circuit of its devices and outlets.</param>
    /// <param name="problems">Takes the errors.</param>
    public static void States(HomeDocument home, DeviceTable devices, IReadOnlyCollection<string> circuits, DiagnosticList problems)
    {
        string[] openings = [.. home.Storeys.SelectMany(storey => storey.OpeningNames).Select(opening => opening.Name)];
        string[] listed = [.. circuits.Union(home.Circuits.Select(circuit => circuit.Circuit.Name))];
        foreach (StateDocument state in home.States)
        {
            Check(state.Open, openings, "door or window", problems);
            if (!devices.IsComplete) continue;
            Check(state.DevicesOff, devices.Ids.Keys, "device", problems);
            Check(state.CircuitsOff, listed, "circuit", problems);
            Check(state.SwitchesOff, devices.Switches, "switch", problems);
        }
    }

    /// <summary>A circuit that nothing is on may be a slip of the pen, and then another one has no isolation point.</summary>
    /// <param name="home">The home.</param>
    /// <param name="circuits">Every circuit of its devices and outlets.</param>
    /// <param name="problems">Takes the notices.</param>
    public static void Circuits(HomeDocument home, IReadOnlyCollection<string> circuits, DiagnosticList problems)
    {
        foreach (CircuitDocument unused in home.Circuits.Where(circuit => !circuits.Contains(circuit.Circuit.Name)))
        {
            string? meant = KnownNames.Nearest(unused.Circuit.Name, circuits);
            problems.Notice(
                unused.Place,
                $"no device and no outlet is on circuit {KnownNames.Quote(unused.Circuit.Name)}",
                meant is null ? "it is kept all the same" : $"did you mean {KnownNames.Quote(meant)}?");
        }
    }

    /// <summary>The access points of a home, each on a storey that exists and below its ceiling.</summary>
    public static ImmutableArray<AccessPoint> AccessPoints(HomeDocument home, IReadOnlyList<BuiltStorey> storeys, DiagnosticList problems)
    {
        ImmutableArray<AccessPoint>.Builder points = ImmutableArray.CreateBuilder<AccessPoint>();
        foreach (AccessPointDocument point in home.AccessPoints)
        {
            BuiltStorey? storey = storeys.FirstOrDefault(built => built.Storey.Name.Value == point.Storey.Name);
            if (storey is null && !home.AreStoreysComplete) continue;
            if (storey is null)
                problems.Error(
                    point.Storey.Place,
                    $"no storey is called {KnownNames.Quote(point.Storey.Name)}",
                    () => KnownNames.Help(point.Storey.Name, [.. storeys.Select(built => built.Storey.Name.Value)], "storeys"));
            else if (point.HeightMetres < 0 || point.HeightMetres > storey.Storey.CeilingMetres)
                problems.Error(
                    point.HeightPlace,
                    FormattableString.Invariant($"the height of the access point is {point.HeightMetres}"),
                    FormattableString.Invariant($"it must be 0 to {storey.Storey.CeilingMetres} m above the floor of its storey"));
            else
                points.Add(Made(point));
        }

        return points.ToImmutable();
    }

    private static AccessPoint Made(AccessPointDocument point) => new()
    {
        Name = point.Name,
        Storey = new(point.Storey.Name),
        Point = point.Point,
        HeightMetres = point.HeightMetres,
        Channel = point.Channel,
        WidthMegahertz = point.WidthMegahertz,
        Power = point.Power,
        Busy = point.Busy,
    };

    private static void Check(ImmutableArray<PlacedName> names, IReadOnlyCollection<string> known, string what, DiagnosticList problems)
    {
        string plural = what switch { "switch" => "switches", "door or window" => "doors and windows", _ => what + "s" };
        foreach (PlacedName name in names.Where(name => !known.Contains(name.Name)))
            problems.Error(
                name.Place,
                $"no {what} is called {KnownNames.Quote(name.Name)}",
                () => KnownNames.Help(name.Name, known, plural));
    }
}
