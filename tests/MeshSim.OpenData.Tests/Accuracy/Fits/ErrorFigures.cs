namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>How far predictions lie from what was measured.</summary>
/// <param name="RmseDb">Root of the mean squared error.</param>
/// <param name="BiasDb">Mean of predicted less measured.</param>
/// <param name="MostDb">The error that 95 % of the links stay within, either way.</param>
/// <param name="MeanDb">Mean error, either way.</param>
internal sealed record ErrorFigures(double RmseDb, double BiasDb, double MostDb, double MeanDb)
{
    private const double Most = 0.95;

    /// <summary>The figures of a law on heard links.</summary>
    public static ErrorFigures Of(ILevelLaw law, IReadOnlyList<MeasuredLink> links) => Of([.. law.LevelsOf(links).Zip(links, (predicted, link) => predicted - link.HeardDbm)]);

    /// <summary>The figures of errors, predicted less measured, dB.</summary>
    public static ErrorFigures Of(IReadOnlyCollection<double> errorsDb)
    {
        double[] sizes = [.. errorsDb.Select(Math.Abs).Order()];
        return new(Math.Sqrt(errorsDb.Average(error => error * error)), errorsDb.Average(), sizes[(int)Math.Ceiling(Most * sizes.Length) - 1], sizes.Average());
    }
}
