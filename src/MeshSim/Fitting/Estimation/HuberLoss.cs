using MeshSim.Radio;

namespace MeshSim.Fitting.Estimation;

/// <summary>
/// The loss of P. J. Huber (Annals of Mathematical Statistics 35, 1964): half the square of a residual up to a bend, a straight
/// line beyond, so that a reading gone wrong pulls no harder than one at the bend. Residuals are in standard deviations.
/// </summary>
/// <param name="bend">Where the line begins; infinite makes it least squares.</param>
public sealed class HuberLoss(double bend)
{
    /// <summary>95 % of the efficiency of least squares when nothing is wrong (Huber, Robust Statistics, 1981).</summary>
    public const double UsualBend = 1.345;

    /// <summary>Beyond this, the tail of a normal distribution is told from 0 by its expansion only.</summary>
    private const double FarTail = 35;

    /// <summary>No robustness.</summary>
    public static readonly HuberLoss LeastSquares = new(double.PositiveInfinity);

    /// <summary>The usual one.</summary>
    public static readonly HuberLoss Usual = new(UsualBend);

    private readonly double censoredBend = double.IsInfinity(bend) ? double.PositiveInfinity : BendOfCensored(bend);

    /// <summary>Mean of the square of <see cref="Slope"/> over a normal distribution.</summary>
    public double MeanSquareSlope { get; } = SquareSlopeBelow(bend, double.PositiveInfinity);

    /// <summary>The loss of a residual.</summary>
    public double Of(double residual)
    {
        double size = Math.Abs(residual);
        return size <= bend ? size * size / 2 : (bend * size) - (bend * bend / 2);
    }

    /// <summary>Its derivative: the residual, held within the bends.</summary>
    public double Slope(double residual) => Math.Clamp(residual, -bend, bend);

    /// <summary>The weight in least squares that gives the same slope.</summary>
    public double Weight(double residual) => Math.Abs(residual) <= bend ? 1 : bend / Math.Abs(residual);

    /// <summary>Whether a residual lies on the curved part, where a change of it still says something.</summary>
    public bool IsCurved(double residual) => Math.Abs(residual) <= bend;

    /// <summary>
    /// The loss of an observation of which only a limit is known: −ln Φ(−excess), continued in a straight line where its slope
    /// reaches the bend.
    /// </summary>
    /// <param name="excess">By how much the prediction lies above the limit, in standard deviations.</param>
    public double OfCensored(double excess) => excess <= censoredBend
        ? MinusLogTail(excess)
        : MinusLogTail(censoredBend) + (bend * (excess - censoredBend));

    /// <summary>Derivative of <see cref="OfCensored"/>.</summary>
    public double CensoredSlope(double excess) => excess <= censoredBend ? Hazard(excess) : bend;

    /// <summary>Second derivative of <see cref="OfCensored"/>; 0 on its straight part.</summary>
    public double CensoredCurvature(double excess)
    {
        if (excess > censoredBend) return 0;
        double hazard = Hazard(excess);
        return hazard * (hazard - excess);
    }

    /// <summary>Mean of the square of <see cref="Slope"/> over what a normal distribution has below the limit of a censored observation.</summary>
    public double CensoredMeanSquareSlope(double excess)
    {
        double below = NormalDistribution.Tail(excess);
        return -excess <= -bend || below < 1e-12 ? Math.Min(bend * bend, Math.Max(0, excess) * Math.Max(0, excess)) : SquareSlopeBelow(bend, -excess) / below;
    }

    /// <summary>Density over upper tail of the normal distribution.</summary>
    private static double Hazard(double x) => x > FarTail
        ? x + (1 / x) - (2 / (x * x * x)) + (10 / Math.Pow(x, 5))
        : Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI) / NormalDistribution.Tail(x);

    private static double MinusLogTail(double x) => x > FarTail
        ? (x * x / 2) + Math.Log(Hazard(x)) + (Math.Log(2 * Math.PI) / 2)
        : -Math.Log(NormalDistribution.Tail(x));

    private static double BendOfCensored(double slope)
    {
        (double low, double high) = (-10, slope); // The hazard of x lies above x.
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (Hazard(middle) < slope) low = middle;
            else high = middle;
        }

        return low;
    }

    /// <summary>∫ min(x², bend²) φ(x) dx up to a limit.</summary>
    private static double SquareSlopeBelow(double bend, double limit)
    {
        if (double.IsInfinity(bend)) return Squares(limit);
        double sum = bend * bend * Below(Math.Min(limit, -bend));
        if (limit > -bend) sum += Squares(Math.Min(limit, bend)) - Squares(-bend);
        if (limit > bend) sum += bend * bend * (Below(limit) - Below(bend));
        return sum;
    }

    private static double Squares(double x) =>
        double.IsInfinity(x) ? 1 : Below(x) - (x * Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI));

    private static double Below(double x) => double.IsPositiveInfinity(x) ? 1 : NormalDistribution.Tail(-x);
}
