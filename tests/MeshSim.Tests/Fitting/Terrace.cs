using System.Collections.Immutable;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Propagation;
using MeshSim.Quantities;
using MeshSim.Tests.Architecture;

namespace MeshSim.Tests.Fitting;

/// <summary>Quay Terrace with its plugs, and the truth behind its invented readings.</summary>
internal static class Terrace
{
    /// <summary>The seed of the readings in its folder.</summary>
    public const int Seed = 1890;

    public static string Folder { get; } = Path.Combine(SourceTree.Root, "floorplans", "quay-terrace");

    public static Home Home { get; } = HomeFolder.Read(Folder).Home!;

    public static Network Plugs { get; } = Home.Networks[0];

    /// <summary>The plugs as they really are: half-brick walls of this house are a little dearer than computed, its joists cheaper.</summary>
    public static Network Really { get; } = Plugs with
    {
        Fit = new()
        {
            Model = ModelName.Detour,
            Readings = 0,
            Shadowing = new(4),
            Parameters =
            [
                new(FittedKind.Exponent, "", 2.1, 0, 0),
                new(FittedKind.Construction, "brick-half", 1.5, 0, 0),
                new(FittedKind.Construction, "joists-boards-lath", -1, 0, 0),
            ],
            Correlations = [],
        },
    };

    /// <summary>The plug of the sideboard was moved into a metal cable box that costs 16 dB.</summary>
    public static InventedReadings Truth { get; } = new() { Hidden = ImmutableDictionary<DeviceId, Decibels>.Empty.Add(new("dining-plug"), new(16)) };

    /// <summary>The home with readings of some truth.</summary>
    public static Home Read(InventedReadings truth, int seed) => Home with { Readings = truth.Of(Home, Really, seed) };
}
