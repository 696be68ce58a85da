using Google.OrTools.LinearSolver;

namespace MeshSim.Placement;

/// <summary>What the exact master answers.</summary>
/// <param name="Outlets">The chosen outlets in order, or null when none were found.</param>
/// <param name="LowerBound">Nothing that satisfies all cuts and stays below the cutoff costs less; infinite when there is nothing.</param>
/// <param name="Nodes">Nodes of the search tree.</param>
internal sealed record MasterAnswer(int[]? Outlets, double LowerBound, long Nodes);

/// <summary>
/// The least costly set of outlets that satisfies every cut found so far: one 0–1 variable per outlet, one row per cut. Kept twice,
/// relaxed for the simplex solver, which goes on from its last answer, and in whole numbers for the branch-and-bound solver, which most questions never
/// come to and which is therefore written down when first asked.
/// </summary>
internal sealed class HittingSetMaster : IDisposable
{
    // The table of docs/models-placement.md compares them with others on the masters of real placements.
    private const string ExactSolver = "SCIP";
    private const string RelaxedSolver = "GLOP";

    // Rows of ones leave the solver's own cutting planes nothing to gain: without them published set covers of 50 to 300 rows and
    // 500 to 3000 columns take a tenth of the time or less (scpe1 0.3 s for 9.9 s, scp62 0.3 s for 2.4 s).
    private const string Settings = "separating/maxroundsroot = 0\nseparating/maxrounds = 0";

    // After new rows the last answer is dual feasible, so the dual simplex goes on from it; preprocessing would begin anew each time. On
    // the floor of 600 outlets, 2000 cuts and two ways the relaxed masters take a tenth of the time or less for it.
    private const string RelaxedSettings = "use_dual_simplex: true use_preprocessing: false";

    private const double Half = 0.5;

    private readonly IReadOnlyList<int> costs;
    private readonly CutModel relaxed;
    private readonly Lazy<CutModel> exact;
    private readonly List<Cut> cuts = [];
    private readonly List<int> excluded = [];
    private Constraint? exactCost;

    /// <summary>Sets up a master without cuts.</summary>
    /// <param name="costs">Per outlet what choosing it costs, 0 or more.</param>
    /// <param name="exactly">Other costs that must be kept to; null for none.</param>
    /// <param name="candidates">Per outlet whether it may be chosen.</param>
    public HittingSetMaster(IReadOnlyList<int> costs, ExactCost? exactly, IReadOnlyList<bool> candidates)
    {
        this.costs = costs;
        relaxed = new(RelaxedSolver, costs, exactly, candidates);
        relaxed.Solver.SetSolverSpecificParametersAsString(RelaxedSettings);
        exact = new(() => WriteDown(new(ExactSolver, costs, exactly, candidates)));
    }

    /// <summary>How many outlets all cuts together have: what a node of the search tree goes through.</summary>
    public long Entries { get; private set; }

    /// <summary>Adds a cut.</summary>
    public void Add(Cut cut)
    {
        Entries += cut.Outlets.Length;
        cuts.Add(cut);
        relaxed.Add(cut);
        if (exact.IsValueCreated) exact.Value.Add(cut);
    }

    /// <summary>Shares of outlets, 0 to 1, that cost least while the shares of each cut sum to what it needs; null when there are none.</summary>
    public (double[] Shares, double Cost)? Relax()
    {
        if (relaxed.Solver.Solve() != Solver.ResultStatus.OPTIMAL) return null;
        return ([.. relaxed.Shares.Select(share => share?.SolutionValue() ?? 0)], relaxed.Solver.Objective().Value());
    }

    /// <summary>
    /// Per outlet by how much, at least, the cost of the last relaxed answer rises with the whole of it instead of nothing; 0 for one of
    /// which there is something.
    /// </summary>
    public double[] ReducedCosts() => [.. relaxed.Shares.Select(share => share?.ReducedCost() ?? 0)];

    /// <summary>Takes an outlet out of the choice for good.</summary>
    public void Exclude(int outlet)
    {
        excluded.Add(outlet);
        relaxed.Exclude(outlet);
        if (exact.IsValueCreated) exact.Value.Exclude(outlet);
    }

    /// <summary>Whole outlets that cost least.</summary>
    /// <param name="below">Only what costs less than this is of interest; null for no limit.</param>
    /// <param name="nodes">Nodes of the search tree after which to stop.</param>
    public MasterAnswer Solve(int? below, int nodes)
    {
        (Solver solver, Variable?[] shares) = (exact.Value.Solver, exact.Value.Shares);
        if (below is { } cutoff) exactCost!.SetUb(cutoff - 1);
        solver.SetSolverSpecificParametersAsString(FormattableString.Invariant($"{Settings}\nlimits/totalnodes = {nodes}"));
        Solver.ResultStatus status = solver.Solve();
        long seen = status is Solver.ResultStatus.NOT_SOLVED or Solver.ResultStatus.ABNORMAL ? nodes : solver.Nodes();
        if (status == Solver.ResultStatus.INFEASIBLE) return new(null, double.PositiveInfinity, seen);
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE)) return new(null, 0, seen);
        int[] chosen = [.. Enumerable.Range(0, shares.Length).Where(outlet => shares[outlet]?.SolutionValue() > Half)];
        return new(chosen, solver.Objective().BestBound(), seen);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (exact.IsValueCreated) exact.Value.Dispose();
        relaxed.Dispose();
    }

    private CutModel WriteDown(CutModel model)
    {
        exactCost = model.Solver.MakeConstraint(0, double.PositiveInfinity);
        for (int outlet = 0; outlet < costs.Count; outlet++)
            if (model.Shares[outlet] is { } share) exactCost.SetCoefficient(share, costs[outlet]);
        foreach (Cut cut in cuts) model.Add(cut);
        foreach (int outlet in excluded) model.Exclude(outlet);
        return model;
    }
}
