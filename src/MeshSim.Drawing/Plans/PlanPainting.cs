using System.Collections.Immutable;
using System.Globalization;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Drawing.Plans;

/// <summary>Draws a plan in steps, from the bottom to the top.</summary>
internal sealed class PlanPainting(PlanDraft draft, PlanColumn column, PlanLayout layout, IReadOnlyList<PlanStorey> storeys)
{
    /// <summary>Length of the dashes of an outline that became no room, pixels.</summary>
    private const float Dash = 6;

    /// <summary>The steps by name.</summary>
    public ImmutableArray<(string Name, Action<Pen> Draw)> Steps =>
    [
        ("paper", pen => pen.Flood(Tone.Paper)),
        .. storeys.SelectMany(StepsOf),
        ("title", DrawTitle),
        ("column", pen => ColumnLayer.DrawRows(column.Rows, layout.Column, pen)),
        ("scale", pen => ScaleBarLayer.DrawBar(layout.Projections[0], layout.Strip, pen)),
        ("north", pen => NorthLayer.DrawArrow(draft.Home.Parameters.NorthDegrees, layout.Strip, pen)),
    ];

    /// <summary>What the picture is called.</summary>
    public static string TitleOf(PlanDraft draft) => $"{(draft.Home.Name.Length > 0 ? draft.Home.Name : "A home without a name")}: the plan as it was read";

    private IEnumerable<(string Name, Action<Pen> Draw)> StepsOf(PlanStorey plan) =>
    [
        ("stairwells", pen => StairwellLayer.DrawAll(MapContents.StairwellsOf(draft.Home.FloorPlan, plan.Storey), plan.Projection, pen)),
        ("objects", pen => ObjectLayer.DrawAll(plan.Storey, plan.Projection, pen)),
        ("unbuilt", pen => DrawUnbuilt(plan, pen)),
        ("walls", pen => WallLayer.DrawAll(plan.Storey, draft.Home, plan.Projection, pen)),
        ("openings", pen => OpeningLayer.DrawAll(plan.Storey, draft.Home, plan.Projection, pen)),
        ("outlets", pen => DrawOutlets(plan, pen)),
        ("labels", pen => LabelLayer.DrawAll(plan.Labels, pen)),
        ("devices", pen => DeviceLayer.DrawAll(plan.Devices, pen)),
        ("remarks", pen => DrawRemarks(plan, pen)),
        ("storey", pen => DrawName(plan, pen)),
    ];

    private void DrawTitle(Pen pen)
    {
        int errors = draft.Remarks.Count(remark => remark.IsError), notices = draft.Remarks.Length - errors;
        string state = errors == 0 ? "In order" : Counted(errors, "problem") + ", and what could not be read is not drawn";
        string more = notices > 0 ? $"; {Counted(notices, "notice")}" : "";
        pen.Text(TitleOf(draft), new(layout.Title.Left, layout.Title.Top + 24), TextStyle.Title, Tone.Text);
        pen.Text(state + more, new(layout.Title.Left, layout.Title.Top + 50), TextStyle.Subtitle, errors > 0 ? Tone.Unreached : Tone.Quiet);
    }

    private static string Counted(int count, string noun) => FormattableString.Invariant($"{count} {noun}{(count == 1 ? "" : "s")}");

    private static void DrawName(PlanStorey plan, Pen pen)
    {
        pen.Frame(plan.Map, Tone.Quiet, 1);
        pen.Text(
            FormattableString.Invariant($"{plan.Storey.Name}, ceiling {plan.Storey.CeilingMetres:0.##} m"),
            new(plan.Map.Left + 10, plan.Map.Top + 22), TextStyle.Heading, Tone.Text);
    }

    private void DrawUnbuilt(PlanStorey plan, Pen pen)
    {
        foreach (PlanOutline outline in draft.Unbuilt.Where(outline => outline.Storey == plan.Storey.Name))
        {
            Pixel[] corners = plan.Projection.ToPixels(new Polygon(outline.Corners));
            pen.Hatching(corners, Tone.Unreached.WithAlpha(90), 1, 12);
            pen.Outline(corners, isClosed: true, Tone.Unreached, 2, Dash);
        }
    }

    private static void DrawOutlets(PlanStorey plan, Pen pen)
    {
        foreach (Pixel outlet in plan.Outlets)
        {
            PixelBox box = PixelBox.About(outlet, 11, 11);
            pen.Plate(box, Tone.Paper);
            pen.Frame(box, Tone.Text, 1.3f);
            pen.Disc(outlet, 2, Tone.Text);
        }
    }

    private static void DrawRemarks(PlanStorey plan, Pen pen)
    {
        foreach (RemarkMark mark in plan.Remarks.Where(mark => mark.IsMoved))
        {
            pen.Line(mark.TruePlace, mark.Centre, Tone.Unreached, 1.5f);
            pen.Disc(mark.TruePlace, 3, Tone.Unreached);
        }

        foreach (RemarkMark mark in plan.Remarks) DrawNumber(mark.Number, mark.IsError, mark.Centre, pen);
    }

    /// <summary>The number of a problem on a dark square, that of a notice in a ring.</summary>
    public static void DrawNumber(int number, bool isError, Pixel centre, Pen pen)
    {
        string text = number.ToString(CultureInfo.InvariantCulture);
        if (isError)
        {
            pen.Plate(PixelBox.About(centre, 24, 24), Tone.Paper, radius: 4);
            pen.Plate(PixelBox.About(centre, 21, 21), Tone.Unreached, radius: 3);
        }
        else
        {
            pen.Disc(centre, 11, Tone.Paper);
            pen.Ring(centre, 10, Tone.Unreached, 1.6f);
        }

        pen.TextAbout(text, centre, TextStyle.Letter, isError ? Tone.Paper : Tone.Unreached);
    }
}
