using SkiaSharp;

namespace MeshSim.Drawing.Inks;

/// <summary>How PNG files are packed; each kind of picture wants another balance of time and size.</summary>
internal static class Png
{
    /// <summary>Fast: a picture of a plan hardly grows by it.</summary>
    public static readonly SKPngEncoderOptions Fast = new(SKPngEncoderFilterFlags.Sub, 1);

    /// <summary>Small: areas of few colours that go into a page as text.</summary>
    public static readonly SKPngEncoderOptions Small = new(SKPngEncoderFilterFlags.None, 9);
}
