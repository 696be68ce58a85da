namespace MeshSim.Drawing.Inks;

/// <summary>How text is set. The default has no size and draws nothing.</summary>
/// <param name="IsBold">The semi-bold face instead of the regular one.</param>
/// <param name="SizePixels">Size of the face, pixels.</param>
internal readonly record struct TextStyle(bool IsBold, float SizePixels)
{
    /// <summary>Title of the sheet.</summary>
    public static readonly TextStyle Title = new(true, 27);

    /// <summary>Title of a sheet that stands inside a page.</summary>
    public static readonly TextStyle SheetTitle = new(true, 18);

    /// <summary>Line below the title.</summary>
    public static readonly TextStyle Subtitle = new(false, 15.5f);

    /// <summary>Heading in the column.</summary>
    public static readonly TextStyle Heading = new(true, 15.5f);

    /// <summary>Text in the column.</summary>
    public static readonly TextStyle Body = new(false, 14);

    /// <summary>Stressed text in the column.</summary>
    public static readonly TextStyle Strong = new(true, 14);

    /// <summary>Names of rooms.</summary>
    public static readonly TextStyle Room = new(true, 15);

    /// <summary>Ids on the map.</summary>
    public static readonly TextStyle Label = new(false, 13);

    /// <summary>Stressed ids on the map.</summary>
    public static readonly TextStyle StrongLabel = new(true, 13);

    /// <summary>Contour labels, scale bar, provenance.</summary>
    public static readonly TextStyle Small = new(false, 12);

    /// <summary>Letters of roles and numbers of repeaters.</summary>
    public static readonly TextStyle Letter = new(true, 11.5f);

    /// <summary>Distance between base lines, pixels.</summary>
    public float LineHeight => MathF.Ceiling(SizePixels * 1.35f);

    /// <summary>Height of a capital, pixels: what centres a letter. 0.73 of the size in the embedded face.</summary>
    public float CapitalHeight => SizePixels * 0.73f;
}
