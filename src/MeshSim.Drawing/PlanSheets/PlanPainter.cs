using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Labels;
using MeshSim.Drawing.Layers;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>Draws the plan of a sheet, from the bottom to the top, nothing of it outside its frame.</summary>
internal static class PlanPainter
{
    private const float OutletRadius = 7;

    /// <summary>What the sign of an outlet covers.</summary>
    public static PixelBox OutletBox(Pixel place) => PixelBox.About(place, 2 * OutletRadius, 2 * OutletRadius);

    /// <summary>Draws the plan with scale bar, north arrow and frame.</summary>
    public static void Draw(PlanSheet sheet, PlanDrawing plan, Pen pen)
    {
        PixelBox frame = plan.Frame;
        Pixel[] corners = [new(frame.Left, frame.Top), new(frame.Right, frame.Top), new(frame.Right, frame.Bottom), new(frame.Left, frame.Bottom)];
        pen.Within([corners], () => DrawBuilding(sheet, plan, pen));
        pen.Frame(sheet.Layout.Map, Tone.Quiet, 1);
        pen.Line(new(frame.Left, frame.Bottom), new(frame.Right, frame.Bottom), Tone.Quiet, 1);
        ScaleBarLayer.DrawBar(plan.Projection, sheet.Layout.Strip, pen);
        NorthLayer.DrawArrow(sheet.Subject.Home.Parameters.NorthDegrees, sheet.Layout.Strip, pen);
        pen.TextAbout(FormattableString.Invariant($"1:{plan.Scale}"), sheet.Layout.Strip.Centre, TextStyle.Heading, Tone.Text);
    }

    /// <summary>The sign of an outlet without a device.</summary>
    public static void DrawOutlet(Pixel place, Pen pen)
    {
        foreach (SymbolStroke stroke in SymbolStrokes.Of(SymbolShape.Outlet))
            pen.Outline([.. stroke.Points.Select(p => new Pixel(place.X + (p.X * OutletRadius), place.Y + (p.Y * OutletRadius)))], stroke.IsClosed, Tone.Quiet, 1.1f);
    }

    private static void DrawBuilding(PlanSheet sheet, PlanDrawing plan, Pen pen)
    {
        StairwellLayer.DrawAll(MapContents.StairwellsOf(sheet.Subject.Home.FloorPlan, sheet.Storey), plan.Projection, pen);
        ObjectLayer.DrawAll(sheet.Storey, plan.Projection, pen);
        WallLayer.DrawAll(sheet.Storey, sheet.Subject.Home, plan.Projection, pen);
        OpeningLayer.DrawAll(sheet.Storey, sheet.Subject.Home, plan.Projection, pen);
        DrawRoutes(sheet, plan, pen);
        foreach ((_, Pixel place) in plan.Outlets) DrawOutlet(place, pen);
        LabelLayer.DrawAll(plan.Labels, pen);
        DeviceLayer.DrawAll(plan.Devices, pen);
    }

    private static void DrawRoutes(PlanSheet sheet, PlanDrawing plan, Pen pen)
    {
        foreach ((var from, var to, float dash) in plan.Routes)
            RouteLayer.DrawStroke(plan.PlaceOf(from), plan.PlaceOf(to), Mark.Radius, Mark.Radius, pen, dash);

        // Arrows come last: the light edge of a line would cover that of a line beside it.
        foreach ((var from, var to, _) in plan.Routes) RouteLayer.DrawArrow(plan.PlaceOf(from), plan.PlaceOf(to), pen);
        foreach (PlacedLabel label in plan.Labels.Where(label => label.Request.Kind == LabelKind.Stub))
        {
            if (label.LeaderFrom is not { } device) continue;
            float dash = sheet.Subject.DashOf(new(label.Request.Key));
            if (label.Request.LeaderPointsBack) RouteLayer.DrawLink(label.LeaderTo, device, 0, Mark.Radius, pen, dash);
            else RouteLayer.DrawLink(device, label.LeaderTo, Mark.Radius, 0, pen, dash);
        }
    }
}
