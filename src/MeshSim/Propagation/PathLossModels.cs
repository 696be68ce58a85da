using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Quantities;

namespace MeshSim.Propagation;

/// <summary>Makes up a path-loss model for a building and a frequency.</summary>
public static class PathLossModels
{
    /// <summary>Makes up the model of that name.</summary>
    /// <param name="name">Which one.</param>
    /// <param name="plan">The building.</param>
    /// <param name="constructions">All constructions that the building names.</param>
    /// <param name="frequency">The carrier.</param>
    /// <param name="exponent">Path-loss exponent of <see cref="ModelName.LogDistance"/>; the others have their own.</param>
    public static IPathLossModel Create(
        ModelName name,
        FloorPlan plan,
        ImmutableDictionary<ConstructionName, Construction> constructions,
        Frequency frequency,
        double exponent) => throw new NotSupportedException();
}
