namespace MeshSim.OpenData.Tests;

/// <summary>
/// Measured data and solved instances that others published. They are not part of this repository: <c>datasets/README.md</c> says
/// where they can be had.
/// </summary>
internal static class DataFolders
{
    /// <summary>Why a test that needs them did not run.</summary>
    public const string Absent = "skipped: data folder not present";

    /// <summary>The folder of this repository.</summary>
    public static string Repository { get; } = FindRepository(AppContext.BaseDirectory);

    /// <summary>The folder of one data set; the running test is skipped when it is not there.</summary>
    /// <param name="dataSet">The name of its folder.</param>
    public static string Of(string dataSet)
    {
        string folder = Path.Combine(Root, dataSet);
        Assert.SkipUnless(Directory.Exists(folder), Absent);
        return folder;
    }

    /// <summary>Where MESHSIM_DATA points, else the folder of data sets beside the repository.</summary>
    private static string Root =>
        Environment.GetEnvironmentVariable("MESHSIM_DATA") is { Length: > 0 } folder
            ? folder
            : Path.Combine(Repository, "..", "shared", "datasets");

    private static string FindRepository(string folder) =>
        File.Exists(Path.Combine(folder, "MeshSim.sln")) ? folder : FindRepository(Path.GetDirectoryName(folder)!);
}
