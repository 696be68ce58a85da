using System.Collections.Immutable;

namespace MeshSim.Files;

/// <summary>The files of a home folder.</summary>
public static class HomeFileNames
{
    /// <summary>Structure.</summary>
    public const string Home = "home.yaml";

    /// <summary>What is installed or intended.</summary>
    public const string Devices = "devices.csv";

    /// <summary>Where a repeater could go.</summary>
    public const string Outlets = "outlets.csv";

    /// <summary>What was measured.</summary>
    public const string Readings = "readings.csv";

    /// <summary>What the columns of the tables are called, where that is not as here.</summary>
    public const string Columns = "columns.yaml";

    /// <summary>What was learnt from readings.</summary>
    public const string Fit = "fit.yaml";

    /// <summary>The five that hold the home.</summary>
    public static readonly ImmutableArray<string> All = [Home, Devices, Outlets, Readings, Fit];
}
