using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Descriptions;

namespace MeshSim.Files.Homes;

/// <summary>A storey as built from its description.</summary>
/// <param name="Storey">The storey; what had a problem is not in it.</param>
/// <param name="RoomNames">Every room that it lists, built or not.</param>
/// <param name="IsSound">Whether nothing about it had a problem, so that what it lacks is really missing.</param>
internal sealed record BuiltStorey(Storey Storey, ImmutableArray<string> RoomNames, bool IsSound)
{
    /// <summary>Builds every storey of a home and reports the problems at the places of what they are about.</summary>
    public static ImmutableArray<BuiltStorey> BuildAll(HomeDocument home, DiagnosticList problems) =>
        [.. home.Storeys.Select(storey => Build(storey, home.Places, problems))];

    private static BuiltStorey Build(StoreyDocument document, DescribedPlaces places, DiagnosticList problems)
    {
        StoreyBuilt built = StoreyBuilder.Build(document.Description);
        foreach (FloorPlanProblem problem in built.Problems)
            problems.Error(
                places.Find(problem.Source, problem.Aspect),
                problem.Wrong,
                problem.Right);
        foreach (FloorPlanNotice notice in built.Notices) problems.Notice(places.Find(notice.Source, Aspect.Whole), notice.Text, "");
        return new(built.Storey, [.. document.RoomNames.Select(room => room.Name)], document.IsComplete && built.Problems.IsEmpty);
    }
}
