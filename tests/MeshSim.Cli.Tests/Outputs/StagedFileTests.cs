using MeshSim.Cli.Outputs;

namespace MeshSim.Cli.Tests.Outputs;

public sealed class StagedFileTests
{
    [Fact]
    public void A_file_is_replaced_and_nothing_is_left_beside_it()
    {
        using var temporary = new TemporaryFolder();
        File.WriteAllText(temporary["links.json"], "a longer text than the new one");

        StagedFile.Write(temporary["links.json"], "new\n");

        File.ReadAllBytes(temporary["links.json"]).Should().Equal("new\n"u8.ToArray());
        Directory.EnumerateFileSystemEntries(temporary.Path).Should().ContainSingle();
    }

    [Theory]
    [InlineData("home.yaml")]
    [InlineData("Devices.csv")]
    public void A_file_of_a_home_is_never_overwritten(string name)
    {
        using var temporary = new TemporaryFolder();

        Action write = () => StagedFile.Write(temporary[name], "new");

        write.Should().Throw<InputException>();
        Directory.EnumerateFileSystemEntries(temporary.Path).Should().BeEmpty();
    }

    [Fact]
    public void A_folder_in_the_place_of_the_file_is_refused()
    {
        using var temporary = new TemporaryFolder();

        Action write = () => StagedFile.Write(temporary.Path, "new");

        write.Should().Throw<InputException>().WithMessage("*is a folder*");
    }

    [Fact]
    public void An_empty_name_is_refused()
    {
        Action write = () => StagedFile.Write("", "new");

        write.Should().Throw<InputException>().WithMessage("*--out is empty*");
    }

    [Fact]
    public void A_folder_that_does_not_exist_is_named()
    {
        using var temporary = new TemporaryFolder();

        Action write = () => StagedFile.Write(temporary["no/such/links.json"], "new");

        write.Should().Throw<InputException>().WithMessage("*there is no folder*");
    }
}
