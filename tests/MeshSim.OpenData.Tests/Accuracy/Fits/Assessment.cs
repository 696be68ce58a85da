using System.Collections.Concurrent;
using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Radio;

namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>What distance alone, the catalogue and the program's fit make of one building.</summary>
internal sealed class Assessment(MeasuredBuilding building)
{
    /// <summary>Where there are more transmitters than this, several are left out together.</summary>
    public const int MostTurns = 25;

    private readonly ConcurrentDictionary<(ModelName, bool), Lazy<BuildingFit>> fits = new();
    private readonly ConcurrentDictionary<ModelName, Lazy<ImmutableArray<double>>> leftOut = new();

    /// <summary>The building.</summary>
    public MeasuredBuilding Building { get; } = building;

    /// <summary>Its heard links.</summary>
    public ImmutableArray<MeasuredLink> Heard { get; } = building.Heard;

    /// <summary>Distance alone, by plain least squares.</summary>
    public DistanceLine Line => DistanceLine.Of(Heard);

    /// <summary>Nothing fitted but one offset.</summary>
    public CatalogueLaw Catalogue(ModelName model) => CatalogueLaw.Of(Building, model, Heard);

    /// <summary>Nothing fitted at all: power as stated, antennas of a radio of the catalogue.</summary>
    public CatalogueLaw Stated(double sentDbm, RadioProfile radio) => CatalogueLaw.Stated(Building, sentDbm, radio.AntennaGain);

    /// <summary>The program's fit to all heard links.</summary>
    /// <param name="model">The model.</param>
    /// <param name="hasOffsets">Whether every fixed end has an offset of its own, as in the command; else all have one.</param>
    public BuildingFit Fitted(ModelName model, bool hasOffsets) =>
        fits.GetOrAdd((model, hasOffsets), key => new(() => BuildingFit.Of(Building, Heard, key.Item1, key.Item2))).Value;

    /// <summary>The same to all links, silent ones as levels below what the receiver needs.</summary>
    public BuildingFit FittedWithSilent(ModelName model, bool hasOffsets) => BuildingFit.Of(Building, Building.Links, model, hasOffsets);

    /// <summary>The errors of a law on all heard links.</summary>
    public ErrorFigures ErrorsOf(ILevelLaw law) => ErrorFigures.Of(law, Heard);

    /// <summary>Fitted to the links of all transmitters but one, judged on that one's, for each in turn: predicted levels in the order of the heard links.</summary>
    public ImmutableArray<double> LeftOut(ModelName model) => leftOut.GetOrAdd(model, key => new(() =>
    {
        // Where there are no walls there are many nodes, and one offset stands for all.
        BuildingFit all = Fitted(key, hasOffsets: Building.HasWalls);
        return InTurn(all.Without);
    })).Value;

    /// <summary>The same for distance alone.</summary>
    public ImmutableArray<double> LeftOutOfLine() => InTurn(places => DistanceLine.Of([.. Heard.Where(link => !places.Contains(link.From) && !places.Contains(link.To))]));

    /// <summary>The figures of levels in the order of the heard links.</summary>
    public ErrorFigures FiguresOf(IEnumerable<double> levels) => ErrorFigures.Of([.. levels.Zip(Heard, (predicted, link) => predicted - link.HeardDbm)]);

    /// <summary>Distance alone, fitted to what the publisher gave for that, judged on what was set apart.</summary>
    public ErrorFigures SetApartOfLine() => ErrorFigures.Of(DistanceLine.Of([.. Heard.Where(link => !link.IsTest)]), [.. Heard.Where(link => link.IsTest)]);

    /// <summary>The program's fit to what the publisher gave for that, judged on what was set apart.</summary>
    public ErrorFigures SetApart(ModelName model, bool hasOffsets) => ErrorFigures.Of(
        BuildingFit.Of(Building, [.. Heard.Where(link => !link.IsTest)], model, hasOffsets), [.. Heard.Where(link => link.IsTest)]);

    /// <summary>The same with the catalogue and one offset from what the publisher gave for that.</summary>
    public ErrorFigures SetApartOfCatalogue(ModelName model) =>
        ErrorFigures.Of(CatalogueLaw.Of(Building, model, [.. Heard.Where(link => !link.IsTest)]), [.. Heard.Where(link => link.IsTest)]);

    private ImmutableArray<double> InTurn(Func<IReadOnlySet<Position>, ILevelLaw> withOut)
    {
        Position[] places = [.. Heard.Select(link => link.From).Distinct()];
        int together = (int)Math.Ceiling((double)places.Length / MostTurns);
        var levels = new double[Heard.Length];
        Parallel.ForEach(places.Chunk(together), group =>
        {
            HashSet<Position> left = [.. group];
            int[] its = [.. Enumerable.Range(0, Heard.Length).Where(i => left.Contains(Heard[i].From))];
            IReadOnlyList<double> predicted = withOut(left).LevelsOf([.. its.Select(i => Heard[i])]);
            for (int i = 0; i < its.Length; i++) levels[its[i]] = predicted[i];
        });
        return [.. levels];
    }
}
