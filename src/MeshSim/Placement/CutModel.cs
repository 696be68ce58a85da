using Google.OrTools.LinearSolver;

namespace MeshSim.Placement;

/// <summary>One 0–1 variable per outlet and one row per cut, written down for one solver.</summary>
internal sealed class CutModel : IDisposable
{
    /// <summary>Sets up a model without cuts.</summary>
    /// <param name="solver">The name of the solver; whether it wants whole numbers is its own affair.</param>
    /// <param name="costs">Per outlet what choosing it costs, 0 or more.</param>
    /// <param name="exactly">Other costs that must be kept to; null for none.</param>
    /// <param name="candidates">Per outlet whether it may be chosen.</param>
    public CutModel(string solver, IReadOnlyList<int> costs, ExactCost? exactly, IReadOnlyList<bool> candidates)
    {
        Solver = Solver.CreateSolver(solver);
        Solver.SuppressOutput();
        Shares = new Variable?[costs.Count];
        Constraint? total = exactly is null ? null : Solver.MakeConstraint(exactly.Total, exactly.Total);
        bool isWhole = Solver.IsMip();
        for (int outlet = 0; outlet < Shares.Length; outlet++)
        {
            if (!candidates[outlet]) continue;
            Variable share = Solver.MakeVar(0, 1, isWhole, FormattableString.Invariant($"outlet{outlet}"));
            Shares[outlet] = share;
            Solver.Objective().SetCoefficient(share, costs[outlet]);
            total?.SetCoefficient(share, exactly!.Costs[outlet]);
        }

        Solver.Objective().SetMinimization();
    }

    /// <summary>The solver.</summary>
    public Solver Solver { get; }

    /// <summary>Per outlet how much of it is chosen; null for one that may not be.</summary>
    public Variable?[] Shares { get; }

    /// <summary>Adds a cut.</summary>
    public void Add(Cut cut)
    {
        Constraint row = Solver.MakeConstraint(cut.Need, double.PositiveInfinity);
        foreach (int outlet in cut.Outlets)
            if (Shares[outlet] is { } share) row.SetCoefficient(share, cut.WeightOf(outlet));
    }

    /// <summary>Takes an outlet out of the choice for good.</summary>
    public void Exclude(int outlet) => Shares[outlet]?.SetUb(0);

    /// <inheritdoc/>
    public void Dispose() => Solver.Dispose();
}
