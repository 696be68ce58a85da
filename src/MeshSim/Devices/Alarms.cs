namespace MeshSim.Devices;

/// <summary>Devices that people rely on for their lives. Nothing is proposed for them: they must not depend on such a network.</summary>
public static class Alarms
{
    private static readonly string[] Words =
        ["alarm", "smoke", "monoxide", "gas detector", "heat detector", "fire detector", "siren", "sounder", "medical", "panic"];

    /// <summary>Whether a device's id, name or kind says that it is one.</summary>
    public static bool Includes(Device device)
    {
        string said = $"{device.Kind}\n{device.Name}\n{device.Id}".Replace('-', ' ').Replace('_', ' ');
        return Words.Any(word => said.Contains(word, StringComparison.OrdinalIgnoreCase));
    }
}
