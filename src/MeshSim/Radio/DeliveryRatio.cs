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

    private readonly Receiver _receiver;
    private readonly double _sigmaDb;
    private readonly PowerLevel _low;
    private readonly PowerLevel _high;
    private readonly double _deliveryBelow;
    private readonly (double LevelDbm, double WeightedDelivery)[] _points;

    /// <summary>Prepares the curve of a receiver.</summary>
    /// <param name="receiver">The receiver.</param>
    /// <param name="shadowing">Standard deviation, within <see cref="ShadowingDb"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The standard deviation is outside its range.</exception>
    public DeliveryRatio(Receiver receiver, Decibels shadowing)
    {
        _receiver = receiver;
        _sigmaDb = ShadowingDb.Check(shadowing.Value);
        _low = Walk(receiver.RequiredLevel, -WidestPanelDb, level => 1 - receiver.LossAt(level));
        _high = Walk(receiver.RequiredLevel, WidestPanelDb, receiver.LossAt);
        _deliveryBelow = 1 - receiver.LossAt(_low);
        _points = _sigmaDb == 0 ? [] : Points();
    }

    /// <summary>The standard deviation of shadowing.</summary>
    public Decibels ShadowingDeviation => new(_sigmaDb);

    /// <summary>The share of planning frames that arrive at a place whose shadowing is known: 1 − PER, flat beyond the steep part.</summary>
    /// <param name="level">Received level at that place.</param>
    /// <returns>0 to 1.</returns>
    public double AtPlace(PowerLevel level)
    {
        if (level <= _low) return _deliveryBelow;
        return level >= _high ? 1 : 1 - _receiver.LossAt(level);
    }

    /// <summary>The share of planning frames that arrive, expected over shadowing.</summary>
    /// <param name="median">Received level without shadowing.</param>
    /// <returns>0 to 1.</returns>
    public double At(PowerLevel median)
    {
        if (_sigmaDb == 0) return 1 - _receiver.LossAt(median);

        double between = 0;
        foreach ((double levelDbm, double weightedDelivery) in _points)
        {
            double z = (levelDbm - median.Dbm) / _sigmaDb;
            between += weightedDelivery * Math.Exp(-z * z / 2);
        }

        double below = NormalDistribution.Tail((median.Dbm - _low.Dbm) / _sigmaDb);
        double above = NormalDistribution.Tail((_high.Dbm - median.Dbm) / _sigmaDb);
        double density = 1 / (_sigmaDb * Math.Sqrt(2 * Math.PI));
        return Math.Clamp((_deliveryBelow * below) + (density * between) + above, 0, 1);
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
        double spanDb = (_high - _low).Value;
        int panels = (int)Math.Ceiling(spanDb / Math.Min(WidestPanelDb, _sigmaDb));
        double panelDb = spanDb / panels;
        var rule = new GaussLegendreRule(0, panelDb, PointsPerPanel);
        return
        [
            .. from panel in Enumerable.Range(0, panels)
               from point in Enumerable.Range(0, PointsPerPanel)
               let levelDbm = _low.Dbm + (panel * panelDb) + rule.GetAbscissa(point)
               select (levelDbm, rule.GetWeight(point) * (1 - _receiver.LossAt(new(levelDbm)))),
        ];
    }
}
