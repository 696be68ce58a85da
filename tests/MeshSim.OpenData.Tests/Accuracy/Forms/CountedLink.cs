using System.Collections.Immutable;
using MeshSim.Files;
using MeshSim.OpenData.Tests.Accuracy.Fits;
using MeshSim.Propagation;

namespace MeshSim.OpenData.Tests.Accuracy.Forms;

/// <summary>What a study of wall sums needs to know of a heard link.</summary>
/// <param name="Link">The link.</param>
/// <param name="AirDb">10 log₁₀ of the distance in metres.</param>
/// <param name="SumDb">The planning losses of the walls on the line, added up.</param>
/// <param name="Walls">How many walls that is; one met at its end counts half.</param>
internal readonly record struct CountedLink(MeasuredLink Link, double AirDb, double SumDb, double Walls)
{
    /// <summary>The heard links of a building, in their order, by what the program's own model says of each path.</summary>
    public static ImmutableArray<CountedLink> Of(MeasuredBuilding building)
    {
        var model = new LogDistance(building.Plan, Catalogues.ConstructionsByName, building.Carrier, exponent: 2);
        return
        [
            .. building.Heard.Select(link =>
            {
                LossItem[] walls = [.. model.Between(link.From, link.To).Items.Where(item => item.Kind != LossKind.Distance)];
                return new CountedLink(link, DistanceLine.AirDb(link), walls.Sum(wall => wall.Loss.Value), walls.Sum(wall => wall.Sensitivity));
            }),
        ];
    }
}
