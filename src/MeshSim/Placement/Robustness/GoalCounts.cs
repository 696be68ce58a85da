namespace MeshSim.Placement.Robustness;

/// <summary>In how many draws what held.</summary>
internal sealed class GoalCounts(int nodes)
{
    /// <summary>Per <see cref="Drawn"/>: everyday every device is reached.</summary>
    public int[] Everyday { get; } = new int[3];

    /// <summary>Per <see cref="Drawn"/>: all that is asked.</summary>
    public int[] Goal { get; } = new int[3];

    /// <summary>Per node: reached everyday with both drawn.</summary>
    public int[] Connected { get; } = new int[nodes];

    /// <summary>Adds what another thread counted.</summary>
    public void Add(GoalCounts other)
    {
        for (int i = 0; i < Goal.Length; i++) (Everyday[i], Goal[i]) = (Everyday[i] + other.Everyday[i], Goal[i] + other.Goal[i]);
        for (int i = 0; i < Connected.Length; i++) Connected[i] += other.Connected[i];
    }
}
