using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>Arguments and options that mean the same wherever they occur.</summary>
internal static class SharedArguments
{
    /// <summary>The home folder.</summary>
    public static Argument<string> Home() => new("home")
    {
        Description = "The home folder: home.yaml, devices.csv and what belongs to them",
        HelpName = "HOME",
    };

    /// <summary>JSON instead of text.</summary>
    public static Option<bool> Json() => new("--json") { Description = "JSON instead of text" };

    /// <summary>A file for the result.</summary>
    public static Option<string?> OutFile() => new("--out")
    {
        Description = "Write the result to a file, replaced only when the new one is complete",
        HelpName = "FILE",
    };

    /// <summary>A folder for pictures beside the result.</summary>
    /// <param name="what">What is drawn.</param>
    public static Option<string?> MapsFolder(string what) => new("--maps")
    {
        Description = $"{what}, in a folder replaced only when the new one is complete",
        HelpName = "FOLDER",
    };
}
