using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>The links of at least some margin, made once for all demands that share their problem.</summary>
internal sealed class GraphsByMargin
{
    private readonly Dictionary<(RepeaterProblem, Decibels), ReachGraph> graphs = [];

    /// <summary>The links at the design margin.</summary>
    public ReachGraph Planned(Demand demand) => AtLeast(demand.Problem, demand.Problem.DesignMargin);

    /// <summary>The links of at least some margin.</summary>
    public ReachGraph AtLeast(RepeaterProblem problem, Decibels margin)
    {
        if (!graphs.TryGetValue((problem, margin), out ReachGraph? graph)) graphs[(problem, margin)] = graph = problem.LinksAtLeast(margin);
        return graph;
    }
}
