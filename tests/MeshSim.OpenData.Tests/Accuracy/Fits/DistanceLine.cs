using MathNet.Numerics.LinearRegression;
using MeshSim.Propagation.Recommendations;

namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>What a model must beat: a straight line of levels over the logarithm of distance, by plain least squares.</summary>
/// <param name="OffsetDbm">The level at 1 m.</param>
/// <param name="Exponent">n.</param>
internal sealed record DistanceLine(double OffsetDbm, double Exponent) : ILevelLaw
{
    /// <summary>The line through heard links.</summary>
    public static DistanceLine Of(IReadOnlyCollection<MeasuredLink> known)
    {
        (double offset, double slope) = SimpleRegression.Fit([.. known.Select(AirDb)], [.. known.Select(link => link.HeardDbm)]);
        return new(offset, -slope);
    }

    /// <inheritdoc/>
    public IReadOnlyList<double> LevelsOf(IReadOnlyList<MeasuredLink> links) => [.. links.Select(link => OffsetDbm - (Exponent * AirDb(link)))];

    /// <summary>10 log₁₀ of the distance in metres, no shorter than free space knows.</summary>
    public static double AirDb(MeasuredLink link) => 10 * Math.Log10(Math.Max(link.From.DistanceMetresTo(link.To), FreeSpace.DistanceMetres.Min));
}
