using System.Collections.Immutable;

namespace MeshSim.Drawing.Palettes;

/// <summary>The steps in which a field is drawn.</summary>
internal abstract class FieldScale
{
    /// <summary>All classes, lowest first.</summary>
    public abstract ImmutableArray<MarginClass> Classes { get; }

    /// <summary>The values between the classes, dB, rising.</summary>
    public abstract ImmutableArray<double> Edges { get; }

    /// <summary>The value whose contour line is the heavy one, dB.</summary>
    public abstract double HeavyDb { get; }

    /// <summary>The index of the class of a value. A value on an edge belongs to the class above it.</summary>
    public int ClassOf(double valueDb)
    {
        int index = 0;
        while (index < Edges.Length && valueDb >= Edges[index]) index++;
        return index;
    }
}
