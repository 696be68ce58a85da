using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Plans;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing;

/// <summary>
/// The plan of a home as it was read, every storey on one sheet: rooms with names and measures, walls by what they are built of,
/// doors, windows, devices, outlets, and each remark marked where it belongs, so that a slip of the tape is seen.
/// </summary>
public static class PlanPicture
{
    /// <summary>Draws a plan. The same input gives the same bytes on one platform.</summary>
    /// <param name="draft">What was read.</param>
    /// <param name="format">Which kind of file.</param>
    /// <returns>The file; null when nothing of the plan could be read.</returns>
    public static byte[]? Draw(PlanDraft draft, PictureFormat format)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ImmutableArray<Storey> storeys = [.. draft.Home.FloorPlan.Storeys.Where(storey => PlanStorey.HasAnything(storey, draft)).Reverse()];
        if (storeys.IsEmpty) return null;

        using var ink = new Ink();
        var column = PlanColumn.Of(draft, storeys, ink);
        PlanLayout layout = PlanLayout.Of([.. storeys.Select(storey => PlanStorey.BoundsOf(storey, draft))], column.HeightPixels);
        PlanStorey[] contents = [.. storeys.Select((storey, i) => PlanStorey.Of(storey, draft, column, layout.Maps[i], layout.Projections[i], ink))];
        var painting = new PlanPainting(draft, column, layout, contents);
        return new SheetPainter(layout.Sheet, PlanPainting.TitleOf(draft), painting.Steps, ink).File(format);
    }
}
