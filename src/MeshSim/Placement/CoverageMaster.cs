using Google.OrTools.LinearSolver;

namespace MeshSim.Placement;

/// <summary>
/// The most that a number of outlets could cover as far as the cuts found so far tell: one 0–1 variable per outlet and per item, one
/// row per cut of an item.
/// </summary>
internal sealed class CoverageMaster : IDisposable
{
    private const string ExactSolver = "SCIP";

    // Counts are whole: an answer within half of one is exact.
    private const string Settings = "limits/absgap = 0.5\nlimits/gap = 0";
    private const double Half = 0.5;

    // The solver keeps its constraints to 1e-6; a larger value here could only weaken a bound.
    private const double SolverTolerance = 1e-3;

    private readonly Solver solver;
    private readonly Variable[] shares;
    private readonly Dictionary<CoverageItem, Variable> covered;
    private readonly Constraint count;
    private readonly Dictionary<CoverageKind, Constraint> atLeast = [];

    /// <summary>Sets up a master without cuts.</summary>
    /// <param name="outletCount">Number of outlets.</param>
    /// <param name="items">What may be covered.</param>
    public CoverageMaster(int outletCount, IReadOnlyCollection<CoverageItem> items)
    {
        solver = Solver.CreateSolver(ExactSolver);
        solver.SuppressOutput();
        shares = solver.MakeBoolVarArray(outletCount, "outlet");
        covered = items.ToDictionary(item => item, item => solver.MakeBoolVar(FormattableString.Invariant($"{item.Kind}{item.Node}")));
        count = solver.MakeConstraint(0, 0);
        foreach (Variable share in shares) count.SetCoefficient(share, 1);
        foreach (CoverageKind kind in Enum.GetValues<CoverageKind>())
        {
            Constraint row = atLeast[kind] = solver.MakeConstraint(0, double.PositiveInfinity);
            foreach ((CoverageItem item, Variable variable) in covered)
                if (item.Kind == kind) row.SetCoefficient(variable, item.Points);
        }
    }

    /// <summary>How many outlets all cuts together have: what a node of the search tree goes through.</summary>
    public long Entries { get; private set; }

    /// <summary>An item is covered only when the outlets satisfy the cut.</summary>
    public void Add(CoverageItem item, Cut cut)
    {
        Entries += cut.Outlets.Length;
        Constraint row = solver.MakeConstraint(0, double.PositiveInfinity);
        row.SetCoefficient(covered[item], -cut.Need);
        foreach (int outlet in cut.Outlets) row.SetCoefficient(shares[outlet], 1);
    }

    /// <summary>How many outlets may be chosen; nothing need be covered any more.</summary>
    public void Allow(int outlets)
    {
        count.SetUb(outlets);
        foreach (Constraint row in atLeast.Values) row.SetLb(0);
    }

    /// <summary>At least so much of a kind must be covered.</summary>
    public void Require(CoverageKind kind, int points) => atLeast[kind].SetLb(points);

    /// <summary>The outlets that could cover most of a kind, and how much nothing can exceed; null when the work ended without.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="nodes">Nodes of the search tree after which to stop.</param>
    public (int[] Outlets, int Bound, long Nodes)? Most(CoverageKind kind, int nodes)
    {
        solver.Objective().Clear();
        foreach ((CoverageItem item, Variable variable) in covered)
            if (item.Kind == kind) solver.Objective().SetCoefficient(variable, item.Points);
        solver.Objective().SetMaximization();
        solver.SetSolverSpecificParametersAsString(FormattableString.Invariant($"{Settings}\nlimits/totalnodes = {nodes}"));
        if (solver.Solve() is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE)) return null;
        int[] outlets = [.. Enumerable.Range(0, shares.Length).Where(outlet => shares[outlet].SolutionValue() > Half)];
        return (outlets, (int)Math.Floor(solver.Objective().BestBound() + SolverTolerance), solver.Nodes());
    }

    /// <inheritdoc/>
    public void Dispose() => solver.Dispose();
}
