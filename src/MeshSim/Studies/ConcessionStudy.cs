using MeshSim.Devices;
using MeshSim.Dropouts;
using MeshSim.Mesh;
using MeshSim.Placement.Concessions;

namespace MeshSim.Studies;

/// <summary>From a network of which too much was asked to what stands in the way, and to what giving in on one point would change.</summary>
public static class ConcessionStudy
{
    /// <summary>Tells why not everything can be had; null when the coordinator has no power, for then nothing can.</summary>
    /// <param name="coverage">The network, with model and state.</param>
    /// <param name="options">Goals.</param>
    public static Infeasibility? Run(NetworkCoverage coverage, StudyOptions options)
    {
        (Home home, Network network, State? state) = (coverage.Home, coverage.Network, coverage.State);
        StateGraphs graphs = new(home, network, coverage.Model);
        if (graphs.In(state).Coordinator < 0) return null;

        StudyOptions asked = options with { Model = coverage.Model, State = state };
        Infeasibility told = new ConcessionAdvice(home, network, graphs, state, asked.Goals.Held(home, state), asked.Goals).Tell();
        IEnumerable<Network> others = told.Devices.IsEmpty ? [] : home.Networks.Where(other => other.Name != network.Name && !FixCandidates.IsSameBand(other, network));
        return told with
        {
            Concessions = Infeasibility.BestFirst([.. told.Concessions, .. others.Select(other => new NetworkExchange(home, network, other, asked).Try(told.Devices))]),
        };
    }
}
