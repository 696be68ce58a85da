using System.Collections.Immutable;
using MeshSim.FloorPlans.Geometry;
using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.OpenData.Tests.Accuracy.Pictures;
using MeshSim.Propagation;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>The pictures of the page by the names of their files.</summary>
internal static class PictureFiles
{
    /// <summary>The file of the scatter of a building.</summary>
    public static string Scatter(MeasuredBuilding building) => $"{FileName(building)}-scatter.png";

    /// <summary>The file of the map of residuals of a building.</summary>
    public static string Residuals(MeasuredBuilding building) => $"{FileName(building)}-residuals.png";

    /// <summary>All of them, drawn.</summary>
    public static IEnumerable<(string File, byte[] Png)> Draw()
    {
        foreach (Assessment assessment in AccuracySets.All)
        {
            MeasuredBuilding building = assessment.Building;
            string law = (building.HasWalls ? "model detour" : "distance alone decides") + ", fitted without the transmitter of each dot";
            ImmutableArray<double> predicted = assessment.LeftOut(ModelName.Detour);
            yield return (Scatter(building), ScatterPicture.Png(
                building.Name, law, [.. predicted.Zip(assessment.Heard, (level, link) => (level, link.HeardDbm))]));
            if (building.HasWalls)
                yield return (Residuals(building), ResidualPicture.Png(building, law.Replace("each dot", "each link", StringComparison.Ordinal), predicted.Zip(assessment.Heard, ErrorAt)));
        }
    }

    private static (Position Place, double ErrorDb) ErrorAt(double predictedDbm, MeasuredLink link) => (link.To, predictedDbm - link.HeardDbm);

    private static string FileName(MeasuredBuilding building) => building.Name.ToLowerInvariant().Replace(",", "", StringComparison.Ordinal).Replace(' ', '-');
}
