using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Fitting;
using MeshSim.Fitting.Estimation;
using MeshSim.Propagation;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Fitting;

/// <summary>
/// Truths drawn from the priors are found again as often as standard errors promise: Harbour Flat, two hundred times. Parameters
/// that a bound holds are left out, because a standard error knows no bounds.
/// </summary>
public sealed class FitProblemTests(ITestOutputHelper output)
{
    private const int Trials = 200;

    private static readonly Home Flat = HomeFolder.Read(Path.Combine(SourceTree.Root, "floorplans", "harbour-flat")).Home!;

    [Fact]
    public void Known_parameters_are_recovered_and_intervals_cover()
    {
        var trials = new (int Inside, int Count, double ExponentError)[Trials];
        for (int trial = 0; trial < Trials; trial++) trials[trial] = Run(trial);

        double share = (double)trials.Sum(trial => trial.Inside) / trials.Sum(trial => trial.Count);
        double exponents = trials.Average(trial => Math.Abs(trial.ExponentError) < 2 ? 1.0 : 0);
        double bias = trials.Average(trial => trial.ExponentError);
        output.WriteLine(
            FormattableString.Invariant(
                $"covered {share:0.0000} of {trials.Sum(trial => trial.Count)}, exponent within two standard errors {exponents:0.000}, mean error {bias:0.000}"));
        share.Should().BeInRange(0.92, 0.98, "95 % intervals are meant");
        exponents.Should().BeGreaterThanOrEqualTo(0.95, "two standard errors are 95.4 %");
        Math.Abs(bias).Should().BeLessThan(3 / Math.Sqrt(Trials), "the mean of 200 standardised errors scatters by a fourteenth");
    }

    private static (int Inside, int Count, double ExponentError) Run(int trial)
    {
        // Seeds far apart: neighbouring ones give this generator neighbouring numbers.
        var random = new Random((trial * 7919) + 12345);
        FitProblem empty = FitProblem.Of(Flat with { Readings = [.. AllPairs()] }, Flat.Networks[0], ModelName.Detour);
        double[] truth = [.. empty.Unknowns.Select(unknown => Draw(unknown.Prior, random))];
        Network really = Flat.Networks[0] with { Fit = Truth(empty, truth) };
        var invented = new InventedReadings
        {
            Shadowing = Flat.Parameters.Shadowing,
            OffsetSpread = new(FitPriors.OffsetDb),
            CommonOffset = new(truth[empty.Observations().IndexOf(UnknownKind.CommonOffset, "")!.Value]),
        };

        int seed = random.Next();
        string[] devices = [.. Flat.DevicesOf(really).Select(device => device.Id.Value)];
        double[] offsetsDb = invented.OffsetsDb(devices.Length, seed);
        FitProblem problem = FitProblem.Of(Flat with { Readings = invented.Of(Flat, really, seed) }, Flat.Networks[0], ModelName.Detour);
        MapEstimate estimate = problem.Fit();
        double[] errors =
        [
            .. from place in Enumerable.Range(0, problem.Unknowns.Length)
               let unknown = problem.Unknowns[place]
               where unknown.Prior.Mean - unknown.Prior.Least > 2 * unknown.Prior.Deviation
               let actual = unknown.Kind == UnknownKind.Offset ? offsetsDb[Array.IndexOf(devices, unknown.Name)] : truth[empty.Unknowns.IndexOf(unknown)]
               select (estimate.Parameters[place] - actual) / estimate.StandardError(place),
        ];
        return (errors.Count(error => Math.Abs(error) < 1.96), errors.Length, errors[0]);
    }

    private static IEnumerable<Reading> AllPairs() =>
        from first in Flat.DevicesOf(Flat.Networks[0])
        from second in Flat.DevicesOf(Flat.Networks[0])
        where first.Id != second.Id && second.Power != PowerSource.Battery
        select new Reading(first.Id, second.Id, new(-60), "");

    private static double Draw(Prior prior, Random random) =>
        Math.Clamp(prior.Mean + (prior.Deviation * InventedReadings.Normal(random)), prior.Least, prior.Most);

    private static NetworkFit Truth(FitProblem problem, double[] truth) => new()
    {
        Model = ModelName.Detour,
        Readings = 0,
        Shadowing = Flat.Parameters.Shadowing,
        Correlations = [],
        Parameters =
        [
            .. from place in Enumerable.Range(0, truth.Length)
               let unknown = problem.Unknowns[place]
               where unknown.Kind is UnknownKind.Exponent or UnknownKind.Detour or UnknownKind.Construction or UnknownKind.Mounting
               select new FittedParameter(
                   unknown.Kind switch
                   {
                       UnknownKind.Exponent => FittedKind.Exponent,
                       UnknownKind.Detour => FittedKind.Detour,
                       UnknownKind.Construction => FittedKind.Construction,
                       _ => FittedKind.Mounting,
                   },
                   unknown.Name,
                   truth[place],
                   0,
                   0),
        ],
    };
}
