using System.Collections.Immutable;
using MeshSim.Fitting.Estimation;

namespace MeshSim.Fitting.Findings;

/// <summary>
/// Looks for what readings say and the plan does not: a device that loses the same everywhere, a device that is elsewhere, an
/// element built of something else. The best supported surprise is taken into the fit, then the search begins again, until
/// nothing is supported any more.
/// </summary>
internal sealed class FindingSearch
{
    /// <summary>A surprise must explain the readings better by this, natural logarithm: odds of 20 to 1 after the price of the search.</summary>
    private const double LeastSupport = 3;

    /// <summary>More surprises than this mean that the plan is of another house.</summary>
    private const int MostFindings = 8;

    /// <summary>Of the surprises of one kind, so many that look best at a glance are tried in full.</summary>
    private const int TriedInFull = 3;

    /// <summary>Fewer pairs than this cannot tell a common cause from chance.</summary>
    public const int FewestPairs = 3;

    private FitProblem problem;
    private MapEstimate estimate;

    private FindingSearch(FitProblem problem)
    {
        this.problem = problem;
        estimate = problem.Fit();
    }

    /// <summary>Searches.</summary>
    public static (FitProblem Problem, MapEstimate Estimate, ImmutableArray<Finding> Findings) Run(FitProblem problem, CancellationToken cancellation)
    {
        var search = new FindingSearch(problem);
        var found = ImmutableArray.CreateBuilder<Finding>();
        while (found.Count < MostFindings && search.Best() is { } best)
        {
            cancellation.ThrowIfCancellationRequested();
            found.Add(best.Finding);
            (search.problem, search.estimate) = (best.Problem, best.Problem.Fit(start: best.Estimate.Parameters));
        }

        return (search.problem, search.estimate, found.ToImmutable());
    }

    private Surprise? Best()
    {
        var glance = new Glance(problem, estimate);
        Surprise[] tried =
        [
            .. from kind in new[] { HiddenDevices.Candidates(glance), OtherElements.Candidates(glance), MovedDevices.Candidates(glance) }
               from candidate in kind.OrderByDescending(candidate => candidate.Support).Take(TriedInFull)
               where candidate.Support > 0
               select candidate.InFull(glance),
        ];
        Surprise? best = tried.MaxBy(surprise => surprise.Finding.Support);
        return best?.Finding.Support >= LeastSupport ? best : null;
    }
}

/// <summary>A surprise taken into the fit.</summary>
/// <param name="Finding">What it is.</param>
/// <param name="Problem">The problem with it.</param>
/// <param name="Estimate">The fit with it, at the scatter of the fit without.</param>
internal sealed record Surprise(Finding Finding, FitProblem Problem, MapEstimate Estimate);

/// <summary>A surprise that looks promising with everything else as it was fitted without it.</summary>
/// <param name="Support">What it would explain, the price of the search taken off.</param>
/// <param name="InFull">Fits everything anew with it.</param>
internal sealed record Candidate(double Support, Func<Glance, Surprise> InFull);
