using MeshSim.FloorPlans;
using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.Propagation;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>What another guess about the walls would have made of the figures without a fit.</summary>
internal static class AssumptionChapter
{
    private static readonly string[] Constructions = ["stud-partition", "brick-half-plastered", "brick-full", "block-100-plastered", "concrete-150", "cavity-brick"];

    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines()
    {
        yield return "## If the walls were something else";
        yield return "";
        yield return "Nobody published what the walls are built of. Catalogue and one offset, nothing else fitted, with all walls taken as one construction (RMSE, dB):";
        yield return "";
        yield return "| all walls | flat, plain sum | flat, way round | office, plain sum | office, way round |";
        yield return "|---|---:|---:|---:|---:|";
        foreach (string construction in Constructions)
        {
            string[] figures = [.. new[] { AccuracySets.Flat, AccuracySets.Office }.Select(assessment => new Assessment(Of(assessment.Building, construction)))
                .SelectMany(changed => new[] { changed.ErrorsOf(changed.Catalogue(ModelName.LogDistance)), changed.ErrorsOf(changed.Catalogue(ModelName.Detour)) })
                    .Select(errors => Hundredths(errors.RmseDb))];
            yield return $"| {construction} | {string.Join(" | ", figures)} |";
        }

        yield return "";
        yield return "A wrong guess between masonry walls costs up to 2 dB in the flat and 1 dB in the office with the way round, and 4 and 13 dB without it. Where "
            + "walls are light, the way round changes nothing.";
    }

    private static MeasuredBuilding Of(MeasuredBuilding building, string construction) => building with
    {
        Plan = new([.. building.Plan.Storeys.Select(storey => storey with { Walls = [.. storey.Walls.Select(wall => wall with { Construction = new ConstructionName(construction) })] })]),
    };
}
