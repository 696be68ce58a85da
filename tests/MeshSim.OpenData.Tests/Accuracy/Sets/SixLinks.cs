using System.Collections.Immutable;
using MeshSim.Files;
using MeshSim.FloorPlans;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;
using MeshSim.Propagation;
using MeshSim.Quantities;

namespace MeshSim.OpenData.Tests.Accuracy.Sets;

/// <summary>One of six links of which only distance and numbers of walls are published.</summary>
/// <param name="Name">The end device.</param>
/// <param name="DistanceMetres">How far it is.</param>
/// <param name="HeavyWalls">Walls of brick or concrete on the way.</param>
/// <param name="WoodWalls">Walls of wood on the way.</param>
/// <param name="MeasuredDb">The measured path loss: power and both antennas are known.</param>
/// <param name="PredictedDb">What the default model gives for a row of as many walls.</param>
internal sealed record SixthLink(string Name, double DistanceMetres, int HeavyWalls, int WoodWalls, double MeasuredDb, double PredictedDb)
{
    /// <summary>Predicted less measured.</summary>
    public double ErrorDb => PredictedDb - MeasuredDb;
}

/// <summary>Six links at 868 MHz on a floor of a university.</summary>
internal static class SixLinks
{
    /// <summary>What the walls are taken as; the publisher calls the heavy ones brick in one place and concrete in another.</summary>
    public const string Heavy = "concrete-200", Wood = "door-timber";

    private const double DeviceMetres = 0.8, GatewayMetres = 1, HalfWidthMetres = 5, MostMillimetres = 3000;

    private const int MostTenths = 1000;

    /// <summary>The carrier in the middle of the band used.</summary>
    public static readonly Frequency Carrier = new(868);

    /// <summary>The links in the order of the file.</summary>
    public static ImmutableArray<SixthLink> Read() => [.. DataRows.Of("siegen-lora-868-walls", "links.csv").Select(LinkOf)];

    /// <summary>What one wall costs head-on, dB.</summary>
    public static double LossDb(string construction) => LossCurves.Of(Catalogues.ConstructionsByName[new(construction)], Carrier).At(1).Value;

    /// <summary>The thickness of a construction of one layer, in steps of 5 mm, at which a wall first costs so much head-on, mm.</summary>
    public static double MillimetresFor(string construction, double lossDb)
    {
        Layer layer = Catalogues.ConstructionsByName[new(construction)].Layers.Single();
        for (double millimetres = 5; millimetres <= MostMillimetres; millimetres += 5)
            if (PlanningLoss.OfLayers([layer with { ThicknessMetres = millimetres / 1000 }], Carrier, 1).Value >= lossDb) return millimetres;
        throw new ArgumentOutOfRangeException(nameof(lossDb), lossDb, "no wall is so thick");
    }

    /// <summary>By what the conductivity of the one layer of a construction must be multiplied for the wall to cost so much head-on, in steps of a tenth.</summary>
    public static double ConductivityFactorFor(string construction, double lossDb)
    {
        Layer layer = Catalogues.ConstructionsByName[new(construction)].Layers.Single();
        for (int tenths = 10; tenths <= MostTenths; tenths++)
            if (PlanningLoss.OfLayers([layer with { Material = layer.Material with { C = layer.Material.C * tenths / 10 } }], Carrier, 1).Value >= lossDb) return tenths / 10.0;
        throw new ArgumentOutOfRangeException(nameof(lossDb), lossDb, "no wall is so wet");
    }

    private static SixthLink LinkOf(DataRow row)
    {
        double distance = row.Number("dist_m");
        int heavy = (int)row.Number("brick_or_concrete_walls"), wood = (int)row.Number("wood_walls");
        string[] across = [.. Enumerable.Repeat(Heavy, heavy), .. Enumerable.Repeat(Wood, wood)];
        FloorPlan plan = MeasuredBuilding.WallsOnly(3, across.Select((construction, i) => Across(distance * (i + 1) / (across.Length + 1), construction)));
        IPathLossModel model = PathLossModels.Create(ModelName.Detour, plan, Catalogues.ConstructionsByName, Carrier, exponent: 2);
        double predicted = model.TotalBetween(MeasuredBuilding.At(0, 0, GatewayMetres), MeasuredBuilding.At(distance, 0, DeviceMetres)).Value;
        return new(row["end_device"], distance, heavy, wood, row.Number("path_loss_mean_db"), predicted);
    }

    private static Wall Across(double xMetres, string construction) => new()
    {
        Name = FormattableString.Invariant($"wall at {xMetres:0.0}"),
        Start = PlanPoint.FromMetres(xMetres, -HalfWidthMetres),
        End = PlanPoint.FromMetres(xMetres, HalfWidthMetres),
        Construction = new(construction),
    };
}
