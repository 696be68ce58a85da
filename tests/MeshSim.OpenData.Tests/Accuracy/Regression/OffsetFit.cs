namespace MeshSim.OpenData.Tests.Accuracy.Regression;

/// <summary>A law with an offset for each transmitter: what its power and antenna are worth against the others.</summary>
internal sealed class OffsetFit
{
    // Offsets and law are found in turns; each turn takes away most of what the one before left.
    private const int Turns = 12;

    private readonly Dictionary<string, double> offsetOfDb;
    private readonly LevelLaw common;

    private OffsetFit(LevelLaw common, Dictionary<string, double> offsetOfDb) => (this.common, this.offsetOfDb) = (common, offsetOfDb);

    /// <summary>Least squares over the law and all offsets.</summary>
    public static OffsetFit Of(WallForm form, IReadOnlyCollection<LevelPoint> points)
    {
        Dictionary<string, double> offsetsDb = points.Select(point => point.Link.Transmitter).Distinct().ToDictionary(name => name, _ => 0.0, StringComparer.Ordinal);
        LevelLaw law = LevelLaw.Catalogue(form);
        for (int turn = 0; turn < Turns; turn++)
        {
            law = LevelFit.Of(form, [.. points.Select(point => point with { Link = point.Link with { LevelDbm = point.LevelDbm - offsetsDb[point.Link.Transmitter] } })]);
            foreach (IGrouping<string, LevelPoint> ofOne in points.GroupBy(point => point.Link.Transmitter, StringComparer.Ordinal))
                offsetsDb[ofOne.Key] = ofOne.Average(point => point.LevelDbm - law.At(point));
        }

        return new(law, offsetsDb);
    }

    /// <summary>The level that it predicts, dBm.</summary>
    public double At(LevelPoint point) => common.At(point) + offsetOfDb[point.Link.Transmitter];
}
