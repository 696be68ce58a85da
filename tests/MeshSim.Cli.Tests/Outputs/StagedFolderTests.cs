using MeshSim.Cli.Outputs;

namespace MeshSim.Cli.Tests.Outputs;

public sealed class StagedFolderTests
{
    [Fact]
    public void A_complete_folder_holds_what_was_added_and_a_list_of_it()
    {
        using var temporary = new TemporaryFolder();
        Fill(temporary["out"], "new");

        Directory.EnumerateFileSystemEntries(temporary.Path).Should().Equal(temporary["out"]);
        File.ReadAllText(temporary["out/page.txt"]).Should().Be("new");
        File.ReadAllLines(temporary["out/" + StagedFolder.ListName]).Skip(1).Should().Equal("page.txt");
    }

    [Fact]
    public void An_earlier_output_is_replaced_as_a_whole()
    {
        using var temporary = new TemporaryFolder();
        using (var old = new StagedFolder(temporary["out"]))
        {
            old.Add("gone.txt", "old");
            old.Complete();
        }

        Fill(temporary["out"], "new");

        Directory.EnumerateFiles(temporary["out"]).Select(Path.GetFileName).Should().BeEquivalentTo("page.txt", StagedFolder.ListName);
    }

    [Fact]
    public void An_earlier_output_stays_while_the_new_one_is_incomplete()
    {
        using var temporary = new TemporaryFolder();
        Fill(temporary["out"], "old");
        IReadOnlyDictionary<string, string> before = temporary.Contents();

        using (var abandoned = new StagedFolder(temporary["out"]))
            abandoned.Add("page.txt", "new");

        temporary.Contents().Should().BeEquivalentTo(before);
    }

    [Fact]
    public void An_empty_folder_may_be_filled()
    {
        using var temporary = new TemporaryFolder();
        Directory.CreateDirectory(temporary["out"]);

        Fill(temporary["out"], "new");

        File.Exists(temporary["out/page.txt"]).Should().BeTrue();
    }

    [Fact]
    public void A_folder_with_a_file_of_somebody_else_is_refused()
    {
        using var temporary = new TemporaryFolder();
        Fill(temporary["out"], "old");
        File.WriteAllText(temporary["out/notes.txt"], "mine");

        Action make = () => new StagedFolder(temporary["out"]).Dispose();

        make.Should().Throw<InputException>().WithMessage("*\"notes.txt\"*");
        File.ReadAllText(temporary["out/notes.txt"]).Should().Be("mine");
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_refused()
    {
        using var temporary = new TemporaryFolder();
        File.WriteAllText(temporary["out"], "mine");

        Action make = () => new StagedFolder(temporary["out"]).Dispose();

        make.Should().Throw<InputException>().WithMessage("*is a file*");
    }

    [Fact]
    public void An_empty_name_is_refused()
    {
        Action make = () => new StagedFolder("").Dispose();

        make.Should().Throw<InputException>().WithMessage("*the name of a folder is empty*");
    }

    [Fact]
    public void The_root_of_a_disk_is_refused()
    {
        Action make = () => new StagedFolder(Path.GetPathRoot(Path.GetTempPath())!).Dispose();

        make.Should().Throw<InputException>();
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_named_as_it_was_given_before_the_work()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "only Linux has a folder that nobody may fill, whoever runs the tests");

        Action make = () => new StagedFolder("/proc/x").Dispose();

        make.Should().Throw<InputException>().WithMessage("/proc/x: error: cannot be written; is /proc read-only, full, or somebody else's?");
    }

    private static void Fill(string path, string content)
    {
        using var folder = new StagedFolder(path);
        folder.Add("page.txt", content);
        folder.Complete();
    }
}
