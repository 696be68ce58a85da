using MeshSim.Cli.Commands;

namespace MeshSim.Cli.Tests;

public sealed class ApplicationTests
{
    public static TheoryData<string, string> WrongCommandLines => new()
    {
        { "", "Required command was not provided" },
        { "lnks home", "did you mean \"links\"?" },
        { "links", "Required argument 'HOME' missing" },
        { "links home --modl multi-wall", "did you mean \"--model\"?" },
        { "check home --draw plan.gif", "\"plan.gif\" ends in none of .png, .svg, .pdf" },
        { "map home --values --out", "Required argument missing for option: '--out'" },
        { "sheets home --out sheets.png", "name a file that ends in .pdf, or a folder" },
        { "links home --model two-wall", "--model: Argument 'two-wall' not recognized. Must be one of: 'detour' 'log-distance' 'multi-wall' 'site-general'" },
        { "links home other", "\"other\" is one word too many" },
        { "map home --values", "--values needs --out" },
        { "map home --step 0,1", "use a point: 0.1" },
        { "map home --step 0", "0 is outside 0.01 to 2 m" },
        { "map home --height NaN", "is not a number" },
        { "report home", "Option '--out' is required" },
        { "loss", "give one of NAME, --layers or --list" },
        { "loss brick-half --list", "give one of NAME, --layers or --list" },
        { "loss brick-half --frequency 2,4", "use a point: 2.4; several values are separated by spaces" },
        { "loss brick-half --angle 90", "90 is outside 0 to 89.9 degrees" },
        { "loss brik-half", "did you mean \"brick-half\"?" },
        { "loss --layers plasterbord:12.5", "did you mean \"plasterboard\"?" },
        { "loss --layers brick:12,5", "decimal point" },
        { "links @file", "@file" },
        { "links @file --network", "--network" },
    };

    [Theory]
    [MemberData(nameof(WrongCommandLines))]
    public async Task A_wrong_command_line_ends_with_two_and_one_line_that_says_why(string commandLine, string reason)
    {
        Run run = await Run.Of(commandLine.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        run.Code.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.ErrorLines.Should().ContainSingle().Which.Should().Contain(reason);
    }

    [Fact]
    public async Task What_fails_on_another_thread_fails_as_what_it_is()
    {
        Func<Task> run = () => Application.WithItsOwnFault(() =>
        {
            Parallel.For(0, 2, _ => Parallel.For(0, 1, _ => throw new InputException("the home is wrong")));
            return Task.FromResult(0);
        });

        (await run.Should().ThrowAsync<InputException>()).Which.Lines.Should().Equal("the home is wrong");
    }

    public static TheoryData<string, string> OptionsThatTakeSomething =>
    [
        .. from command in MeshSimCommand.Make(new() { Output = TextWriter.Null, Error = TextWriter.Null }).Subcommands
           from option in command.Options
           where option.Arity.MinimumNumberOfValues > 0
           select (command.Name, option.Name),
    ];

    [Theory]
    [MemberData(nameof(OptionsThatTakeSomething))]
    public async Task An_option_without_what_belongs_to_it_is_no_fault_of_the_program(string command, string option)
    {
        Run run = await Run.Of(command, "home", option);

        run.Code.Should().Be((int)ExitCode.BadInput);
        run.Error.Should().Contain($"Required argument missing for option: '{option}'");
    }

    [Fact]
    public async Task The_version_is_a_result()
    {
        Run run = await Run.Of("--version");

        run.Code.Should().Be(0);
        run.Output.Should().MatchRegex(@"^\d+\.\d+\.\d+\s*$", "it is as Directory.Build.props has it");
    }

    [Fact]
    public async Task A_fault_ends_with_three_in_two_lines_without_a_stack_trace()
    {
        (int code, string error) = await Failing(new InvalidOperationException("broken\nin two"), trace: false);

        code.Should().Be(3);
        error.Should().Be("internal error: broken in two\nSet MESHSIM_TRACE=1 and run again to see where; nothing was written.\n");
    }

    [Fact]
    public async Task A_fault_shows_where_it_happened_on_request()
    {
        (int code, string error) = await Failing(new InvalidOperationException("broken"), trace: true);

        code.Should().Be(3);
        error.Should().Contain("   at MeshSim.Cli.");
    }

    [Fact]
    public async Task An_output_that_cannot_be_written_is_bad_input()
    {
        (int code, string error) = await Failing(new IOException("disk full"), trace: false);

        code.Should().Be(2);
        error.Should().Be("error: the output cannot be written: disk full\n");
    }

    [Fact]
    public async Task A_stopped_run_writes_nothing()
    {
        using var temporary = new TemporaryFolder();
        using var stopped = new CancellationTokenSource();
        await stopped.CancelAsync();
        using var output = new StringWriter();
        using var error = new StringWriter();

        int code = await Application.RunAsync(["report", Run.TwoRooms, "--out", temporary["out"]], new() { Output = output, Error = error }, stopped.Token);

        code.Should().Be(130);
        output.ToString().Should().BeEmpty();
        temporary.Contents().Should().BeEmpty();
    }

    private static async Task<(int Code, string Error)> Failing(Exception failure, bool trace)
    {
        using var output = new FailingWriter(failure);
        using var error = new StringWriter();
        int code = await Application.RunAsync(["check", Run.TwoRooms], new() { Output = output, Error = error, Trace = trace });
        return (code, error.ToString());
    }

    private sealed class FailingWriter(Exception failure) : StringWriter
    {
        public override void Write(string? value) => throw failure;
    }
}
