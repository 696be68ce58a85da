using MeshSim.Drawing.Inks;
using MeshSim.FloorPlans;

namespace MeshSim.Drawing.Tests.Scenes;

/// <summary>What the pictures of <see cref="TwoStoreyFlat"/> show.</summary>
internal static class Contents
{
    public static MapContents Of(StoreyName storey, PictureSize? size = null)
    {
        using var ink = new Ink();
        return MapContents.Of(SyntheticCoverage.Coverage, SyntheticCoverage.Map(storey), SyntheticCoverage.Repeaters, size ?? PictureSize.Default, ink);
    }
}
