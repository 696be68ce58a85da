using MeshSim.FloorPlans;
using MeshSim.Materials;

namespace MeshSim.Propagation.Fields;

/// <summary>What a path costs, as the field kernel needs it: numbers and curves instead of one question at a time.</summary>
public sealed record FieldPhysics
{
    /// <summary>Loss over 1 m of air, dB.</summary>
    public required double LossAtOneMetreDb { get; init; }

    /// <summary>Loss for each tenfold distance, dB.</summary>
    public required double DecibelsPerDecade { get; init; }

    /// <summary>Distance below which the loss falls no further, m.</summary>
    public required double ShortestMetres { get; init; }

    /// <summary>The planning loss of a construction against the angle.</summary>
    public required Func<ConstructionName, LossCurve> CurveOf { get; init; }

    /// <summary>The share of the sum of k floor losses that counts, k from 1.</summary>
    public required Func<int, double> FloorShare { get; init; }

    /// <summary>What the way round costs, dB; null where walls simply add up. Floors add to either.</summary>
    public double? DetourDb { get; init; }
}
