using System.Diagnostics;

namespace MeshSim.Cli.Tests;

/// <summary>The program suggests how a line goes on, and the lines in docs/completion.md make each shell ask it.</summary>
public sealed class CompletionTests
{
    private const string Stopped = "skipped: this shell is not on this machine";

    private static readonly string Page = File.ReadAllText(Path.Combine(Run.Root, "docs", "completion.md"));

    /// <summary>How each shell is made to complete a line without a person at its keyboard, and to print what it would offer.</summary>
    private static readonly Dictionary<string, string> Asking = new(StringComparer.Ordinal)
    {
        ["bash"] = """
            COMP_LINE="$1" COMP_POINT=${#1}; read -ra COMP_WORDS <<< "$1"
            [[ $1 == *' ' ]] && COMP_WORDS+=("")
            COMP_CWORD=$(( ${#COMP_WORDS[@]} - 1 )); _meshsim; printf '%s\n' "${COMPREPLY[@]}"
            """,
        ["zsh"] = """
            words=("${(@s: :)1}"); CURRENT=${#words}; _meshsim
            """,
        ["fish"] = """
            complete --do-complete $argv[1] | string split --fields 1 \t
            """,
        ["pwsh"] = """
            (TabExpansion2 $args[0] $args[0].Length).CompletionMatches | ForEach-Object { $_.CompletionText }
            """,
    };

    [Theory]
    [InlineData("ro", "routers", "routes")]
    [InlineData("meshsim ro", "routers", "routes")]
    [InlineData("meshsim new my-home --like ", "bungalow", "flat", "loft", "semi-detached", "terrace")]
    [InlineData("meshsim map my-home --format ", "pdf", "png", "svg")]
    [InlineData("meshsim routes my-home --m", "--model")]
    [InlineData("meshsim loss cavity-brick-f", "cavity-brick-foil")]
    public async Task The_program_suggests_how_a_line_goes_on(string line, params string[] expected)
    {
        Run run = await Run.Of($"[suggest:{line.Length}]", line);

        run.Code.Should().Be(0);
        run.Error.Should().BeEmpty();
        run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Should().Equal(expected);
    }

    [Theory]
    [InlineData("bash", "bash")]
    [InlineData("zsh", "zsh")]
    [InlineData("fish", "fish")]
    [InlineData("pwsh", "powershell")]
    public async Task A_shell_offers_what_the_program_suggests(string shell, string block)
    {
        if (!IsHere(shell)) Assert.Skip(Stopped);
        using var folder = new TemporaryFolder();

        (await Offered(shell, block, "meshsim ro", folder)).Should().BeEquivalentTo("routers", "routes");
        (await Offered(shell, block, "meshsim new my-home --like ", folder)).Should().Contain(["terrace", "flat"]);
        (await Offered(shell, block, "meshsim routes my-home --mo", folder)).Should().BeEquivalentTo("--model");
    }

    private static async Task<string[]> Offered(string shell, string block, string line, TemporaryFolder folder)
    {
        Install(folder);
        string script = folder[shell == "pwsh" ? "ask.ps1" : "ask"];
        string stubs = shell == "zsh" ? "compdef() { }\n_files() { }\ncompadd() { print -l -- \"${(@M)found:#$words[CURRENT]*}\" }\n" : "";
        await File.WriteAllTextAsync(script, $"{stubs}{Block(block)}\n{Asking[shell]}\n", TestContext.Current.CancellationToken);

        var start = new ProcessStartInfo(shell, [script, line]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["PATH"] = folder["bin"] + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH");
        start.Environment["HOME"] = folder["bin"];
        using var process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        (await error).Should().BeEmpty();
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    /// <summary>Puts a command called meshsim, which starts the built program, into a folder of its own.</summary>
    private static void Install(TemporaryFolder folder)
    {
        Directory.CreateDirectory(folder["bin"]);
        string command = Path.Combine(folder["bin"], "meshsim");
        File.WriteAllText(command, $"#!/bin/sh\nexec dotnet '{Path.Combine(AppContext.BaseDirectory, "MeshSim.Cli.dll")}' \"$@\"\n");
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(command, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    private static string Block(string language)
    {
        string fence = $"```{language}\n";
        int start = Page.IndexOf(fence, StringComparison.Ordinal) + fence.Length;
        return Page[start..Page.IndexOf("\n```", start, StringComparison.Ordinal)];
    }

    private static bool IsHere(string shell) => !OperatingSystem.IsWindows()
        && Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, shell)));
}
