using MeshSim.Devices;

namespace MeshSim.Mesh;

/// <summary>Something that is not known exactly and that losses hang on.</summary>
/// <param name="Kind">What it belongs to.</param>
/// <param name="Name">Which construction or mounting; empty for the others.</param>
public readonly record struct LossUnknown(FittedKind Kind, string Name);

/// <summary>How the loss of one link hangs on an unknown.</summary>
/// <param name="Unknown">The unknown.</param>
/// <param name="Slope">Decibels of loss for each unit of it.</param>
/// <param name="Deviation">Its standard deviation: decibels, of the exponent its own unit.</param>
public readonly record struct LossSlope(LossUnknown Unknown, double Slope, double Deviation)
{
    /// <summary>What one standard deviation of it costs the link, dB; negative where it saves.</summary>
    public double DeviationDb => Slope * Deviation;
}
