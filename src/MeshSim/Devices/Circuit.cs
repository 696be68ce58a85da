namespace MeshSim.Devices;

/// <summary>A mains circuit of the home, and where it is isolated.</summary>
/// <param name="Name">As devices and outlets name it; unique in the home.</param>
/// <param name="IsolatedAt">The isolation point in the person's words.</param>
public sealed record Circuit(string Name, string IsolatedAt);
