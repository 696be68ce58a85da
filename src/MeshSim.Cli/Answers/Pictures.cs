using MeshSim.Drawing;
using MeshSim.Studies;

namespace MeshSim.Cli.Answers;

/// <summary>The pictures of an answer.</summary>
internal static class Pictures
{
    /// <summary>The margin map of one storey as PNG, with routes and recommended repeaters.</summary>
    public static byte[] Margin(NetworkAnswer answer, MarginMap map) =>
        MarginPicture.Png(answer.Coverage, map, answer.Placement, PictureSize.Default);
}
