using MeshSim.OpenData.Tests.Accuracy.Page;

namespace MeshSim.OpenData.Tests.Accuracy;

/// <summary>docs/accuracy.md and its pictures are what the data give. To make them anew, run the tests with MESHSIM_APPROVE=1.</summary>
public sealed class AccuracyPageTests
{
    private static readonly string Stored = Path.Combine(DataFolders.Repository, "docs", "accuracy.md");
    private static readonly string Pictures = Path.Combine(DataFolders.Repository, "docs", "pictures", "accuracy");

    private static bool IsApproved => Environment.GetEnvironmentVariable("MESHSIM_APPROVE") == "1";

    [Fact]
    public void The_page_is_what_the_data_give()
    {
        string page = AccuracyPage.Write();
        if (IsApproved) File.WriteAllText(Stored, page);
        page.Should().Be(File.Exists(Stored) ? File.ReadAllText(Stored) : "", "that is what docs/accuracy.md says");
    }

    [Fact]
    public void The_pictures_are_what_the_data_give()
    {
        (string File, byte[] Png)[] drawn = [.. PictureFiles.Draw()];
        if (IsApproved)
        {
            Directory.CreateDirectory(Pictures);
            foreach ((string file, byte[] png) in drawn) File.WriteAllBytes(Path.Combine(Pictures, file), png);
        }

        Directory.EnumerateFiles(Pictures).Select(Path.GetFileName).Should().BeEquivalentTo(drawn.Select(picture => picture.File));
        foreach ((string file, byte[] png) in drawn) File.ReadAllBytes(Path.Combine(Pictures, file)).Should().Equal(png, "{0} is drawn from the same figures", file);
    }
}
