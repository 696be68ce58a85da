using System.Collections.Immutable;
using MathNet.Numerics.Integration;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// After how many lost ones a transmission of a frame arrives. Shadowing belongs to the place and stays for all attempts, so that retries do not help a
/// place out of reach; interference is another at each attempt. The share after m lost ones is the expectation over shadowing of
/// d (1 − d)^m, d being what arrives of a single transmission at that place.
/// </summary>
/// <remarks>Gauss-Legendre rules of eight points on panels no wider than half a decibel and than the standard deviation.</remarks>
public sealed class AttemptShares
{
    private const double WidestPanelDb = 0.5;
    private const int PointsPerPanel = 8;

    /// <summary>The normal distribution holds less than 1e-13 beyond.</summary>
    private const double FarthestSigma = 7.5;

    private readonly DeliveryRatio delivery;
    private readonly int attempts;

    /// <summary>Prepares the shares of a kind of receiver.</summary>
    /// <param name="delivery">Its loss curve and the standard deviation of shadowing.</param>
    /// <param name="attempts">How often a frame is tried, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no attempt.</exception>
    public AttemptShares(DeliveryRatio delivery, int attempts)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(attempts, 1);
        this.delivery = delivery;
        this.attempts = attempts;
    }

    /// <summary>The share of frames that arrive with the first transmission, the second, and so on. They sum to what arrives at all.</summary>
    /// <param name="median">Received level without shadowing.</param>
    /// <param name="at">What the receiver needs in which share of the time.</param>
    public ImmutableArray<double> At(PowerLevel median, Reception at)
    {
        var shares = new double[attempts];
        double sigmaDb = delivery.ShadowingDeviation.Value;
        if (sigmaDb == 0)
        {
            Add(shares, 1, ArrivingAt(median, at));
            return [.. shares];
        }

        int panels = (int)Math.Ceiling(2 * FarthestSigma * sigmaDb / Math.Min(WidestPanelDb, sigmaDb));
        double panel = 2 * FarthestSigma / panels;
        var rule = new GaussLegendreRule(0, panel, PointsPerPanel);
        for (int i = 0; i < panels * PointsPerPanel; i++)
        {
            double z = -FarthestSigma + (i / PointsPerPanel * panel) + rule.GetAbscissa(i % PointsPerPanel);
            double weight = rule.GetWeight(i % PointsPerPanel) * Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
            Add(shares, weight, ArrivingAt(median + new Decibels(sigmaDb * z), at));
        }

        return [.. shares];
    }

    private static void Add(double[] shares, double weight, double arriving)
    {
        double left = weight;
        for (int k = 0; k < shares.Length; k++, left *= 1 - arriving)
            shares[k] += left * arriving;
    }

    private double ArrivingAt(PowerLevel level, Reception at) =>
        at.Conditions.Sum(condition => condition.Share * delivery.AtPlace(level - at.RiseIn(condition)));
}
