using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.Propagation;

/// <summary>
/// COST 231 multi-wall as printed: free space, light and heavy walls by category whatever they are built of, and the floor term.
/// Closed doors and windows count as walls of their own thickness; objects are no part of that model and cost nothing.
/// </summary>
public sealed class MultiWall : IPathLossModel
{
    // Air, mineral wool and foam lie below, every board and stone above. Assumed.
    private const double SolidFromPermittivity = 1.3;

    private readonly CrossingTracer tracer;
    private readonly Cost231Loss[] wallLosses;
    private readonly Cost231Losses losses;
    private readonly Frequency frequency;

    /// <summary>Makes up the model.</summary>
    /// <param name="plan">The building.</param>
    /// <param name="constructions">All constructions that the building names.</param>
    /// <param name="frequency">The carrier.</param>
    /// <exception cref="ArgumentException">A construction is missing, or the frequency is out of range.</exception>
    public MultiWall(FloorPlan plan, ImmutableDictionary<ConstructionName, Construction> constructions, Frequency frequency)
    {
        FreeSpace.FrequencyMegahertz.Check(frequency.Megahertz);
        this.frequency = frequency;
        tracer = new(plan);
        losses = Cost231.LossesAt(frequency);
        wallLosses = [.. PathLossModels.ConstructionsOf(tracer, constructions).Select(wall => IsLight(wall) ? losses.Light : losses.Heavy)];
    }

    /// <summary>
    /// Whether a wall counts as light: less than <see cref="Cost231.LightBelowMetres"/> of solid material. Cavities and insulation
    /// do not count, because a plasterboard partition is light by that model's own definition however wide its void. A
    /// construction with stated losses has no thickness; it counts as the category whose loss is nearer at 1800 MHz.
    /// </summary>
    public static bool IsLight(Construction construction)
    {
        if (construction.Stated.IsEmpty)
            return construction.Layers.Where(IsSolid).Sum(layer => layer.ThicknessMetres) < Cost231.LightBelowMetres;
        return StatedLoss.At(construction.Stated, new(1800)).Value < (Cost231.LightWall1800Db + Cost231.HeavyWall1800Db) / 2;
    }

    /// <inheritdoc/>
    public PathLoss Between(Position from, Position to)
    {
        var path = new CrossedPath(tracer, from, to);
        double countedMetres = Math.Max(path.DistanceMetres, FreeSpace.DistanceMetres.Min);
        path.AddDistance(FreeSpace.LossDb(countedMetres, frequency.Megahertz), isExtrapolated: false);
        double floorDb = Cost231.FloorShare(path.Floors) * losses.Floor.LossDb;
        foreach (Crossing crossing in path.Crossings)
        {
            if (crossing.Kind == LossKind.Object) continue;
            bool isFloor = crossing.Kind == LossKind.Floor;
            Cost231Loss loss = isFloor ? losses.Floor : wallLosses[crossing.Construction];
            path.Add(crossing, isFloor ? floorDb : crossing.Weight * loss.LossDb, loss.IsExtrapolated, sensitivity: 0);
        }

        return path.ToPathLoss(ModelNames.MultiWall);
    }

    private static bool IsSolid(Layer layer) => layer.Material.A >= SolidFromPermittivity;
}
