namespace MeshSim.OpenData.Tests.Accuracy.Fits;

/// <summary>Something that predicts levels.</summary>
internal interface ILevelLaw
{
    /// <summary>The predicted levels of links, in their order, dBm.</summary>
    IReadOnlyList<double> LevelsOf(IReadOnlyList<MeasuredLink> links);
}
