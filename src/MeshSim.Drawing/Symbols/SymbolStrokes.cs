using System.Collections.Immutable;
using MeshSim.Drawing.Sheets;

namespace MeshSim.Drawing.Symbols;

/// <summary>One line of a symbol, in units of the symbol's radius about its middle, y down.</summary>
/// <param name="Points">Its points in order.</param>
/// <param name="IsClosed">Whether the last joins the first.</param>
/// <param name="IsFilled">Whether it is an area.</param>
internal sealed record SymbolStroke(ImmutableArray<Pixel> Points, bool IsClosed = false, bool IsFilled = false);

/// <summary>
/// The shapes of the symbols, drawn for this project in the manner of IEC 60617 installation symbols: a half circle on a stem
/// for an outlet, a crossed circle for a lamp, a slanted arm for a switch.
/// </summary>
internal static class SymbolStrokes
{
    private const int ArcSteps = 20;

    /// <summary>The lines of a symbol.</summary>
    public static ImmutableArray<SymbolStroke> Of(SymbolShape shape) => shape switch
    {
        SymbolShape.Controller => [Box(-0.62f, 0.05f, 0.62f, 0.6f), Line(0, 0.05f, 0, -0.65f), Line(-0.4f, -0.65f, 0, -0.2f, 0.4f, -0.65f)],
        SymbolShape.Repeater => [Area(-0.45f, -0.5f, 0.55f, 0, -0.45f, 0.5f), Line(-0.75f, 0, -0.45f, 0), Line(0.55f, 0, 0.8f, 0)],
        SymbolShape.Outlet => [Arc(0, 0.42f, 0.62f, 180, 360), Line(-0.62f, -0.2f, 0.62f, -0.2f), Line(0, -0.2f, 0, -0.75f)],
        SymbolShape.Switch => [Circle(-0.35f, 0.4f, 0.22f), Line(-0.2f, 0.23f, 0.4f, -0.55f, 0.7f, -0.3f)],
        SymbolShape.Lamp => [Circle(0, 0, 0.66f), Line(-0.47f, -0.47f, 0.47f, 0.47f), Line(-0.47f, 0.47f, 0.47f, -0.47f)],
        SymbolShape.Motion => [FilledCircle(-0.5f, 0, 0.2f), Arc(-0.5f, 0, 0.55f, -50, 50), Arc(-0.5f, 0, 0.88f, -45, 45), Arc(-0.5f, 0, 1.2f, -38, 38)],
        SymbolShape.Contact => [Line(-0.8f, 0.3f, -0.35f, 0.3f, 0.4f, -0.4f), Line(0.35f, 0.3f, 0.8f, 0.3f), Line(0.35f, 0.05f, 0.35f, 0.55f)],
        SymbolShape.Alarm => [Arc(0, 0.25f, 0.55f, 180, 360), Line(-0.75f, 0.25f, 0.75f, 0.25f), FilledCircle(0, 0.5f, 0.17f), Line(0, -0.3f, 0, -0.62f)],
        SymbolShape.Water => [Drop],
        SymbolShape.Climate => [Line(0, -0.65f, 0, 0.4f), FilledCircle(0, 0.42f, 0.3f), Line(0.12f, -0.55f, 0.4f, -0.55f), Line(0.12f, -0.2f, 0.4f, -0.2f)],
        SymbolShape.Valve => [Closed(-0.7f, -0.15f, -0.7f, 0.65f, 0.7f, -0.15f, 0.7f, 0.65f), Line(0, 0.25f, 0, -0.5f), Line(-0.35f, -0.5f, 0.35f, -0.5f)],
        SymbolShape.Drive => [Circle(0, 0, 0.7f), Line(-0.32f, 0.36f, -0.32f, -0.36f, 0, 0.1f, 0.32f, -0.36f, 0.32f, 0.36f)],
        SymbolShape.Meter => [Box(-0.6f, -0.6f, 0.6f, 0.6f), Line(-0.6f, -0.2f, 0.6f, -0.2f), Line(-0.1f, 0.4f, 0.25f, 0)],
        SymbolShape.Module => [Box(-0.65f, -0.45f, 0.65f, 0.45f), Line(-0.65f, 0.45f, 0.65f, -0.45f)],
        _ => [Box(-0.5f, -0.5f, 0.5f, 0.5f), FilledCircle(0, 0, 0.18f)],
    };

    private static SymbolStroke Drop => new([new(0, -0.75f), .. Around(0, 0.2f, 0.48f, -35, 215)], IsClosed: true);

    private static SymbolStroke Line(params ReadOnlySpan<float> xy) => new(Pairs(xy));

    private static SymbolStroke Closed(params ReadOnlySpan<float> xy) => new(Pairs(xy), IsClosed: true);

    private static SymbolStroke Area(params ReadOnlySpan<float> xy) => new(Pairs(xy), IsClosed: true, IsFilled: true);

    private static SymbolStroke Box(float left, float top, float right, float bottom) =>
        Closed(left, top, right, top, right, bottom, left, bottom);

    private static SymbolStroke Circle(float x, float y, float radius) => new(Around(x, y, radius, 0, 360), IsClosed: true);

    private static SymbolStroke FilledCircle(float x, float y, float radius) => Circle(x, y, radius) with { IsFilled = true };

    private static SymbolStroke Arc(float x, float y, float radius, float fromDegrees, float toDegrees) =>
        new(Around(x, y, radius, fromDegrees, toDegrees));

    private static ImmutableArray<Pixel> Around(float x, float y, float radius, float fromDegrees, float toDegrees) =>
        [.. Enumerable.Range(0, ArcSteps + 1).Select(i =>
        {
            float angle = float.DegreesToRadians(fromDegrees + ((toDegrees - fromDegrees) * i / ArcSteps));
            return new Pixel(x + (radius * MathF.Cos(angle)), y + (radius * MathF.Sin(angle)));
        })];

    private static ImmutableArray<Pixel> Pairs(ReadOnlySpan<float> xy)
    {
        var points = ImmutableArray.CreateBuilder<Pixel>(xy.Length / 2);
        for (int i = 0; i < xy.Length; i += 2) points.Add(new(xy[i], xy[i + 1]));
        return points.MoveToImmutable();
    }
}
