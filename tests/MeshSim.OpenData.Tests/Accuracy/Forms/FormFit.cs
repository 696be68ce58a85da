using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MeshSim.Fitting.Estimation;
using MeshSim.OpenData.Tests.Accuracy.Fits;

namespace MeshSim.OpenData.Tests.Accuracy.Forms;

/// <summary>Least squares for offset, exponent and the constants of a form, by the program's own estimator without priors or bend.</summary>
internal sealed class FormFit : IObservationModel
{
    // A wall costs something, and no form is meant at its edges.
    private static readonly Prior Offset = Prior.Flat, Exponent = Prior.Flat, Factor = new(1, double.PositiveInfinity, 0.05, 20), Second = new(1, double.PositiveInfinity, 0.05, 100);

    // A central difference errs by the square of it, far below what stops the search.
    private const double Difference = 1e-4;

    private const double UsualExponent = 2;

    private readonly WallForm form;
    private readonly IReadOnlyList<CountedLink> links;
    private readonly double? chosen;

    private FormFit(WallForm form, IReadOnlyList<CountedLink> links, double? chosen) => (this.form, this.links, this.chosen) = (form, links, chosen);

    /// <summary>Fitted to the links of all transmitters but one, judged on that one's, for each in turn.</summary>
    public static ErrorFigures LeftOut(WallForm form, IReadOnlyList<CountedLink> links) => ErrorFigures.Of(
    [
        .. links.Select(link => link.Link.From).Distinct().SelectMany(place =>
        {
            Vector<double> found = Of(form, [.. links.Where(link => link.Link.From != place)]);
            return links.Where(link => link.Link.From == place).Select(link => LevelDbm(form, link, found) - link.Link.HeardDbm);
        }),
    ]);

    /// <summary>Offset, exponent, factor and second constant, 0 where the form has none.</summary>
    public static Vector<double> Of(WallForm form, IReadOnlyList<CountedLink> links)
    {
        DistanceLine line = DistanceLine.Of([.. links.Select(link => link.Link)]);
        ImmutableArray<Observation> observations = [.. links.Select(link => new Observation(link.Link.HeardDbm))];
        double[] firsts = [line.OffsetDbm, UsualExponent, 1];
        return (form.Starts.IsEmpty ? [0] : form.Starts).Select(second => From(second)).MinBy(found => found.Objective).Parameters;

        (Vector<double> Parameters, double Objective) From(double second)
        {
            bool isSearched = !form.IsChosen && !form.Starts.IsEmpty;
            double[] start = isSearched ? [.. firsts, second] : firsts;
            MapEstimate found = new MapEstimator(
                new FormFit(form, links, isSearched ? null : second),
                observations,
                [.. new[] { Offset, Exponent, Factor, Second }.Take(start.Length)],
                HuberLoss.LeastSquares,
                new(Deviation: 1, Weight: 0, IsFixed: true)).Estimate(Vector<double>.Build.DenseOfArray(start));
            return (Vector<double>.Build.DenseOfEnumerable(isSearched ? found.Parameters : found.Parameters.Append(second)), found.Objective);
        }
    }

    /// <inheritdoc/>
    public Predictions At(Vector<double> parameters)
    {
        var values = Vector<double>.Build.Dense(links.Count, i => LevelDbm(form, links[i], parameters, chosen));
        var gradients = Matrix<double>.Build.Dense(links.Count, parameters.Count);
        for (int p = 0; p < parameters.Count; p++)
        {
            Vector<double> above = parameters.Clone(), below = parameters.Clone();
            above[p] += Difference;
            below[p] -= Difference;
            for (int i = 0; i < links.Count; i++) gradients[i, p] = (LevelDbm(form, links[i], above, chosen) - LevelDbm(form, links[i], below, chosen)) / (2 * Difference);
        }

        return new(values, gradients);
    }

    private static double LevelDbm(WallForm form, CountedLink link, Vector<double> parameters, double? chosen = null) =>
        parameters[0] - (parameters[1] * link.AirDb) - form.CostDb(link, parameters[2], chosen ?? parameters[3]);
}
