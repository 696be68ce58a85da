using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MeshSim.Devices;
using MeshSim.Fitting.Estimation;
using MeshSim.FloorPlans;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.Fitting;

/// <summary>What is to be fitted for one network, and what is added to it as surprises turn up.</summary>
internal sealed record FitProblem
{
    /// <summary>The home, devices where they are thought to be.</summary>
    public required Home Home { get; init; }

    /// <summary>The network.</summary>
    public required Network Network { get; init; }

    /// <summary>The model.</summary>
    public required ModelName Model { get; init; }

    /// <summary>What was read.</summary>
    public required ImmutableArray<ReadPair> Pairs { get; init; }

    /// <summary>The ordinary unknowns, then the surprises found so far.</summary>
    public required ImmutableArray<PathUnknown> Unknowns { get; init; }

    /// <summary>The problem of a network, without any surprise. What no reading crosses is no unknown.</summary>
    public static FitProblem Of(Home home, Network network, ModelName model)
    {
        Network bare = network with { Fit = null };
        ImmutableArray<ReadPair> pairs = ReadPair.Of(home, bare, model);
        IPathLossModel asPlanned = home.ModelOf(bare, model, state: null);
        LossItem[] met = [.. pairs.SelectMany(pair => asPlanned.Between(home.PositionOf(pair.First), home.PositionOf(pair.Second)).Items)];
        ConstructionName[] crossed =
        [
            .. met
                .Where(item => item.Construction is not null && item.Sensitivity > 0)
                .Select(item => item.Construction!.Value)
                .Distinct()
                .OrderBy(name => name.Value, StringComparer.Ordinal),
        ];
        Device[] ends = [.. pairs.SelectMany(pair => new[] { pair.First, pair.Second }).Distinct()];
        return new()
        {
            Home = home,
            Network = bare,
            Model = model,
            Pairs = pairs,
            Unknowns =
            [
                FitPriors.Exponent(home),
                .. met.Any(item => item.Kind == LossKind.Detour) ? new[] { FitPriors.Detour(home) } : [],
                .. crossed.Where(name => home.Constructions[name].Spread > Decibels.Zero).Select(name => FitPriors.Construction(home, bare, name)),
                .. ends.Select(end => end.Mounting).DistinctBy(mounting => mounting.Name).Where(mounting => mounting.Spread > Decibels.Zero)
                    .OrderBy(mounting => mounting.Name, StringComparer.Ordinal).Select(mounting => FitPriors.Mounting(bare, mounting)),
                FitPriors.CommonOffset,
                .. Receivers(home, bare, pairs).Select(FitPriors.Offset),
            ],
        };
    }

    /// <summary>The same with one unknown more.</summary>
    public FitProblem With(PathUnknown surprise) => this with { Unknowns = Unknowns.Add(surprise) };

    /// <summary>The same with other readings.</summary>
    public FitProblem With(IEnumerable<ReadPair> pairs) => this with { Pairs = [.. pairs] };

    /// <summary>The same with a device elsewhere.</summary>
    public FitProblem WithMoved(Device moved) => this with
    {
        Home = Home with { Devices = [.. Home.Devices.Select(device => device.Id == moved.Id ? moved : device)] },
        Pairs = [.. Pairs.Select(pair => pair with { First = At(pair.First, moved), Second = At(pair.Second, moved) })],
    };

    /// <summary>The observations.</summary>
    public PathObservations Observations() => new(Home, Network, Model, Pairs, Unknowns);

    /// <summary>Fits.</summary>
    /// <param name="deviation">The scatter where it is known from another fit; null estimates it.</param>
    /// <param name="start">Where to begin: parameters of a fit with the same or fewer unknowns; null begins at the catalogue.</param>
    public MapEstimate Fit(double? deviation = null, Vector<double>? start = null)
    {
        PathObservations observations = Observations();
        ScalePrior scale = deviation is { } known
            ? new(known, 0, IsFixed: true)
            : new(Math.Max(1, Home.Parameters.Shadowing.Value), FitPriors.ShadowingWeight);
        var estimator = new MapEstimator(observations, observations.Values, [.. Unknowns.Select(unknown => unknown.Prior)], HuberLoss.Usual, scale);
        Vector<double>? full = start is null
            ? null
            : Vector<double>.Build.Dense(Unknowns.Length, i => i < start.Count ? start[i] : Unknowns[i].Prior.Mean);
        return estimator.Estimate(full);
    }

    private static IEnumerable<DeviceId> Receivers(Home home, Network network, ImmutableArray<ReadPair> pairs) => home.DevicesOf(network)
        .Select(device => device.Id)
        .Where(id => pairs.Any(pair => (pair.First.Id == id && pair.AtFirst?.Level is not null) || (pair.Second.Id == id && pair.AtSecond?.Level is not null)));

    private static Device At(Device device, Device moved) => device.Id == moved.Id ? moved : device;
}
