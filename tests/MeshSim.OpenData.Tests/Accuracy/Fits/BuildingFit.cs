using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using MeshSim.Devices;
using MeshSim.Fitting;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>
/// What the program's own fit makes of a building: the estimate of the command <c>fit</c> with its priors, robust, silent links
/// counted as such, without its search for what contradicts the plan. Power is stated nowhere: devices send with what leaves the catalogue no bias over the known links.
/// </summary>
internal sealed class BuildingFit : ILevelLaw
{
    private readonly MeasuredHome home;
    private readonly FitProblem problem;
    private readonly Vector<double> parameters;

    private BuildingFit(MeasuredHome home, FitProblem problem, Vector<double>? start)
    {
        this.home = home;
        this.problem = WithPower(problem);
        parameters = this.problem.Fit(start: start).Parameters;
    }

    /// <summary>Fits to links.</summary>
    /// <param name="building">The building.</param>
    /// <param name="known">The links to fit to, those without a level as well.</param>
    /// <param name="model">The model.</param>
    /// <param name="hasOffsets">Whether every fixed end has an offset of its own, as in the command; else all have one.</param>
    public static BuildingFit Of(MeasuredBuilding building, IReadOnlyCollection<MeasuredLink> known, ModelName model, bool hasOffsets)
    {
        var measured = new MeasuredHome(building, known);
        FitProblem asFit = FitProblem.Of(measured.Home, measured.Network, model);
        return new(measured, hasOffsets ? asFit : asFit with { Unknowns = [.. asFit.Unknowns.Where(unknown => unknown.Kind != UnknownKind.Offset)] }, start: null);
    }

    /// <summary>The exponent.</summary>
    public double Exponent => ValueOf(UnknownKind.Exponent) ?? throw new InvalidOperationException("every fit has an exponent");

    /// <summary>What the way round costs, dB; null where there are no walls.</summary>
    public double? DetourDb => ValueOf(UnknownKind.Detour);

    /// <summary>By how much the one construction of all walls costs more than the catalogue says, dB.</summary>
    public double? WallCorrectionDb => ValueOf(UnknownKind.Construction);

    /// <summary>Fits again to all links but those of some places.</summary>
    public BuildingFit Without(IReadOnlySet<Position> places)
    {
        HashSet<DeviceId> left = [.. places.Select(place => home.DeviceAt(place).Id)];
        return new(home, problem.With(problem.Pairs.Where(pair => !left.Contains(pair.First.Id) && !left.Contains(pair.Second.Id))), parameters);
    }

    /// <inheritdoc/>
    public IReadOnlyList<double> LevelsOf(IReadOnlyList<MeasuredLink> links)
    {
        HeardLevel heard = AnyHeard(problem.Pairs);
        ReadPair[] pairs = [.. links.Select(link => new ReadPair(home.DeviceAt(link.To), home.DeviceAt(link.From), heard, AtFirst: null))];
        Vector<double> gains = problem.With(pairs).Observations().At(parameters).Values;
        return [.. pairs.Select((_, i) => heard.Sent.Dbm + gains[i])];
    }

    private static FitProblem WithPower(FitProblem problem)
    {
        Vector<double> gains = problem.Observations().At(Vector<double>.Build.DenseOfEnumerable(problem.Unknowns.Select(unknown => unknown.Prior.Mean))).Values;
        var power = new PowerLevel(problem.Pairs.Select((pair, i) => (Heard: Levels(pair).Average(), Gain: gains[i]))
            .Where(pair => pair.Heard is not null).Average(pair => pair.Heard!.Value - pair.Gain));
        return problem.With(problem.Pairs.Select(pair => pair with { AtFirst = Sent(pair.AtFirst), AtSecond = Sent(pair.AtSecond) }));

        HeardLevel? Sent(HeardLevel? heard) => heard is null ? null : heard with { Sent = power };
    }

    private static IEnumerable<double?> Levels(ReadPair pair) => new[] { pair.AtFirst, pair.AtSecond }.Select(heard => heard?.Level?.Dbm);

    private static HeardLevel AnyHeard(ImmutableArray<ReadPair> pairs) =>
        pairs.SelectMany(pair => new[] { pair.AtFirst, pair.AtSecond }).First(heard => heard?.Level is not null)!;

    private double? ValueOf(UnknownKind kind)
    {
        int place = problem.Unknowns.ToList().FindIndex(unknown => unknown.Kind == kind);
        return place < 0 ? null : parameters[place];
    }
}
