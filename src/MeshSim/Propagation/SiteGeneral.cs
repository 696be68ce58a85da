using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.Propagation;

/// <summary>
/// The older form of ITU-R P.1238 for homes: distance and floors only. Walls are part of its distance coefficient, so the plan
/// matters through its floors alone; a path through a stairwell meets none.
/// </summary>
public sealed class SiteGeneral : IPathLossModel
{
    private readonly CrossingTracer tracer;
    private readonly Frequency frequency;

    /// <summary>Makes up the model.</summary>
    /// <param name="plan">The building.</param>
    /// <param name="frequency">The carrier.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside <see cref="P1238.FrequencyMegahertz"/>.</exception>
    public SiteGeneral(FloorPlan plan, Frequency frequency)
    {
        P1238.FrequencyMegahertz.Check(frequency.Megahertz);
        this.frequency = frequency;
        tracer = new(plan);
    }

    /// <inheritdoc/>
    public PathLoss Between(Position from, Position to)
    {
        var path = new CrossedPath(tracer, from, to);
        double countedMetres = Math.Max(path.DistanceMetres, P1238.DistanceMetres.Min);
        double coefficient = P1238.DistanceCoefficient(BuildingUse.Residential);
        double distanceDb = P1238.LossDb(countedMetres, frequency.Megahertz, coefficient, floorLossDb: 0);
        path.AddDistance(distanceDb, P1238.IsCoefficientExtrapolated(frequency));
        double floorsDb = P1238.FloorLossDb(BuildingUse.Residential, path.Floors);
        foreach (Crossing crossing in path.Crossings)
            if (crossing.Kind == LossKind.Floor) path.Add(crossing, floorsDb / path.Floors, P1238.IsFloorLossExtrapolated(frequency), sensitivity: 0);

        return path.ToPathLoss(ModelNames.SiteGeneral);
    }
}
