using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>The planning loss of one construction at one frequency, against the angle of incidence.</summary>
public sealed class LossCurve
{
    /// <summary>Makes the curve of a construction.</summary>
    public LossCurve(Construction construction, Frequency frequency) => throw new NotSupportedException();

    /// <summary>Whether a material is used outside the frequencies at which it was measured.</summary>
    public bool IsExtrapolated => throw new NotSupportedException();

    /// <summary>Whether the loss is the same at every angle.</summary>
    public bool IsConstant => throw new NotSupportedException();

    /// <summary>The planning loss at an angle of incidence.</summary>
    /// <param name="cosine">Cosine of the angle between path and surface normal, 0 to 1; capped inside.</param>
    public Decibels At(double cosine) => throw new NotSupportedException();
}
