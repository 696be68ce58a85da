namespace MeshSim.OpenData.Tests.Accuracy.Regression;

/// <summary>How walls enter a law of levels.</summary>
internal enum WallForm
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>As they add up: the model log-distance.</summary>
    Sum,

    /// <summary>As they add up until power goes round them: the model detour.</summary>
    Detour,
}
