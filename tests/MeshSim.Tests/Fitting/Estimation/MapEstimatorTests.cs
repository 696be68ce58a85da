using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;
using MeshSim.Fitting.Estimation;

namespace MeshSim.Tests.Fitting.Estimation;

public sealed class MapEstimatorTests
{
    /// <summary>Certified values have 15 digits, of which the last two may be rounding of the copy or of the double.</summary>
    private const double CertifiedDigits = 1e-13;

    /// <summary>Longley's predictors nearly depend on each other: ten of sixteen digits go in their condition number of 5e9, and one is left for sums.</summary>
    private const double NearlyDependentDigits = 1e-5;

    private const double Rounding = 1e-9;

    /// <summary>The last step promised a gain below 1e-9, which is a move of less than 5e-5 standard errors, here of 0.13.</summary>
    private const double LastStep = 1e-5;

    public static ReproducedTable Certified { get; } = new("Fitting/certified.csv", 15, ["data", "coefficient"], row =>
    {
        (Matrix<double> design, Vector<double> observed) = Doubles(CertifiedRegression.Read(row["data"]));
        MapEstimate estimate = LeastSquares(design, observed);
        if (row["coefficient"] == "residual") return [row.Within("value", estimate.Deviation, NearlyDependentDigits)];
        int place = row.Whole("coefficient");
        return
        [
            row.Within("value", estimate.Parameters[place], NearlyDependentDigits),
            row.Within("standard_deviation", estimate.StandardError(place), NearlyDependentDigits),
        ];
    });

    public static TheoryData<string> Regressions => ["norris", "pontius", "longley"];

    [Theory]
    [MemberData(nameof(Regressions))]
    public void The_certified_values_are_those_of_exact_fractions(string name)
    {
        CertifiedRegression regression = CertifiedRegression.Read(name);

        (double[] coefficients, double[] deviations, double residual) = regression.Exact();

        ShouldEqual(coefficients, regression.Coefficients, CertifiedDigits);
        ShouldEqual(deviations, regression.Deviations, CertifiedDigits);
        ShouldEqual([residual], [regression.Residual], CertifiedDigits);
    }

    [Theory]
    [MemberData(nameof(Regressions))]
    public void Without_prior_and_bend_it_is_ordinary_least_squares_as_certified(string name)
    {
        (Matrix<double> design, Vector<double> observed) = Doubles(CertifiedRegression.Read(name));

        MapEstimate estimate = LeastSquares(design, observed);

        Certified.Rows.Where(row => row["data"] == name).SelectMany(Certified.Compare).ShouldHold();
        estimate.EffectiveParameters.Should().BeApproximately(design.ColumnCount, NearlyDependentDigits);
    }

    [Theory]
    [MemberData(nameof(Regressions))]
    public void A_library_regresses_the_same(string name)
    {
        (Matrix<double> design, Vector<double> observed) = Doubles(CertifiedRegression.Read(name));

        ShouldEqual(LeastSquares(design, observed).Parameters, MultipleRegression.QR(design, observed), NearlyDependentDigits);
    }

    [Fact]
    public void A_prior_alone_decides_where_nothing_is_observed_and_yields_as_observations_come()
    {
        // One parameter, prior 0 ± 3, observed n times as 6 with a deviation of 3: the mean of the posterior is 6 n / (n + 1).
        foreach (int count in new[] { 1, 4, 99 })
        {
            var design = Matrix<double>.Build.Dense(count, 2, (_, column) => column == 0 ? 1 : 0);
            MapEstimate estimate = new MapEstimator(
                new LinearObservations(design), [.. Enumerable.Repeat(new Observation(6), count)], [new(0, 3), new(5, 2)], HuberLoss.LeastSquares, new(3, 0, IsFixed: true)).Estimate();

            estimate.Parameters[0].Should().BeApproximately(6.0 * count / (count + 1), Rounding);
            estimate.StandardError(0).Should().BeApproximately(3 / Math.Sqrt(count + 1), Rounding);
            estimate.Parameters[1].Should().BeApproximately(5, Rounding);
            estimate.StandardError(1).Should().BeApproximately(2, Rounding);
        }
    }

    [Fact]
    public void Bounds_hold_and_the_others_make_up_for_it()
    {
        // y = 10 + p with p held at −1 or above, though −4 would fit: the constant takes the rest.
        var design = Matrix<double>.Build.Dense(4, 2, (row, column) => column == 0 || row >= 2 ? 1 : 0);
        MapEstimate estimate = new MapEstimator(
            new LinearObservations(design),
            [new(10), new(10), new(6), new(6)],
            [Prior.Flat, new(0, double.PositiveInfinity, Least: -1)],
            HuberLoss.LeastSquares,
            new(1, 0, IsFixed: true)).Estimate();

        estimate.Parameters[1].Should().Be(-1);
        estimate.Parameters[0].Should().BeApproximately(8.5, Rounding, "that is the mean of 10, 10, 7 and 7");
    }

    [Fact]
    public void One_wild_observation_pulls_no_harder_than_one_at_the_bend()
    {
        double[] sound = [.. Enumerable.Range(-10, 21).Select(value => value / 10.0)];
        MapEstimate near = Mean([.. sound, 5], HuberLoss.Usual), far = Mean([.. sound, 5000], HuberLoss.Usual);

        far.Parameters[0].Should().BeApproximately(near.Parameters[0], LastStep).And.BeLessThan(0.15);
        Mean([.. sound, 5000], HuberLoss.LeastSquares).Parameters[0].Should().BeGreaterThan(200);
    }

    [Fact]
    public void Observations_and_priors_that_decide_nothing_are_refused()
    {
        Action estimate = () => LeastSquares(Matrix<double>.Build.Dense(3, 2, 1), Vector<double>.Build.Dense(3, i => i));

        estimate.Should().Throw<ArgumentException>().WithMessage("*neither observations nor priors*");
    }

    private static MapEstimate Mean(double[] values, HuberLoss loss) => new MapEstimator(
        new LinearObservations(Matrix<double>.Build.Dense(values.Length, 1, 1)),
        [.. values.Select(value => new Observation(value))],
        [Prior.Flat],
        loss,
        new(0.6, 0, IsFixed: true)).Estimate();

    private static MapEstimate LeastSquares(Matrix<double> design, Vector<double> observed) => new MapEstimator(
        new LinearObservations(design),
        [.. observed.Select(value => new Observation(value))],
        [.. Enumerable.Repeat(Prior.Flat, design.ColumnCount)],
        HuberLoss.LeastSquares,
        new(1, 0)).Estimate();

    private static (Matrix<double> Design, Vector<double> Observed) Doubles(CertifiedRegression regression) => (
        Matrix<double>.Build.DenseOfRows(regression.Design.Select(row => row.Select(value => value.Value))),
        Vector<double>.Build.DenseOfEnumerable(regression.Observed.Select(value => value.Value)));

    private static void ShouldEqual(IEnumerable<double> ours, IEnumerable<double> expected, double share)
    {
        foreach ((double our, double value) in ours.Zip(expected)) our.Should().BeApproximately(value, share * Math.Abs(value));
    }
}
