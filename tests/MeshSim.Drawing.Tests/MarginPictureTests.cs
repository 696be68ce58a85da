using MeshSim.Drawing.Tests.Scenes;

namespace MeshSim.Drawing.Tests;

public sealed class MarginPictureTests
{
    [Fact]
    public void Look()
    {
        File.WriteAllBytes("/tmp/mp-ground.png", MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Ground), SyntheticCoverage.Repeaters, PictureSize.Default));
        File.WriteAllBytes("/tmp/mp-upper.png", MarginPicture.Png(SyntheticCoverage.Coverage, SyntheticCoverage.Map(TwoStoreyFlat.Upper), SyntheticCoverage.Repeaters, PictureSize.Default));
    }
}
