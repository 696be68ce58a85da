namespace MeshSim.Drawing;

/// <summary>What kind of file a picture becomes. Every kind shows the same picture.</summary>
public enum PictureFormat
{
    /// <summary>Pixels: opens everywhere.</summary>
    Png,

    /// <summary>Lines and text for web pages and vector editors; lettering in the sans-serif face of whoever looks.</summary>
    Svg,

    /// <summary>One page with the lettering inside, to print or to send.</summary>
    Pdf,
}
