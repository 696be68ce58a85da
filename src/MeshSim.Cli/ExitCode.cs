namespace MeshSim.Cli;

/// <summary>What the program tells its caller.</summary>
internal enum ExitCode
{
    /// <summary>Done.</summary>
    Done = 0,

    /// <summary>Done, and the goal is not met: a device is unreachable, or a state that must hold drops one.</summary>
    GoalNotMet = 1,

    /// <summary>The command line, the home folder or the place for the output is wrong; nothing was written.</summary>
    BadInput = 2,

    /// <summary>A fault of the program.</summary>
    InternalError = 3,

    /// <summary>The person stopped the run; nothing was written. The number that shells use for it.</summary>
    Stopped = 130,
}
