using MeshSim.Placement;

namespace MeshSim.Benchmarks.Masters;

/// <summary>Which solver closes the masters of placement best: best found, bound and processor time under a limit of processor time.</summary>
internal static class MastersTable
{
    /// <summary>Processor time per solver and problem unless another is asked for, s.</summary>
    public const double LimitSeconds = 5;

    private static readonly IMasterSolver[] Solvers =
    [
        new ScipMaster("SCIP, no planes", ScipMaster.WithoutCuttingPlanes),
        new ScipMaster("SCIP as it comes", ""),
        new HighsMaster(),
        new ConstraintMaster("CP-SAT as it comes", ""),
        new ConstraintMaster("CP-SAT, all relaxed", ConstraintMaster.AllRowsRelaxed),
        new RelaxedFirstMaster(),
    ];

    public static void Print(TextWriter output, double limitSeconds)
    {
        // Once for nothing, so that no solver pays for being loaded.
        MasterProblem first = MasterProblems.OfGrid(4, 1).First();
        foreach (IMasterSolver solver in Solvers) solver.Solve(first, limitSeconds);

        Dictionary<IMasterSolver, List<MasterTrial>> all = Solvers.ToDictionary(solver => solver, _ => new List<MasterTrial>());
        output.WriteLine("master                       outlets  cuts  solver                best  bound  processor s");
        foreach (MasterProblem problem in Problems())
        {
            foreach (IMasterSolver solver in Solvers)
            {
                MasterTrial trial = solver.Solve(problem, limitSeconds);
                all[solver].Add(trial);
                string best = trial.Best is { } cost ? FormattableString.Invariant($"{cost,6}") : "  none";
                output.WriteLine(FormattableString.Invariant(
                    $"{problem.Name,-28} {problem.CandidateCount,7} {problem.Cuts.Length,5}  {solver.Name,-19} {best} {trial.LowerBound,6} {trial.ProcessorSeconds,12:0.00}"));
                output.Flush();
            }
        }

        output.WriteLine(FormattableString.Invariant($"\nsolver              proven of  processor s together, at most {limitSeconds} s each"));
        foreach (IMasterSolver solver in Solvers)
        {
            List<MasterTrial> trials = all[solver];
            output.WriteLine(FormattableString.Invariant(
                $"{solver.Name,-19} {trials.Count(trial => trial.IsProven),6} {trials.Count,2} {trials.Sum(trial => trial.ProcessorSeconds),12:0.0}"));
        }
    }

    /// <summary>One after the other: collecting them takes a search each.</summary>
    private static IEnumerable<MasterProblem> Problems()
    {
        return MasterProblems.OfLibrary()
            .Concat(new[] { 8, 10 }.SelectMany(side => MasterProblems.OfGrid(side, 1)))
            .Concat(MasterProblems.OfFloor(PlacementSize.Sparse, 6, PlacementGoals.OneWayEveryday))
            .Concat(MasterProblems.OfFloor(PlacementSize.Faint, 7, PlacementGoals.Default))
            .Concat(MasterProblems.OfFloor(PlacementSize.Sparse, 6, PlacementGoals.Default));
    }
}
