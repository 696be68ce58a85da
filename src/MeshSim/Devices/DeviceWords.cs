namespace MeshSim.Devices;

/// <summary>Power sources and roles as people write them.</summary>
public static class DeviceWords
{
    /// <summary>What a device runs on.</summary>
    public static string Of(PowerSource power) => power switch
    {
        PowerSource.Mains => "mains",
        PowerSource.Battery => "battery",
        PowerSource.Usb => "usb",
        _ => throw new ArgumentOutOfRangeException(nameof(power), power, null),
    };

    /// <summary>The part that a device plays.</summary>
    public static string Of(Role role) => role switch
    {
        Role.Coordinator => "coordinator",
        Role.Router => "router",
        Role.EndDevice => "end device",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, null),
    };
}
