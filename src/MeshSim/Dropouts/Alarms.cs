using MeshSim.Devices;

namespace MeshSim.Dropouts;

/// <summary>Devices that people rely on for their lives. Nothing is proposed for them: they must not depend on such a network.</summary>
public static class Alarms
{
    private static readonly string[] Words = ["alarm", "smoke", "carbon monoxide", "medical", "panic"];

    /// <summary>Whether a device's id, name or kind says that it is one.</summary>
    public static bool Includes(Device device) => Words.Any(word =>
        device.Kind.Contains(word, StringComparison.OrdinalIgnoreCase)
        || device.Name.Contains(word, StringComparison.OrdinalIgnoreCase)
        || device.Id.Value.Contains(word, StringComparison.OrdinalIgnoreCase));
}
