using MeshSim.FloorPlans;
using MeshSim.Materials;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>A building, its losses and a grid, prepared once for any number of transmitters; nothing in it changes afterwards.</summary>
internal sealed class ShadowScene
{
    private readonly WallFacets[] storeys;

    public ShadowScene(FloorPlan plan, FieldPhysics physics, FieldGrid grid)
    {
        var tracer = new CrossingTracer(plan);
        LossCurve[] curves = [.. tracer.Constructions.Select(physics.CurveOf)];
        Frame = new(grid);
        Channels = new(curves, MostConstantDb(plan, tracer, curves, physics));
        double noWallDb = physics.DetourDb is { } aroundDb ? 10 * Math.Log10(1 + Math.Pow(10, -aroundDb / 10)) : 0;
        Distance = new(
            (float)(physics.LossAtOneMetreDb + noWallDb),
            (float)(physics.DecibelsPerDecade / 2 * Math.Log10(2)),
            (float)(physics.ShortestMetres * physics.ShortestMetres),
            (float)(1 / (4 * Channels.UnitsPerDecibel)),
            physics.DetourDb is not null,
            (float)(physics.DetourDb ?? 0));
        storeys = [.. plan.Storeys.Select(storey => new WallFacets(plan, storey, tracer.Constructions.IndexOf, Channels))];
        Objects = [.. tracer.Objects.ToArray().Select(solid => (new ObjectShadows(solid, Frame), AmountOf(solid)))];
        FloorShadow[] floors = [.. tracer.Floors.ToArray().Select(floor => new FloorShadow(floor, Frame))];
        Floors = new(floors, construction => curves[construction], physics.FloorShare, Channels);

        int AmountOf(ObjectCrossings solid) => Channels.Quarters(curves[solid.Construction].At(1).Value);
    }

    public GridFrame Frame { get; }

    public DistanceLaw Distance { get; }

    public LossChannels Channels { get; }

    public FloorTerm Floors { get; }

    /// <summary>The objects with the amount of channel 0 that each costs.</summary>
    public (ObjectShadows Shadow, int Amount)[] Objects { get; }

    /// <summary>The workspace of one transmitter: one shadow caster for each storey.</summary>
    public WallShadows[] MakeCasters() => [.. storeys.Select(facets => new WallShadows(facets, Frame))];

    // Upper bound of what channel 0 can hold: everything in the building at once.
    private static double MostConstantDb(FloorPlan plan, CrossingTracer tracer, LossCurve[] curves, FieldPhysics physics)
    {
        double sumDb = 0;
        foreach (Storey storey in plan.Storeys)
            foreach (WallPanel panel in WallPanel.Of(plan, storey))
                if (curves[tracer.Constructions.IndexOf(panel.Construction)] is { IsConstant: true } curve) sumDb += curve.At(1).Value;
        foreach (ObjectCrossings solid in tracer.Objects) sumDb += curves[solid.Construction].At(1).Value;

        double floorsDb = 0;
        foreach (FloorCrossings floor in tracer.Floors) floorsDb += curves[floor.Construction].At(1).Value;
        double largestShare = Enumerable.Range(1, Math.Max(1, tracer.Floors.Length)).Max(physics.FloorShare);
        return sumDb + (floorsDb * Math.Max(1, largestShare));
    }
}
