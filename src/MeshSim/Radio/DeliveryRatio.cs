using MathNet.Numerics.Integration;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// Share of frames that arrive when the level varies from place to place by log-normal shadowing: the expectation of 1 − PER
/// over a normal distribution in decibels. Deterministic quadrature, within <see cref="Accuracy"/> of the exact integral.
/// </summary>
/// <remarks>
/// The loss curve is steep: within some 20 dB it goes from all to none. Above those the delivery is 1, below it is constant,
/// and both parts are tails of the normal distribution. Between them Gauss-Legendre rules of eight points on panels no wider
/// than half a decibel and than the standard deviation. The curve is evaluated once per receiver, so that a link costs only
/// the weights.
/// </remarks>
public sealed class DeliveryRatio
{
    /// <summary>Largest error of <see cref="At"/>, absolute; a test holds it against a fine integration.</summary>
    public const double Accuracy = 1e-10;

    /// <summary>Accepted standard deviations.</summary>
    public static readonly ValidRange ShadowingDb = new(0, 20, "dB");

    private const double WidestPanelDb = 0.5;
    private const int PointsPerPanel = 8;

    /// <summary>Where fewer frames than this are lost, or arrive, the curve counts as flat: far below <see cref="Accuracy"/>.</summary>
    private const double FlatShare = 1e-13;

    /// <summary>
    /// Levels beyond this distance from the required one count as flat even for frames so short that guessing delivers some:
    /// their curve closes in on that share as slowly as the signal sinks.
    /// </summary>
    private const double FarthestDb = 120;

    private readonly Receiver receiver;
    private readonly double sigmaDb;
    private readonly PowerLevel low;
    private readonly PowerLevel high;
    private readonly double deliveryBelow;
    private readonly (double LevelDbm, double WeightedDelivery)[] points;

    /// <summary>Prepares the curve of a receiver.</summary>
    /// <param name="receiver">The receiver.</param>
    /// <param name="shadowing">Standard deviation, within <see cref="ShadowingDb"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The standard deviation is outside its range.</exception>
    public DeliveryRatio(Receiver receiver, Decibels shadowing)
    {
        this.receiver = receiver;
        sigmaDb = ShadowingDb.Check(shadowing.Value);
        low = Walk(receiver.RequiredLevel, -WidestPanelDb, level => 1 - receiver.LossAt(level));
        high = Walk(receiver.RequiredLevel, WidestPanelDb, receiver.LossAt);
        deliveryBelow = 1 - receiver.LossAt(low);
        points = sigmaDb == 0 ? [] : Points();
    }

    /// <summary>The standard deviation of shadowing.</summary>
    public Decibels ShadowingDeviation => new(sigmaDb);

    /// <summary>The share of planning frames that arrive at a place whose shadowing is known: 1 − PER, flat beyond the steep part.</summary>
    /// <param name="level">Received level at that place.</param>
    /// <returns>0 to 1.</returns>
    public double AtPlace(PowerLevel level)
    {
        if (level <= low) return deliveryBelow;
        return level >= high ? 1 : 1 - receiver.LossAt(level);
    }

    /// <summary>The share of planning frames that arrive, expected over shadowing.</summary>
    /// <param name="median">Received level without shadowing.</param>
    /// <returns>0 to 1.</returns>
    public double At(PowerLevel median)
    {
        if (sigmaDb == 0) return 1 - receiver.LossAt(median);

        double between = 0;
        foreach ((double levelDbm, double weightedDelivery) in points)
        {
            double z = (levelDbm - median.Dbm) / sigmaDb;
            between += weightedDelivery * Math.Exp(-z * z / 2);
        }

        double below = NormalDistribution.Tail((median.Dbm - low.Dbm) / sigmaDb);
        double above = NormalDistribution.Tail((high.Dbm - median.Dbm) / sigmaDb);
        double density = 1 / (sigmaDb * Math.Sqrt(2 * Math.PI));
        return Math.Clamp((deliveryBelow * below) + (density * between) + above, 0, 1);
    }

    private static PowerLevel Walk(PowerLevel from, double stepDb, Func<PowerLevel, double> share)
    {
        PowerLevel level = from;
        while (share(level) > FlatShare && Math.Abs((level - from).Value) < FarthestDb)
            level += new Decibels(stepDb);
        return level;
    }

    private (double LevelDbm, double WeightedDelivery)[] Points()
    {
        double spanDb = (high - low).Value;
        int panels = (int)Math.Ceiling(spanDb / Math.Min(WidestPanelDb, sigmaDb));
        double panelDb = spanDb / panels;
        var rule = new GaussLegendreRule(0, panelDb, PointsPerPanel);
        return
        [
            .. from panel in Enumerable.Range(0, panels)
               from point in Enumerable.Range(0, PointsPerPanel)
               let levelDbm = low.Dbm + (panel * panelDb) + rule.GetAbscissa(point)
               select (levelDbm, rule.GetWeight(point) * (1 - receiver.LossAt(new(levelDbm)))),
        ];
    }
}
