namespace MeshSim.Placement;

/// <summary>Good choices of outlets without a proof. Whatever they return meets all goals.</summary>
internal static class ChosenSets
{
    /// <summary>
    /// Begins with every outlet and takes one after the other away where the goals allow it. Nothing can be taken from the result.
    /// </summary>
    /// <param name="goals">Goals that every outlet together meets.</param>
    /// <param name="order">All outlets, the first to go first.</param>
    /// <returns>The outlets that stay, in order.</returns>
    public static int[] Thin(IReadOnlyList<IPlacementGoal> goals, int[] order) =>
        Thin(order, stay => AreMet(goals, goals[0].Graph.Chosen(stay)));

    /// <summary>The same for anything that more outlets never undo.</summary>
    /// <param name="order">All outlets, the first to go first; together they are enough.</param>
    /// <param name="isEnough">Whether some outlets are.</param>
    public static int[] Thin(int[] order, Func<IEnumerable<int>, bool> isEnough)
    {
        // Fewer outlets never meet more, so the next outlet that must stay is found by halving.
        List<int> stay = [];
        for (int gone = 0; gone < order.Length; gone++)
        {
            int enough = gone, tooFew = order.Length + 1;
            while (tooFew - enough > 1)
            {
                int middle = enough + ((tooFew - enough) / 2);
                if (isEnough(stay.Concat(order[middle..]))) enough = middle;
                else tooFew = middle;
            }

            gone = enough;
            if (gone < order.Length) stay.Add(order[gone]);
        }

        stay.Sort();
        return [.. stay];
    }

    /// <summary>Replaces two outlets by one that costs less for as long as that can be done.</summary>
    /// <param name="goals">Goals that the chosen outlets meet.</param>
    /// <param name="costs">Per outlet what it costs.</param>
    /// <param name="chosen">The outlets.</param>
    /// <param name="isSpent">Asked before each pair: whether to leave it at that.</param>
    /// <returns>The outlets in order; the same ones when nothing was found.</returns>
    public static int[] ReplacePairs(IReadOnlyList<IPlacementGoal> goals, int[] costs, int[] chosen, Func<bool> isSpent)
    {
        while (ReplacePair(goals, costs, chosen, isSpent) is { } fewer) chosen = fewer;
        return chosen;
    }

    /// <summary>Whether a choice meets every goal.</summary>
    public static bool AreMet(IReadOnlyList<IPlacementGoal> goals, NodeSet passing)
    {
        foreach (IPlacementGoal goal in goals)
            if (!goal.IsMet(passing)) return false;
        return true;
    }

    private static int[]? ReplacePair(IReadOnlyList<IPlacementGoal> goals, int[] costs, int[] chosen, Func<bool> isSpent)
    {
        ReachGraph graph = goals[0].Graph;
        for (int i = 0; i < chosen.Length; i++)
        {
            for (int j = i + 1; j < chosen.Length; j++)
            {
                if (isSpent()) return null;
                int[] rest = [.. chosen.Where((_, index) => index != i && index != j)];
                NodeSet passing = graph.Chosen(rest);
                if (FindOne(goals, passing, costs, costs[chosen[i]] + costs[chosen[j]]) is { } outlet) return [.. rest.Append(outlet).Order()];
            }
        }

        return null;
    }

    private static int? FindOne(IReadOnlyList<IPlacementGoal> goals, NodeSet passing, int[] costs, int below)
    {
        IPlacementGoal? open = goals.FirstOrDefault(goal => !goal.IsMet(passing));
        if (open is null) return null;
        RepeaterProblem problem = open.Graph.Problem;
        foreach (int outlet in open.OutletsThatMayHelp(passing))
        {
            int node = problem.NodeOf(outlet);
            if (costs[outlet] >= below || passing.Contains(node)) continue;
            passing.Add(node);
            bool isEnough = AreMet(goals, passing);
            passing.Remove(node);
            if (isEnough) return outlet;
        }

        return null;
    }
}
