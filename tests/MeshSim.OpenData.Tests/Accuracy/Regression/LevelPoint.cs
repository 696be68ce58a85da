using System.Collections.Immutable;
using MeshSim.Files;
using MeshSim.Propagation;
using MeshSim.Propagation.Recommendations;

namespace MeshSim.OpenData.Tests.Accuracy.Regression;

/// <summary>What a law of levels needs to know of a link.</summary>
/// <param name="Link">The link.</param>
/// <param name="AirDb">10 log₁₀ of the distance in metres.</param>
/// <param name="WallsDb">The planning losses of the walls on the line, added up.</param>
internal readonly record struct LevelPoint(MeasuredLink Link, double AirDb, double WallsDb)
{
    /// <summary>The measured level.</summary>
    public double LevelDbm => Link.LevelDbm ?? throw new InvalidOperationException("nothing was heard on this link");

    /// <summary>The points of links of a building, in their order, by what the program's own model says of each path.</summary>
    public static ImmutableArray<LevelPoint> Of(MeasuredBuilding building, IEnumerable<MeasuredLink> links)
    {
        var model = new LogDistance(building.Plan, Catalogues.ConstructionsByName, building.Carrier, exponent: 2);
        return
        [
            .. links.Select(link =>
            {
                PathLoss loss = model.Between(link.From, link.To);
                double airDb = 10 * Math.Log10(Math.Max(loss.DistanceMetres, FreeSpace.DistanceMetres.Min));
                return new LevelPoint(link, airDb, loss.Items.Where(item => item.Kind != LossKind.Distance).Sum(item => item.Loss.Value));
            }),
        ];
    }
}
