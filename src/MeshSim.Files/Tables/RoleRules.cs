using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Homes;
using MeshSim.Radio;

namespace MeshSim.Files.Tables;

/// <summary>Decides the part that a device plays.</summary>
internal static class RoleRules
{
    /// <summary>The role of a device: as stated, or as it follows from its network and its power; with an error when they contradict.</summary>
    public static Role Decide(RowReader row, DeviceId id, PowerSource power, Role? stated, NetworkDocument network, DiagnosticList problems)
    {
        SourcePlace place = row.PlaceOf("role");
        string name = KnownNames.Quote(network.Name.Name);
        bool isCoordinator = network.Coordinator?.Name == id.Value;
        bool isStar = network.Radio?.Topology == Topology.Star;
        Role role = stated ?? Default(isCoordinator, isStar, power);

        if (isCoordinator && role != Role.Coordinator)
            problems.Error(place, $"the network {name} names this device as its coordinator", "write coordinator, or leave the role blank");
        else if (!isCoordinator && role == Role.Coordinator && network.Coordinator is { } named)
            problems.Error(
                place,
                $"the network {name} has two coordinators: {KnownNames.Quote(named.Name)} and this one",
                "leave the role blank, or name this device as \"coordinator:\" in home.yaml");
        else if (isStar && role == Role.Router)
            problems.Error(
                place,
                $"the radio of network {name} has no routers: each device speaks to the coordinator itself",
                "write end device, or leave the role blank");
        else if (power == PowerSource.Battery && role != Role.EndDevice)
            problems.Error(
                row.PlaceOf("power"),
                $"a {Word(role)} listens all the time, a battery device sleeps",
                "write mains or usb, or role end device");
        return role;
    }

    private static Role Default(bool isCoordinator, bool isStar, PowerSource power)
    {
        if (isCoordinator) return Role.Coordinator;
        return isStar || power == PowerSource.Battery ? Role.EndDevice : Role.Router;
    }

    private static string Word(Role role) => DeviceTable.RoleWords.First(word => word.Value == role).Key;
}
