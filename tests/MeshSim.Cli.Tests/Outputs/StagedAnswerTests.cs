using MeshSim.Cli.Outputs;

namespace MeshSim.Cli.Tests.Outputs;

public sealed class StagedAnswerTests : IDisposable
{
    private readonly StringWriter output = new(), error = new();

    private Terminal Terminal => new() { Output = output, Error = error };

    public void Dispose()
    {
        output.Dispose();
        error.Dispose();
    }

    [Fact]
    public void Text_goes_to_the_output_and_the_place_of_the_pictures_to_the_errors()
    {
        using TemporaryFolder folder = new();
        using StagedAnswer staged = new(file: null, folder["maps"]);
        staged.Pictures!.Add("a.svg", "picture");

        staged.Write(Terminal, "answer\n");

        output.ToString().Should().Be("answer\n");
        error.ToString().Should().Be($"The pictures are in {folder["maps"]}\n");
        File.ReadAllText(Path.Combine(folder["maps"], "a.svg")).Should().Be("picture");
    }

    [Fact]
    public void Where_nothing_is_drawn_no_pictures_are_promised()
    {
        using TemporaryFolder folder = new();
        using StagedAnswer staged = new(file: null, folder["maps"]);

        staged.Write(Terminal, "answer\n");

        error.ToString().Should().Be($"There is nothing to draw: {folder["maps"]} holds no picture\n");
    }

    [Fact]
    public void Without_pictures_nothing_is_said_of_them()
    {
        using TemporaryFolder folder = new();
        using StagedAnswer staged = new(folder["answer.txt"], pictures: null);

        staged.Write(Terminal, "answer\n");

        staged.Pictures.Should().BeNull();
        (output.ToString() + error).Should().BeEmpty();
        File.ReadAllText(folder["answer.txt"]).Should().Be("answer\n");
    }

    [Fact]
    public void What_is_never_written_leaves_nothing_behind()
    {
        using TemporaryFolder folder = new();
        using (StagedAnswer staged = new(folder["answer.txt"], folder["maps"])) staged.Pictures!.Add("a.svg", "picture");

        Directory.EnumerateFileSystemEntries(folder.Path).Should().BeEmpty();
    }

    [Fact]
    public void A_place_that_must_not_be_written_is_refused_before_any_work()
    {
        using TemporaryFolder folder = new();

        Action make = () => _ = new StagedAnswer(folder.Path, folder["maps"]);

        make.Should().Throw<InputException>();
        Directory.EnumerateFileSystemEntries(folder.Path).Should().BeEmpty();
    }
}
