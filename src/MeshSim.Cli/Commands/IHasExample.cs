namespace MeshSim.Cli.Commands;

/// <summary>A command whose help shows how it is used.</summary>
internal interface IHasExample
{
    /// <summary>Lines that can be typed as they stand, or sentences, one a line.</summary>
    string Example { get; }
}
