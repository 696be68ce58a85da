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
    /// <param name="exponent">Path-loss exponent of <see cref="LogDistance"/>, with or without a way round; the others have their own.</param>
    /// <param name="detourDb">What the way round costs, dB, of <see cref="ModelName.Detour"/>.</param>
    /// <param name="corrections">By how much constructions cost more than computed, as <see cref="LogDistance"/> was fitted; the others take none.</param>
    /// <exception cref="ArgumentException">No such model, a construction is missing, or frequency or exponent is out of range.</exception>
    public static IPathLossModel Create(
        ModelName name,
        FloorPlan plan,
        ImmutableDictionary<ConstructionName, Construction> constructions,
        Frequency frequency,
        double exponent,
        double detourDb = Detour.UsualDb,
        IReadOnlyDictionary<ConstructionName, Decibels>? corrections = null) => name switch
        {
            ModelName.LogDistance => new LogDistance(plan, constructions, frequency, exponent, corrections: corrections),
            ModelName.Detour => new LogDistance(plan, constructions, frequency, exponent, detourDb, corrections),
            ModelName.MultiWall => new MultiWall(plan, constructions, frequency),
            ModelName.SiteGeneral => new SiteGeneral(plan, frequency),
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no such model"),
        };

    /// <summary>What the tracer's constructions are, in the order of its indices.</summary>
    internal static IEnumerable<Construction> ConstructionsOf(
        CrossingTracer tracer, ImmutableDictionary<ConstructionName, Construction> constructions)
    {
        foreach (ConstructionName name in tracer.Constructions)
        {
            yield return constructions.TryGetValue(name, out Construction? construction)
                ? construction
                : throw new ArgumentException($"the plan names construction \"{name}\", which is not given", nameof(constructions));
        }
    }
}
