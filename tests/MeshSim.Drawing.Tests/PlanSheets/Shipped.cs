using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using MeshSim.Devices;
using MeshSim.Drawing.PlanSheets;
using MeshSim.Files;
using MeshSim.Studies;

namespace MeshSim.Drawing.Tests.PlanSheets;

/// <summary>The sheets of the homes that come with the program.</summary>
internal static class Shipped
{
    public static PlanSheetSet Sheets(string name, SheetOptions options)
    {
        Home home = HomeFolder.Read(Path.Combine(Root(), "floorplans", name)).Home!;
        ImmutableArray<NetworkCoverage> coverages = [.. home.Networks.Select(network => CoverageStudy.Run(home, network, new()))];
        return new(home, coverages, options);
    }

    private static string Root([CallerFilePath] string path = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(path)!, "..", "..", ".."));
}
