using MeshSim.Devices;
using MeshSim.Placement;
using MeshSim.Propagation;

namespace MeshSim.Studies;

/// <summary>What a study is asked beyond the home and the network.</summary>
public sealed record StudyOptions
{
    /// <summary>The path-loss model.</summary>
    public ModelName Model { get; init; } = ModelName.Detour;

    /// <summary>The state of the house; null when everything is on and every door closed.</summary>
    public State? State { get; init; }

    /// <summary>Distance between the points of a map, m.</summary>
    public double GridStepMetres { get; init; } = 0.1;

    /// <summary>Height above the floor at which a map is drawn, m: a battery sensor on a table or a hand.</summary>
    public double ProbeHeightMetres { get; init; } = 1.0;

    /// <summary>What repeaters are to achieve.</summary>
    public PlacementGoals Goals { get; init; } = PlacementGoals.Default;
}
