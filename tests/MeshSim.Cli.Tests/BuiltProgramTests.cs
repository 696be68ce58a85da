using System.Diagnostics;
using System.Globalization;

namespace MeshSim.Cli.Tests;

/// <summary>The built program, started as a person starts it.</summary>
public sealed class BuiltProgramTests
{
    [Fact]
    public async Task A_report_has_the_same_bytes_on_one_processor_and_on_eight()
    {
        using var folder = new TemporaryFolder();
        string one = await ReportOn(1, folder), eight = await ReportOn(8, folder);

        string[] files = [.. Directory.EnumerateFiles(one).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
        files.Should().Contain("index.html").And.Contain("links.json");
        Directory.EnumerateFiles(eight).Select(path => Path.GetFileName(path)).Should().BeEquivalentTo(files);
        foreach (string file in files)
            File.ReadAllBytes(Path.Combine(eight, file)).Should().Equal(File.ReadAllBytes(Path.Combine(one, file)), "{0} does not depend on threads", file);
    }

    [Fact]
    public async Task Bad_input_ends_with_code_2_and_without_a_stack_trace()
    {
        (int code, string output, string error) = await Start(1, "check", Path.Combine(Run.Data, "no-such-home"));

        code.Should().Be((int)ExitCode.BadInput);
        output.Should().BeEmpty();
        error.Should().Contain("there is no such folder").And.NotContain("   at ");
    }

    private static async Task<string> ReportOn(int processors, TemporaryFolder folder)
    {
        string target = folder[processors.ToString(CultureInfo.InvariantCulture)];
        (int code, _, string error) = await Start(processors, "report", Run.LongHouse, "--out", target);
        code.Should().Be((int)ExitCode.GoalNotMet, error);
        return target;
    }

    private static async Task<(int Code, string Output, string Error)> Start(int processors, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "MeshSim.Cli.dll"));
        foreach (string arg in args) start.ArgumentList.Add(arg);
        start.Environment["DOTNET_PROCESSOR_COUNT"] = processors.ToString("X", CultureInfo.InvariantCulture);

        using var process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output, await error);
    }
}
