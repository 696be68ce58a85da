using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Legends;
using MeshSim.Drawing.Plans;
using MeshSim.Drawing.Sheets;
using MeshSim.Drawing.Symbols;
using MeshSim.Drawing.Walls;

namespace MeshSim.Drawing.Layers;

/// <summary>The rows of the legend that show more than text.</summary>
internal static class LegendRows
{
    private const float TextIndent = 56;

    /// <summary>A swatch of a class, hatched as on the map.</summary>
    public static void DrawStep(ClassRow step, PixelBox sample, Pen pen)
    {
        PixelBox swatch = new(sample.Left, sample.Top + 1, sample.Right, sample.Bottom - 1);
        Pixel[] corners = [new(swatch.Left, swatch.Top), new(swatch.Right, swatch.Top), new(swatch.Right, swatch.Bottom), new(swatch.Left, swatch.Bottom)];
        pen.Area(corners, step.Class.Colour);
        if (step.Class.IsBelowDesign) pen.Hatching(corners, Tone.Hatch, 1.6f, HatchLayer.Period);
        pen.Frame(swatch, Tone.Quiet, 1);
        DrawMeaning(step.Text, sample, pen);
    }

    /// <summary>A symbol with its meaning to the right.</summary>
    public static void DrawSymbol(SymbolShape shape, Pixel centre, Pen pen)
    {
        DeviceSigns.DrawSymbol(shape, centre, Tone.Text, pen);
        pen.Text(SymbolShapes.Meaning(shape), new(centre.X + 20, centre.Y + (TextStyle.Body.CapitalHeight / 2)), TextStyle.Body, Tone.Text);
    }

    /// <summary>A stretch of wall with the constructions that look like it.</summary>
    public static void DrawWall(WallRow walls, PixelBox sample, Pen pen)
    {
        var run = new WallRun(new(sample.Left, sample.Centre.Y), new(1, 0), sample.Width, ThicknessPixels: 9);
        WallStyles.Draw(walls.Style, run, 0, sample.Width, pen);
        DrawMeaning(walls.Text, sample, pen);
    }

    /// <summary>The number of a remark as it stands on the plan, or plain where it stands nowhere there, with its first line.</summary>
    public static void DrawRemark(RemarkRow remark, PixelBox box, Pen pen)
    {
        Pixel centre = new(box.Left + 11, box.Bottom - 10);
        if (remark.IsOnPlan) PlanPainting.DrawNumber(remark.Number, remark.IsError, centre, pen);
        else pen.TextAbout(remark.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), centre, TextStyle.Strong, Tone.Unreached);
        pen.Text(remark.Text, new(box.Left + 30, box.Bottom - 5), TextStyle.Body, Tone.Text);
    }

    /// <summary>The letters of the roles in one row.</summary>
    public static void DrawRoles(RolesRow roles, PixelBox box, Pen pen)
    {
        float x = box.Left + 9;
        foreach (Role role in roles.Roles)
        {
            DeviceSigns.DrawRole(role, new(x, box.Centre.Y), Tone.Text, pen);
            string word = role switch { Role.Coordinator => "coordinator", Role.Router => "router", _ => "end device" };
            pen.Text(word, new(x + 13, box.Centre.Y + (TextStyle.Body.CapitalHeight / 2)), TextStyle.Body, Tone.Text);
            x += role == Role.Coordinator ? 124 : 86;
        }
    }

    /// <summary>What a sample means, to its right.</summary>
    public static void DrawMeaning(string text, PixelBox sample, Pen pen) =>
        pen.Text(text, new(sample.Left + TextIndent, sample.Centre.Y + (TextStyle.Body.CapitalHeight / 2)), TextStyle.Body, Tone.Text);
}
