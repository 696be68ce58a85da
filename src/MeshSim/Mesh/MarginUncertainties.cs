using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;
using MeshSim.Radio;

namespace MeshSim.Mesh;

/// <summary>
/// How wrong the margins of one network may be. What a path crosses is wrong together where it is built of the same construction:
/// spreads of one construction add up before squares do. What was fitted has the covariance of the fit, the rest the spread of
/// its catalogue; the exponent that of <see cref="ExponentDeviation"/>, the way round that of <see cref="DetourDb"/>.
/// </summary>
public sealed class MarginUncertainties
{
    /// <summary>
    /// Standard deviation of the path-loss exponent that a home states or leaves at its default; assumed: two of them reach from
    /// 1.4, a corridor that guides, to 2.6, a room full of things.
    /// </summary>
    public const double ExponentDeviation = 0.3;

    /// <summary>
    /// Standard deviation of what the way round the walls costs, dB; assumed: of the two buildings that were measured one lies 2 dB
    /// above the default and one some 13 dB below.
    /// </summary>
    public const double DetourDb = 8;

    private readonly NetworkFit? fit;
    private readonly Decibels shadowing;
    private readonly ImmutableDictionary<ConstructionName, Construction> constructions;

    /// <summary>Prepares a network.</summary>
    public MarginUncertainties(Home home, Network network)
    {
        fit = network.Fit;
        shadowing = home.ParametersOf(network).Shadowing;
        constructions = home.Constructions;
    }

    /// <summary>The uncertainty of a margin over a path.</summary>
    /// <param name="loss">The path, mountings included as items.</param>
    /// <param name="mountings">The mountings at its ends.</param>
    public MarginUncertainty Of(PathLoss loss, params ReadOnlySpan<Mounting> mountings)
    {
        ArgumentNullException.ThrowIfNull(loss);

        Dictionary<(FittedKind, string), double> gradient = GradientOf(loss, mountings);
        double variance = 0;
        List<(int Index, double Slope)> fitted = [];
        foreach (((FittedKind kind, string name), double slope) in InOrder(gradient))
        {
            if (fit?.IndexOf(kind, name) is { } index) fitted.Add((index, slope));
            else variance += Square(slope * DeviationOf(kind, name, mountings));
        }

        foreach ((int first, double slope) in fitted)
            foreach ((int second, double other) in fitted)
                variance += slope * other * fit!.Covariance(first, second);
        return new(shadowing, new(Math.Sqrt(Math.Max(0, variance)))); // Rounded correlations may leave a trace below 0.
    }

    /// <summary>What a margin over a path hangs on, in a fixed order: by how much the loss grows with each unknown.</summary>
    /// <param name="loss">The path, mountings included as items.</param>
    /// <param name="mountings">The mountings at its ends.</param>
    public ImmutableArray<LossSlope> SlopesOf(PathLoss loss, params ReadOnlySpan<Mounting> mountings)
    {
        ArgumentNullException.ThrowIfNull(loss);
        var slopes = ImmutableArray.CreateBuilder<LossSlope>();
        foreach (((FittedKind kind, string name), double slope) in InOrder(GradientOf(loss, mountings)))
        {
            double deviation = fit?.IndexOf(kind, name) is { } index ? fit.Parameters[index].StandardError : DeviationOf(kind, name, mountings);
            if (slope != 0 && deviation > 0) slopes.Add(new(new(kind, name), slope, deviation));
        }

        return slopes.ToImmutable();
    }

    /// <summary>By how much a path is dearer when everything that it hangs on is one standard deviation above what is computed, all at once.</summary>
    /// <param name="loss">The path, mountings included as items.</param>
    /// <param name="mountings">The mountings at its ends.</param>
    public Decibels AllDearer(PathLoss loss, params ReadOnlySpan<Mounting> mountings) => new(SlopesOf(loss, mountings).Sum(slope => slope.DeviationDb));

    /// <summary>The correlation of two unknowns: that of the fit where both were fitted, else none.</summary>
    public double Correlation(LossUnknown first, LossUnknown second)
    {
        if (first == second) return 1;
        if (PlaceOf(first) is not { } one || PlaceOf(second) is not { } other) return 0;
        return fit!.Correlations[Math.Max(one, other) - 1][Math.Min(one, other)];
    }

    private static Dictionary<(FittedKind, string), double> GradientOf(PathLoss loss, ReadOnlySpan<Mounting> mountings)
    {
        double decades = Math.Log10(Math.Max(loss.DistanceMetres, FreeSpace.DistanceMetres.Min));
        Dictionary<(FittedKind, string), double> gradient = new() { [(FittedKind.Exponent, "")] = 10 * decades };
        double detour = loss.Items.Where(item => item.Kind == LossKind.Detour).Sum(item => item.Sensitivity);
        if (detour > 0) gradient[(FittedKind.Detour, "")] = detour;
        foreach (LossItem item in loss.Items)
            if (item.Construction is { } construction) Add(gradient, (FittedKind.Construction, construction.Value), item.Sensitivity);
        foreach (Mounting mounting in mountings) Add(gradient, (FittedKind.Mounting, mounting.Name), 1);
        return gradient;
    }

    private static IOrderedEnumerable<KeyValuePair<(FittedKind, string), double>> InOrder(Dictionary<(FittedKind, string), double> gradient) =>
        gradient.OrderBy(part => part.Key.Item1).ThenBy(part => part.Key.Item2, StringComparer.Ordinal);

    private int? PlaceOf(LossUnknown unknown) => fit?.IndexOf(unknown.Kind, unknown.Name);

    private static void Add(Dictionary<(FittedKind, string), double> gradient, (FittedKind, string) parameter, double slope) =>
        gradient[parameter] = gradient.GetValueOrDefault(parameter) + slope;

    private static double Square(double value) => value * value;

    private double DeviationOf(FittedKind kind, string name, ReadOnlySpan<Mounting> mountings)
    {
        if (kind == FittedKind.Exponent) return ExponentDeviation;
        if (kind == FittedKind.Detour) return DetourDb;
        if (kind == FittedKind.Construction) return constructions.TryGetValue(new(name), out Construction? found) ? found.Spread.Value : 0;
        foreach (Mounting mounting in mountings)
            if (mounting.Name == name) return mounting.Spread.Value;
        return 0;
    }
}
