using System.Collections.Immutable;
using MeshSim.Cli.Json;
using MeshSim.Cli.Wording;
using MeshSim.Materials;

namespace MeshSim.Cli.Tables;

/// <summary>What constructions cost.</summary>
internal static class LossesTable
{
    /// <summary>One construction, a line for each frequency and angle.</summary>
    public static Table Of(LossesJson losses) => new(
        [
            new("MHz", true), new("Angle", true), new("Planning dB", true), new("Slab TE dB", true), new("Slab TM dB", true),
            new("Reflected TE dB", true), new("Reflected TM dB", true),
        ],
        [.. losses.Losses.Select(Row)])
    {
        Notes =
        [
            "Angle: degrees from straight through. Planning: what every command uses; the power averaged over both polarisations "
            + $"and over thicknesses within 10 %. Beyond {Figures.Plain(PlanningLoss.CapDegrees)} degrees it is held at its value there.",
            losses.Layers.IsEmpty
                ? "The loss is stated, not computed, so there is no slab to solve."
                : "Slab: the exact build-up with parallel faces, ITU-R P.2040.",
            .. losses.Losses.Any(loss => loss.IsExtrapolated)
                ? ["* Used outside the frequencies at which it was measured."]
                : ImmutableArray<string>.Empty,
        ],
    };

    /// <summary>The catalogue of constructions.</summary>
    public static Table Catalogue(IEnumerable<Construction> constructions) => new(
        [new("Construction"), new("For"), new("Description"), new("Layers or stated loss")],
        [.. constructions.Select(c => ImmutableArray.Create(c.Name.Value, UseWord(c.Use), c.Description, BuildUp(c)))]);

    /// <summary>A build-up in words, as <c>--layers</c> takes it, or the stated losses.</summary>
    public static string BuildUp(Construction construction) => construction.Layers.IsEmpty
        ? string.Join(", ", construction.Stated.Select(stated => $"{stated.Loss} at {stated.Frequency}"))
        : string.Join(", ", construction.Layers.Select(layer => $"{layer.Material.Name}:{Figures.Plain(layer.ThicknessMetres * 1000)}"));

    private static string UseWord(ConstructionUse use) => use switch
    {
        ConstructionUse.Wall => "wall",
        ConstructionUse.Door => "door",
        ConstructionUse.Window => "window",
        ConstructionUse.Floor => "floor",
        _ => "object",
    };

    private static ImmutableArray<string> Row(SlabLossJson loss) =>
    [
        Figures.Plain(loss.FrequencyMegahertz),
        Figures.Plain(loss.AngleDegrees),
        Figures.Tenths(loss.PlanningLossDb) + (loss.IsExtrapolated ? "*" : ""),
        Tenths(loss.Te?.TransmissionLossDb),
        Tenths(loss.Tm?.TransmissionLossDb),
        Tenths(loss.Te?.ReflectionLossDb),
        Tenths(loss.Tm?.ReflectionLossDb),
    ];

    private static string Tenths(double? value) => value is { } v ? Figures.Tenths(v) : "-";
}
