using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Margins;
using MeshSim.Drawing.Palettes;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.FloorPlans;
using MeshSim.Propagation.Fields;
using MeshSim.Quantities;
using MeshSim.Studies;

namespace MeshSim.Drawing;

/// <summary>Margins over one storey.</summary>
/// <param name="Margin">The margins, dB.</param>
/// <param name="DesignMargin">From which on a place is covered.</param>
internal readonly record struct MarginSide(Field Margin, Decibels DesignMargin)
{
    /// <summary>Whether a margin is enough.</summary>
    public bool Covers(float marginDb) => marginDb >= DesignMargin.Value;
}

/// <summary>What the picture of a difference between two margins is about: the first less the second.</summary>
internal sealed record DifferenceContents
{
    /// <summary>Where one of the two has nobody to speak to, the other is better without bound, dB.</summary>
    private const float WithoutBoundDb = 400;

    /// <summary>Whose building and devices are shown.</summary>
    public required NetworkCoverage Coverage { get; init; }

    /// <summary>The storey.</summary>
    public required Storey Storey { get; init; }

    /// <summary>One side.</summary>
    public required MarginSide First { get; init; }

    /// <summary>The other, on the same grid.</summary>
    public required MarginSide Second { get; init; }

    /// <summary>What the sheet says.</summary>
    public required SheetWords Words { get; init; }

    /// <summary>What stands beside the map.</summary>
    public required Column Column { get; init; }

    /// <summary>What stands below the names of rooms.</summary>
    public required ImmutableDictionary<RoomName, string> Notes { get; init; }

    /// <summary>Whether the devices of the coverage are shown.</summary>
    public bool HasDevices { get; init; }

    /// <summary>Whether a line is drawn where both are alike. Where they are alike over whole rooms it would be a line around nothing.</summary>
    public bool HasZeroLine { get; init; }

    /// <summary>Decides what the picture shows.</summary>
    /// <param name="size">How large.</param>
    /// <param name="ink">Measures text.</param>
    public MapContents Of(PictureSize size, Ink ink)
    {
        var scale = new DifferenceScale();
        SheetLayout layout = SheetLayout.Of(PlanBounds.Of(Coverage.Home, Storey), size, Column.HeightPixels);
        Field difference = Difference((float)DifferenceScale.NeitherDb);
        var contents = new MapContents
        {
            Coverage = Coverage,
            Map = new MarginMap { Network = Coverage.Network.Name, Storey = Storey.Name, Margin = difference, DesignMargin = Decibels.Zero, Rooms = [] },
            Storey = Storey,
            Layout = layout,
            Scale = scale,
            Words = Words,
            RoomNotes = Notes,
            Raster = new(difference, Storey, scale, layout),
            Contours = HasZeroLine ? [.. ContourTracer.Trace(Difference(float.NaN), scale.HeavyDb)] : [],
            Routes = new([], []),
            Marks = HasDevices ? Marks.On(Storey.Name, Coverage, placement: null, layout) : new([], []),
            Column = Column,
            Stairwells = [.. MapContents.StairwellsOf(Coverage.Home.FloorPlan, Storey)],
        };
        return contents with { Labels = MapLabels.Of(contents, ink) };
    }

    /// <summary>What stands below the name of a room: the difference of two medians.</summary>
    /// <param name="first">One side, dB.</param>
    /// <param name="second">The other, dB.</param>
    /// <param name="otherwise">Said where one side has nobody to speak to.</param>
    public static string Note(Decibels first, Decibels second, string otherwise)
    {
        double differenceDb = first.Value - second.Value;
        return double.IsFinite(differenceDb) ? FormattableString.Invariant($"{Math.Round(differenceDb):+0;-0;0} dB") : otherwise;
    }

    /// <summary>The difference at every point, or a value of its own where neither side covers.</summary>
    private Field Difference(float neither) => new(
        First.Margin.Grid,
        [.. First.Margin.Values.Zip(Second.Margin.Values, (one, other) =>
            First.Covers(one) || Second.Covers(other) ? Math.Clamp(one - other, -WithoutBoundDb, WithoutBoundDb) : neither)]);
}
