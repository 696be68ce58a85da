using MeshSim.Drawing;
using MeshSim.Files;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Cli.Outputs;

/// <summary>The plan of a home, in order or not, as a picture in a file.</summary>
internal static class PlanFile
{
    /// <summary>The endings that say what the file becomes.</summary>
    public const string Endings = ".png, .svg, .pdf";

    /// <summary>What a file becomes by its ending; null for any other ending.</summary>
    public static PictureFormat? FormatOf(string file) => Path.GetExtension(file).ToLowerInvariant() switch
    {
        ".png" => PictureFormat.Png,
        ".svg" => PictureFormat.Svg,
        ".pdf" => PictureFormat.Pdf,
        _ => null,
    };

    /// <summary>Draws what could be read.</summary>
    /// <param name="file">The file, with one of the endings.</param>
    /// <param name="read">What reading gave.</param>
    /// <returns>Whether there was anything to draw.</returns>
    public static bool Write(string file, HomeReadResult read)
    {
        if (read.Draft is not { } draft || PlanPicture.Draw(DraftOf(draft, read.Home is not null), FormatOf(file)!.Value) is not { } picture) return false;
        StagedFile.Write(file, picture);
        return true;
    }

    private static PlanDraft DraftOf(HomeDraft draft, bool isInOrder) => new(
        draft.Home,
        [.. draft.Diagnostics.Select(one => new PlanRemark(TextOf(one.Diagnostic), one.Diagnostic.Severity == Severity.Error, one.Storey, one.Point))],
        isInOrder ? [] : [.. draft.Unbuilt.Select(room => new PlanOutline(room.Storey, room.Name.Value, room.Corners))]);

    // The folder is the same for all, so the file's own name is enough.
    private static string TextOf(Diagnostic one)
    {
        string help = one.Help.Length > 0 ? "; " + one.Help : "";
        return FormattableString.Invariant($"{Path.GetFileName(one.File)}({one.Line},{one.Column}): {one.Message}{help}");
    }
}
