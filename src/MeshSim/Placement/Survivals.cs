using System.Collections.Immutable;

namespace MeshSim.Placement;

/// <summary>Who must survive the loss of which router or outlet: what is wanted and can be had.</summary>
internal sealed class Survivals
{
    /// <summary>How many of a cut are needed when any one of them may fail.</summary>
    public const int Need = 2;

    private readonly NodeSet?[] devicesByLost;
    private readonly int deviceCount;

    /// <summary>Collects the demands.</summary>
    /// <param name="losses">Demands in each of which a node is lost, with the devices that every outlet together reaches then.</param>
    public Survivals(ImmutableArray<Demand> losses)
    {
        Losses = losses;
        RepeaterProblem problem = losses[0].Problem;
        deviceCount = problem.DeviceCount;
        devicesByLost = new NodeSet?[problem.NodeCount];
        foreach (Demand demand in losses)
        {
            NodeSet devices = devicesByLost[demand.Lost!.Value] = new(deviceCount);
            foreach (int device in demand.Devices) devices.Add(device);
        }
    }

    /// <summary>The demands.</summary>
    public ImmutableArray<Demand> Losses { get; }

    /// <summary>
    /// What a cut of a device becomes when the loss of any outlet of it must be survived: none of it is one too few, and one that
    /// is lost leaves none, so two are needed. An outlet whose loss cannot be survived whatever is chosen suffices alone.
    /// </summary>
    public Cut Strengthened(int[] cut, int device)
    {
        int[] alone = Array.FindAll(cut, outlet => devicesByLost[deviceCount + outlet]?.Contains(device) != true);
        return alone.Length == cut.Length ? Cut.One(cut) : new(cut, Need, alone);
    }
}
