namespace MeshSim.Placement;

/// <summary>Something that chosen outlets must achieve, and that more outlets never undo.</summary>
internal interface IPlacementGoal
{
    /// <summary>The links that count.</summary>
    ReachGraph Graph { get; }

    /// <summary>Whether the loss of a chosen outlet must be survived.</summary>
    bool LosesOutlets { get; }

    /// <summary>Whether the goal is met.</summary>
    /// <param name="passing">The chosen outlets with the devices that pass frames on.</param>
    bool IsMet(NodeSet passing);

    /// <summary>Cuts that a chosen set misses; at least one when the goal is not met.</summary>
    /// <param name="chosen">The chosen outlets with the devices that pass frames on.</param>
    IEnumerable<Cut> CutsMissedBy(NodeSet chosen);

    /// <summary>Cuts that shares of outlets may miss.</summary>
    /// <param name="shares">Per outlet, how much of it is chosen, 0 to 1.</param>
    /// <param name="byShare">All outlets, the largest share first.</param>
    IEnumerable<Cut> CutsMissedBy(double[] shares, int[] byShare);

    /// <summary>Outlets of which each alone may do what is missing first; never leaves one out that would.</summary>
    /// <param name="passing">The chosen outlets with the devices that pass frames on.</param>
    IReadOnlyList<int> OutletsThatMayHelp(NodeSet passing);

    /// <summary>The nodes that can stand in for an outlet: they have power where it has and hear whatever it hears.</summary>
    NodeSet StandInsFor(int outlet);
}
