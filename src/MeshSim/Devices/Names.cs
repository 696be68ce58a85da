namespace MeshSim.Devices;

/// <summary>Identifies a device in its home. Ordered by its text, byte by byte. The default identifies nothing.</summary>
/// <param name="Value">The id as the person wrote it.</param>
public readonly record struct DeviceId(string Value) : IComparable<DeviceId>
{
    /// <inheritdoc/>
    public int CompareTo(DeviceId other) => string.CompareOrdinal(Value, other.Value);

    /// <inheritdoc/>
    public override string ToString() => Value;

#pragma warning disable CS1591 // The operators follow CompareTo.
    public static bool operator <(DeviceId a, DeviceId b) => a.CompareTo(b) < 0;
    public static bool operator >(DeviceId a, DeviceId b) => a.CompareTo(b) > 0;
    public static bool operator <=(DeviceId a, DeviceId b) => a.CompareTo(b) <= 0;
    public static bool operator >=(DeviceId a, DeviceId b) => a.CompareTo(b) >= 0;
#pragma warning restore CS1591
}

/// <summary>Identifies an outlet in its home. The default identifies nothing.</summary>
/// <param name="Value">The id as the person wrote it.</param>
public readonly record struct OutletId(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}

/// <summary>The name of a network. The default names nothing.</summary>
/// <param name="Value">The name as the person wrote it.</param>
public readonly record struct NetworkName(string Value)
{
    /// <inheritdoc/>
    public override string ToString() => Value;
}
