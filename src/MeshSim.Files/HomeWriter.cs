using MeshSim.Devices;
using MeshSim.Files.Writing;

namespace MeshSim.Files;

/// <summary>Writes a home into a home folder, so that reading it gives a home of the same meaning.</summary>
public static class HomeWriter
{
    /// <summary>
    /// Writes a home. The files are made in a folder beside the target, read back, and moved into place only when all of
    /// them are good; other files in the target stay. Assumed outlets are not written: reading assumes them again.
    /// </summary>
    /// <param name="home">The home.</param>
    /// <param name="folder">The target; made when it is not there.</param>
    /// <exception cref="ArgumentException">The home has something that a home folder cannot say.</exception>
    /// <exception cref="IOException">The files cannot be written.</exception>
    public static void Write(Home home, string folder)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentException.ThrowIfNullOrEmpty(folder);
        FolderGuards.Check(home);

        using FreshFolder fresh = new(folder);
        WriteFiles(home, fresh.Path);
        CheckReadable(fresh.Path);
        fresh.MoveIntoPlace();
    }

    private static void WriteFiles(Home home, string folder)
    {
        File.WriteAllText(Path.Combine(folder, HomeFileNames.Home), HomeText.Of(home));
        TableFiles.WriteDevices(Path.Combine(folder, HomeFileNames.Devices), home.Devices, home.FloorPlan);

        // A home without a single outlet, assumed or not, keeps that in an empty table.
        if (home.Outlets.IsEmpty || !home.Outlets.All(outlet => outlet.IsAssumed))
            TableFiles.WriteOutlets(Path.Combine(folder, HomeFileNames.Outlets), home.Outlets.Where(outlet => !outlet.IsAssumed), home.FloorPlan);
        if (!home.Readings.IsEmpty)
            TableFiles.WriteReadings(Path.Combine(folder, HomeFileNames.Readings), home.Readings);
        if (FitText.Of(home) is { Length: > 0 } fit) File.WriteAllText(Path.Combine(folder, HomeFileNames.Fit), fit);
    }

    private static void CheckReadable(string folder)
    {
        HomeReadResult result = HomeFolder.Read(folder);
        if (result.Home is null)
            throw new ArgumentException($"a home folder cannot say this: {result.Problems[0].Message}");
    }
}
