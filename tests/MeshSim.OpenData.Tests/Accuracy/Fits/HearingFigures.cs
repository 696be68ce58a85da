namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>How well "these two hear each other" is predicted.</summary>
/// <param name="Precision">Of those predicted to hear each other, the share that does.</param>
/// <param name="Recall">Of those that do, the share that was predicted.</param>
/// <param name="Both">Predicted and heard.</param>
/// <param name="OnlyPredicted">Predicted, not heard.</param>
/// <param name="OnlyHeard">Heard, not predicted.</param>
/// <param name="Neither">Neither.</param>
internal sealed record HearingFigures(double Precision, double Recall, int Both, int OnlyPredicted, int OnlyHeard, int Neither)
{
    /// <summary>The harmonic mean of precision and recall.</summary>
    public double F1 => 2 * Precision * Recall / (Precision + Recall);

    /// <summary>The figures of pairs of what was predicted and what was heard.</summary>
    public static HearingFigures Of(IReadOnlyCollection<(bool IsPredicted, bool IsHeard)> pairs)
    {
        int both = pairs.Count(pair => pair is (true, true)), predicted = pairs.Count(pair => pair.IsPredicted), heard = pairs.Count(pair => pair.IsHeard);
        return new((double)both / predicted, (double)both / heard, both, predicted - both, heard - both, pairs.Count - predicted - heard + both);
    }

    /// <summary>The figures of a law over all links of a building, heard from a level on.</summary>
    public static HearingFigures Of(ILevelLaw law, MeasuredBuilding building, double heardFromDbm) =>
        Of([.. law.LevelsOf(building.Links).Zip(building.Links, (predicted, link) =>
            (predicted >= heardFromDbm, link.LevelDbm is { } levelDbm && levelDbm >= heardFromDbm))]);
}
