using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MeshSim.Devices;
using MeshSim.Fitting.Estimation;
using MeshSim.FloorPlans;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;
using MeshSim.Quantities;

namespace MeshSim.Fitting;

/// <summary>
/// Readings as observations of unknowns. A pair is one observation of its path: the gain from connector to connector, the mean of
/// both directions. Where both directions were heard, their difference is another, which the path has no part in: it tells of the
/// receivers alone. And the weakest that a receiver reports of all that it hears must have arrived with what it needs: a receiver
/// cannot report much more than arrives, or it would seem to hear nothing that is weak. Without that, offsets and losses could grow
/// together for as long as unheard pairs like it.
/// </summary>
internal sealed class PathObservations : IObservationModel
{
    private readonly Home home;
    private readonly Network network;
    private readonly ModelName model;
    private readonly Dictionary<(UnknownKind, string), int> indices;
    private readonly ImmutableArray<ReadPair> bothWays;
    private readonly ImmutableArray<(DeviceId Receiver, double SpareDb)> weakest;

    /// <summary>Prepares.</summary>
    /// <param name="home">The home, devices where they are thought to be.</param>
    /// <param name="network">The network.</param>
    /// <param name="model">The model.</param>
    /// <param name="pairs">What was read.</param>
    /// <param name="unknowns">What is to be estimated.</param>
    public PathObservations(Home home, Network network, ModelName model, ImmutableArray<ReadPair> pairs, ImmutableArray<PathUnknown> unknowns)
    {
        (this.home, this.network, this.model, Pairs, Unknowns) = (home, network, model, pairs, unknowns);
        indices = unknowns.Select((unknown, i) => ((unknown.Kind, unknown.Name), i)).ToDictionary();
        bothWays = [.. pairs.Where(pair => pair.IsHeardBothWays)];
        weakest =
        [
            .. pairs.SelectMany(pair => new[] { (pair.Second.Id, Heard: pair.AtSecond), (pair.First.Id, Heard: pair.AtFirst) })
                .Where(end => end.Heard?.Level is not null)
                .GroupBy(end => end.Id, end => (end.Heard!.Level!.Value - end.Heard.Needed).Value)
                .Select(receiver => (receiver.Key, receiver.Min())),
        ];
    }

    /// <summary>The pairs: the observation of a pair's path has the pair's place here.</summary>
    public ImmutableArray<ReadPair> Pairs { get; }

    /// <summary>What is estimated.</summary>
    public ImmutableArray<PathUnknown> Unknowns { get; }

    /// <summary>What was measured.</summary>
    public ImmutableArray<Observation> Values =>
    [
        .. Pairs.Select(Path),
        .. bothWays.Select(Difference),
        .. weakest.Select(receiver => new Observation(receiver.SpareDb, IsCensored: true, FitPriors.SensitivityDb)),
    ];

    /// <summary>The place of an unknown; null when it is none of them.</summary>
    public int? IndexOf(UnknownKind kind, string name) => indices.TryGetValue((kind, name), out int index) ? index : null;

    /// <summary>How an element of the plan is called as an unknown.</summary>
    public static string ElementName(LossItem item) => $"{item.Kind.ToString().ToLowerInvariant()} {item.Name}";

    /// <inheritdoc/>
    public Predictions At(Vector<double> parameters)
    {
        IPathLossModel fitted = ModelAt(parameters);
        int rows = Pairs.Length + bothWays.Length + weakest.Length, row = 0;
        var table = new Rows(this, parameters, Vector<double>.Build.Dense(rows), Matrix<double>.Build.Dense(rows, Unknowns.Length));
        foreach (ReadPair pair in Pairs) AddPath(fitted, pair, table, row++);
        foreach (ReadPair pair in bothWays) AddOffsets(table, row++, pair, atSecond: 1, atFirst: -1);
        foreach ((DeviceId receiver, _) in weakest)
        {
            table.Add(row, UnknownKind.CommonOffset, "", 1);
            table.Add(row++, UnknownKind.Offset, receiver.Value, 1);
        }

        return new(table.Values, table.Gradients);
    }

    /// <summary>The path-loss model with some parameters, mountings not included.</summary>
    public IPathLossModel ModelAt(Vector<double> parameters)
    {
        Dictionary<ConstructionName, Decibels> corrections = [];
        for (int i = 0; i < Unknowns.Length; i++)
            if (Unknowns[i].Kind == UnknownKind.Construction) corrections[new(Unknowns[i].Name)] = new(parameters[i]);
        double exponent = Of(UnknownKind.Exponent, home.Parameters.Exponent), detourDb = Of(UnknownKind.Detour, home.Parameters.Detour.Value);
        return PathLossModels.Create(model, home.FloorPlan, home.Constructions, network.Carrier, exponent, detourDb, corrections);

        double Of(UnknownKind kind, double otherwise) => IndexOf(kind, "") is { } place ? parameters[place] : otherwise;
    }

    /// <summary>The path of a pair with some model.</summary>
    public PathLoss PathOf(IPathLossModel model, ReadPair pair) => model.Between(home.PositionOf(pair.First), home.PositionOf(pair.Second));

    private static Observation Difference(ReadPair pair) => new(
        (pair.AtSecond!.Level!.Value - pair.AtSecond.Sent).Value - (pair.AtFirst!.Level!.Value - pair.AtFirst.Sent).Value,
        Deviation: FitPriors.DirectionsDb);

    private static Observation Path(ReadPair pair)
    {
        HeardLevel[] heard = [.. Directions(pair).Where(direction => direction.Level is not null)];
        return heard.Length > 0
            ? new(heard.Average(direction => (direction.Level!.Value - direction.Sent).Value))
            : new(Directions(pair).Min(direction => (direction.Needed - direction.Sent).Value), IsCensored: true);
    }

    private static IEnumerable<HeardLevel> Directions(ReadPair pair) => new[] { pair.AtSecond, pair.AtFirst }.OfType<HeardLevel>();

    private static void AddOffsets(Rows table, int row, ReadPair pair, double atSecond, double atFirst)
    {
        if (pair.AtSecond?.Level is not null) table.Add(row, UnknownKind.Offset, pair.Second.Id.Value, atSecond);
        if (pair.AtFirst?.Level is not null) table.Add(row, UnknownKind.Offset, pair.First.Id.Value, atFirst);
    }

    private void AddPath(IPathLossModel model, ReadPair pair, Rows table, int row)
    {
        PathLoss loss = PathOf(model, pair);
        table.Values[row] += (2 * network.Radio.AntennaGain.Value) - loss.Total.Value;
        table.AddSlope(row, UnknownKind.Exponent, "", -10 * Math.Log10(Math.Max(loss.DistanceMetres, FreeSpace.DistanceMetres.Min)));
        foreach (LossItem item in loss.Items)
        {
            if (item.Kind == LossKind.Detour) table.AddSlope(row, UnknownKind.Detour, "", -item.Sensitivity);
            if (item.Construction is not { } construction) continue;
            table.AddSlope(row, UnknownKind.Construction, construction.Value, -item.Sensitivity);
            table.Add(row, UnknownKind.ElementLoss, ElementName(item), -item.Sensitivity);
        }

        foreach (Device end in new[] { pair.First, pair.Second })
        {
            table.Values[row] -= end.Mounting.LossAt(network.Carrier).Value;
            table.Add(row, UnknownKind.Mounting, end.Mounting.Name, -1);
            table.Add(row, UnknownKind.DeviceLoss, end.Id.Value, -1);
        }

        if (!pair.IsHeard) return;
        double share = pair.IsHeardBothWays ? 0.5 : 1;
        table.Add(row, UnknownKind.CommonOffset, "", 1);
        AddOffsets(table, row, pair, share, share);
    }

    /// <summary>Predictions and gradients as they are filled in.</summary>
    private sealed record Rows(PathObservations Owner, Vector<double> Parameters, Vector<double> Values, Matrix<double> Gradients)
    {
        /// <summary>A gradient whose part of the prediction the path-loss model has worked out.</summary>
        public void AddSlope(int row, UnknownKind kind, string name, double slope)
        {
            if (Owner.IndexOf(kind, name) is { } place) Gradients[row, place] += slope;
        }

        /// <summary>A linear part, gradient and prediction.</summary>
        public void Add(int row, UnknownKind kind, string name, double slope)
        {
            if (Owner.IndexOf(kind, name) is not { } place) return;
            Gradients[row, place] += slope;
            Values[row] += slope * Parameters[place];
        }
    }
}
