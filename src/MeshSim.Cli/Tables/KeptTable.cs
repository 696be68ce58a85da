using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Placement;

namespace MeshSim.Cli.Tables;

/// <summary>Which mains devices should stay powered, and for whom.</summary>
internal static class KeptTable
{
    /// <summary>The devices.</summary>
    public static Table Of(RepeaterPlacement placement) => new(
        [new("Keep powered"), new("Switch given up"), new("To the mesh dB", true), new("To its devices dB", true), new("Cut off when it goes off")],
        [
            .. placement.KeptOn.Select(kept => (ImmutableArray<string>)
            [
                kept.Device.Value,
                kept.Switch ?? "none: leave it on",
                Figures.Decibels(kept.UplinkMargin),
                Figures.Decibels(kept.DownlinkMargin),
                string.Join("; ", RepeaterWords.Served(kept.ServesWhen)),
            ]),
        ])
    {
        Notes = ["Feeding a device past its switch is mains work: leave it to a licensed electrician, and follow the local code."],
    };
}
