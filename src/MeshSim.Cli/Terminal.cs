namespace MeshSim.Cli;

/// <summary>Where a run writes: results on one stream, everything else on the other. Tests hand in string writers.</summary>
internal sealed record Terminal
{
    /// <summary>Columns of a text that nobody watches being written.</summary>
    public const int PipedWidth = 80;

    /// <summary>Results.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Problems, notices and progress.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Columns that a table may take.</summary>
    public int Width { get; init; } = PipedWidth;

    /// <summary>Whether somebody watches the error stream.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>How long a run may take before it tells how far it is.</summary>
    public TimeSpan ProgressAfter { get; init; } = TimeSpan.FromSeconds(1);

    /// <summary>Set when the person wants the run to stop.</summary>
    public CancellationToken Stopping { get; init; }

    /// <summary>Whether an internal error shows where it happened.</summary>
    public bool Trace { get; init; }
}
