using System.Collections.Immutable;
using MeshSim.Drawing.Inks;
using SkiaSharp;

namespace MeshSim.Drawing.PlanSheets;

/// <summary>Writes sheets as a PDF file, one page each, in their true size.</summary>
internal static class SheetPdf
{
    /// <summary>The file. It bears no date, so that the same sheets make the same bytes.</summary>
    public static byte[] Of(ImmutableArray<PlanSheet> sheets, Ink ink)
    {
        using var stream = new MemoryStream();
        string title = $"{sheets[0].Title.Home}: plan sheets";
        using (SKDocument document = SKDocument.CreatePdf(stream, new SKDocumentPdfMetadata { Title = title, Creator = "MeshSim" }))
        {
            foreach (PlanSheet sheet in sheets)
            {
                Paper paper = sheet.Layout.Paper;
                SKCanvas canvas = document.BeginPage(Points(paper.WidthMillimetres), Points(paper.HeightMillimetres));
                Draw(sheet, CanvasPen.Scaled(canvas, ink, Points(Paper.MillimetresPerPixel)), ink);
                document.EndPage();
            }

            document.Close();
        }

        return stream.ToArray();
    }

    private static float Points(double millimetres) => (float)(millimetres * Paper.PointsPerMillimetre);

    private static void Draw(PlanSheet sheet, Pen pen, Ink ink)
    {
        if (sheet.Plan is { } plan) PlanPainter.Draw(sheet, plan, pen);
        foreach (KeyColumn column in sheet.Key) KeyPainter.Draw(column, pen);
        KeyPainter.Draw(sheet.Title, sheet.Layout.Title, pen, ink);
    }
}
