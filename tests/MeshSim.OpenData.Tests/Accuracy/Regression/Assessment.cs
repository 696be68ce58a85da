using System.Collections.Immutable;
using MeshSim.Radio;

namespace MeshSim.OpenData.Tests.Accuracy.Regression;

/// <summary>What the laws make of one building.</summary>
internal sealed class Assessment
{
    public Assessment(MeasuredBuilding building)
    {
        Building = building;
        Points = LevelPoint.Of(building, building.Heard);
    }

    /// <summary>The building.</summary>
    public MeasuredBuilding Building { get; }

    /// <summary>Its heard links.</summary>
    public ImmutableArray<LevelPoint> Points { get; }

    /// <summary>Nothing fitted but one offset.</summary>
    public ErrorFigures Catalogue(WallForm form) => ErrorFigures.Of(ErrorsOf(LevelLaw.Catalogue(form).WithOffsetFor(Points), Points));

    /// <summary>Nothing fitted at all: power as stated, antennas of a radio of the catalogue.</summary>
    public ErrorFigures Stated(double sentDbm, RadioProfile radio) =>
        ErrorFigures.Of(ErrorsOf(LevelLaw.Stated(sentDbm, radio.AntennaGain, Building.Carrier), Points));

    /// <summary>Fitted to all links, judged on them.</summary>
    public ErrorFigures Fitted(WallForm form) => ErrorFigures.Of(ErrorsOf(LevelFit.Of(form, Points), Points));

    /// <summary>Fitted to the links of all transmitters but one, judged on that one's, for each in turn: the predicted levels in the order of the points.</summary>
    public ImmutableArray<double> LeftOut(WallForm form)
    {
        Dictionary<string, LevelLaw> laws = Points.Select(point => point.Link.Transmitter).Distinct().ToDictionary(
            transmitter => transmitter,
            transmitter => LevelFit.Of(form, [.. Points.Where(point => point.Link.Transmitter != transmitter)]),
            StringComparer.Ordinal);
        return [.. Points.Select(point => laws[point.Link.Transmitter].At(point))];
    }

    /// <summary>The figures of <see cref="LeftOut"/>.</summary>
    public ErrorFigures LeftOutFigures(WallForm form) => ErrorFigures.Of([.. LeftOut(form).Zip(Points, (predicted, point) => predicted - point.LevelDbm)]);

    /// <summary>Fitted to what the publisher gave for that, judged on what was set apart.</summary>
    /// <param name="form">How walls enter.</param>
    /// <param name="withOffsets">Whether each transmitter has an offset of its own, learnt from the same links.</param>
    public ErrorFigures SetApart(WallForm form, bool withOffsets)
    {
        LevelPoint[] known = [.. Points.Where(point => !point.Link.IsTest)], unknown = [.. Points.Where(point => point.Link.IsTest)];
        if (!withOffsets) return ErrorFigures.Of(ErrorsOf(LevelFit.Of(form, known), unknown));

        OffsetFit fit = OffsetFit.Of(form, known);
        return ErrorFigures.Of([.. unknown.Select(point => fit.At(point) - point.LevelDbm)]);
    }

    private static double[] ErrorsOf(LevelLaw law, IEnumerable<LevelPoint> points) => [.. points.Select(point => law.At(point) - point.LevelDbm)];
}
