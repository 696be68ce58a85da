using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>How far a mean level must lie above a threshold for the level to exceed it in a wanted share of cases.</summary>
public static class FadingMargin
{
    /// <summary>Accepted shares of cases in which the level must suffice.</summary>
    public static readonly ValidRange Availability = new(0.5, 0.9999, "(share of cases)");

    /// <summary>Accepted standard deviations.</summary>
    public static readonly ValidRange ShadowingDb = DeliveryRatio.ShadowingDb;

    /// <summary>Accepted ratios of the steady to the scattered power of a Rician channel.</summary>
    public static readonly ValidRange SteadyToScatteredDb = new(-40, 25, "dB");

    private const double RootAccuracyDb = 1e-12;

    /// <summary>The normal distribution holds less than 1e-22 beyond.</summary>
    private const double FarthestSigma = 10;

    private static readonly ValidRange SearchedDb = new(-20, 150, "dB");

    /// <summary>Log-normal shadowing against the median level: σ · Q⁻¹(1 − availability).</summary>
    /// <param name="shadowing">Standard deviation σ, within <see cref="ShadowingDb"/>.</param>
    /// <param name="availability">Within <see cref="Availability"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Decibels LogNormal(Decibels shadowing, double availability) =>
        new(ShadowingDb.Check(shadowing.Value) * NormalDistribution.TailQuantile(1 - Availability.Check(availability)));

    /// <summary>Rayleigh fading against the mean power: −1 / ln(availability), as a ratio.</summary>
    /// <param name="availability">Within <see cref="Availability"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The availability is outside its range.</exception>
    public static Decibels Rayleigh(double availability) => Decibels.FromPowerRatio(-1 / Math.Log(Availability.Check(availability)));

    /// <summary>Rician fading against the mean power M: outage 1 − Q₁(√(2K), √(2(1 + K)/M)), solved for M by Brent's method.</summary>
    /// <param name="steadyToScattered">K, the steady over the scattered power, within <see cref="SteadyToScatteredDb"/>.</param>
    /// <param name="availability">Within <see cref="Availability"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Decibels Rician(Decibels steadyToScattered, double availability)
    {
        SteadyToScatteredDb.Check(steadyToScattered.Value);
        double k = steadyToScattered.PowerRatio, outage = 1 - Availability.Check(availability);
        return SolveFor(outage, marginDb => RicianOutage(k, marginDb));
    }

    /// <summary>
    /// Suzuki fading, Rayleigh on log-normal shadowing, against the median of the local mean M: outage
    /// E[1 − exp(−10^(−(M + σz)/10))] over a normal z, by quadrature, solved for M by Brent's method.
    /// </summary>
    /// <param name="shadowing">Standard deviation σ of the local mean, within <see cref="ShadowingDb"/>.</param>
    /// <param name="availability">Within <see cref="Availability"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Decibels Suzuki(Decibels shadowing, double availability)
    {
        double sigmaDb = ShadowingDb.Check(shadowing.Value), outage = 1 - Availability.Check(availability);
        return SolveFor(outage, marginDb => OverShadowing(z => RayleighOutage(marginDb + (sigmaDb * z))));
    }

    /// <summary>
    /// Rician fading on log-normal shadowing, against the median of the local mean M: outage E[1 − Q₁(√(2K), √(2(1 + K)/M'))] with
    /// M' = M · 10^(σz/10) over a normal z, solved as <see cref="Suzuki"/> is. It tends to that when K vanishes.
    /// </summary>
    /// <param name="steadyToScattered">K, the steady over the scattered power, within <see cref="SteadyToScatteredDb"/>.</param>
    /// <param name="shadowing">Standard deviation σ of the local mean, within <see cref="ShadowingDb"/>.</param>
    /// <param name="availability">Within <see cref="Availability"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Decibels ShadowedRician(Decibels steadyToScattered, Decibels shadowing, double availability)
    {
        double k = new Decibels(SteadyToScatteredDb.Check(steadyToScattered.Value)).PowerRatio;
        double sigmaDb = ShadowingDb.Check(shadowing.Value), outage = 1 - Availability.Check(availability);
        if (sigmaDb == 0) return Rician(steadyToScattered, availability);
        return SolveFor(outage, marginDb => OverShadowing(z => RicianOutage(k, marginDb + (sigmaDb * z))));
    }

    private static double RicianOutage(double k, double marginDb) => MarcumQ.Complement(
        Math.Sqrt(2 * k),
        Math.Min(Math.Sqrt(2 * (1 + k) / new Decibels(marginDb).PowerRatio), MarcumQ.Amplitude.Max));

    private static double RayleighOutage(double marginDb) => -SmallDifferences.ExponentialMinusOne(-new Decibels(-marginDb).PowerRatio);

    /// <summary>Mean over a normal distribution: a smooth function on panels of half a standard deviation, eight points each.</summary>
    private static double OverShadowing(Func<double, double> value)
    {
        double sum = 0;
        for (double left = -FarthestSigma; left < FarthestSigma; left += 0.5)
            sum += GaussLegendreRule.Integrate(z => value(z) * Math.Exp(-z * z / 2), left, left + 0.5, 8);
        return sum / Math.Sqrt(2 * Math.PI);
    }

    private static Decibels SolveFor(double outage, Func<double, double> outageAt) =>
        new(Brent.FindRoot(
            marginDb => Math.Log(outageAt(marginDb)) - Math.Log(outage),
            SearchedDb.Min,
            SearchedDb.Max,
            RootAccuracyDb,
            maxIterations: 200));
}
