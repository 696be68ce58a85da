using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.Json;

namespace MeshSim.Cli.Tests.Reporting;

/// <summary>A browser without a window, where there is one: named by MESHSIM_BROWSER, else found on the path.</summary>
internal sealed class Browser
{
    /// <summary>Why a test is skipped.</summary>
    public const string Absent = "skipped: no browser found";

    /// <summary>A page that takes longer than this has hung.</summary>
    private const int LongestSeconds = 120;

    private readonly string program;

    private Browser(string program) => this.program = program;

    /// <summary>The browser, or null.</summary>
    public static Browser? Found { get; } = Find() is { } program ? new Browser(program) : null;

    /// <summary>Shows a page in a frame of a width and asks it something.</summary>
    /// <param name="page">The page as HTML.</param>
    /// <param name="widthPixels">Width of the frame.</param>
    /// <param name="question">An expression over <c>view</c>, the window of the page, whose value is written as JSON.</param>
    /// <returns>The value, and what went wrong in the page: errors that were thrown or told to the console.</returns>
    public async Task<(JsonElement Answer, string[] Errors)> Ask(string page, int widthPixels, string question)
    {
        const string listen = "<script>window.troubles=[];window.addEventListener('error',e=>troubles.push(String(e.message)));"
            + "console.error=console.warn=(...words)=>troubles.push(words.join(' '));</script>";
        string heard = page.Replace("<head>", "<head>" + listen, StringComparison.Ordinal);
        string frame = $"""
            <!DOCTYPE html><body><iframe width="{widthPixels.ToString(CultureInfo.InvariantCulture)}" height="800" style="border:0" srcdoc="{WebUtility.HtmlEncode(heard)}"></iframe>
            <script>
            addEventListener("load", () => {"{"}
              const view = document.querySelector("iframe").contentWindow;
              const answer = {question};
              document.body.textContent = JSON.stringify({"{"} answer, errors: view.troubles {"}"});
            {"}"});
            </script></body>
            """;
        using var folder = new TemporaryFolder();
        await File.WriteAllTextAsync(folder["frame.html"], frame, TestContext.Current.CancellationToken);
        string dom = await Start("--dump-dom", new Uri(folder["frame.html"]).AbsoluteUri);
        int start = dom.IndexOf("{\"answer\"", StringComparison.Ordinal), end = dom.LastIndexOf('}');
        start.Should().BeGreaterThanOrEqualTo(0, "the page answers: {0}", dom.Length > 500 ? dom[..500] : dom);
        JsonElement result = JsonDocument.Parse(WebUtility.HtmlDecode(dom[start..(end + 1)])).RootElement;
        return (result.GetProperty("answer"), [.. result.GetProperty("errors").EnumerateArray().Select(error => error.GetString()!)]);
    }

    /// <summary>Prints a page.</summary>
    /// <returns>The PDF file.</returns>
    public async Task<byte[]> Print(string page)
    {
        using var folder = new TemporaryFolder();
        await File.WriteAllTextAsync(folder["page.html"], page, TestContext.Current.CancellationToken);
        await Start($"--print-to-pdf={folder["page.pdf"]}", "--no-pdf-header-footer", new Uri(folder["page.html"]).AbsoluteUri);
        return await File.ReadAllBytesAsync(folder["page.pdf"], TestContext.Current.CancellationToken);
    }

    private async Task<string> Start(params string[] args)
    {
        using var profile = new TemporaryFolder();
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        string[] all = ["--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", $"--user-data-dir={profile["profile"]}", .. args];
        foreach (string arg in all) start.ArgumentList.Add(arg);
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        limit.CancelAfter(TimeSpan.FromSeconds(LongestSeconds));
        using var process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(limit.Token), error = process.StandardError.ReadToEndAsync(limit.Token);
        await process.WaitForExitAsync(limit.Token);
        process.ExitCode.Should().Be(0, await error);
        return await output;
    }

    private static string? Find()
    {
        if (Environment.GetEnvironmentVariable("MESHSIM_BROWSER") is { Length: > 0 } named) return named;
        string[] folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return new[] { "chromium", "chromium-browser" }.SelectMany(name => folders.Select(folder => Path.Combine(folder, name))).FirstOrDefault(File.Exists);
    }
}
