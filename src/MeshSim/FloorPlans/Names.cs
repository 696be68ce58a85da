namespace MeshSim.FloorPlans;

/// <summary>The name of a storey, unique in its home. The default has no text and names nothing.</summary>
/// <param name="Value">The name as the person wrote it.</param>
public readonly record struct StoreyName(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}

/// <summary>The name of a room, unique in its home. The default has no text and names nothing.</summary>
/// <param name="Value">The name as the person wrote it.</param>
public readonly record struct RoomName(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}

/// <summary>The name of a construction in a catalogue, such as <c>cavity-brick</c>. The default names nothing.</summary>
/// <param name="Value">Lower-case words joined by hyphens.</param>
public readonly record struct ConstructionName(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}
