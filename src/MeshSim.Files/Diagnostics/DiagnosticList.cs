using System.Collections.Immutable;

namespace MeshSim.Files.Diagnostics;

/// <summary>
/// Collects the diagnostics of one run. Each file keeps the first so many of each severity and counts the rest, so that a
/// table with a hundred thousand bad lines costs neither memory nor the reader's patience.
/// </summary>
internal sealed class DiagnosticList
{
    /// <summary>How many diagnostics of one severity are shown for one file.</summary>
    public const int ShownPerFile = 50;

    // Tables are read line by line, but some checks come after the last line; a few times the shown number
    // makes it likely that the first ones by place are among the kept ones.
    private const int KeptPerFile = 4 * ShownPerFile;

    private readonly ImmutableArray<string> files;
    private readonly List<Diagnostic> kept = [];
    private readonly Dictionary<(string File, Severity Severity), int> counts = [];

    /// <summary>Makes an empty list.</summary>
    /// <param name="files">The files of the run, in the order in which their diagnostics are shown.</param>
    public DiagnosticList(ImmutableArray<string> files) => this.files = files;

    /// <summary>Where on the plan the parts of the files lie.</summary>
    public PlanSpots Spots { get; } = new();

    /// <summary>How many errors there are.</summary>
    public int ErrorCount { get; private set; }

    /// <summary>Whether there is an error.</summary>
    public bool HasErrors => ErrorCount > 0;

    /// <summary>Whether a file has an error.</summary>
    public bool HasErrorsIn(string file) => counts.GetValueOrDefault((file, Severity.Error)) > 0;

    /// <summary>Adds an error.</summary>
    public void Error(SourcePlace place, string message, string help) => Add(place, Severity.Error, message, () => help);

    /// <summary>Adds an error whose help takes time to find.</summary>
    public void Error(SourcePlace place, string message, Func<string> help) => Add(place, Severity.Error, message, help);

    /// <summary>Adds a notice.</summary>
    public void Notice(SourcePlace place, string message, string help) => Add(place, Severity.Notice, message, () => help);

    /// <summary>The diagnostics of one severity by file, line and column; of those at one place the first added first.</summary>
    public ImmutableArray<Diagnostic> Sorted(Severity severity)
    {
        ImmutableArray<Diagnostic>.Builder sorted = ImmutableArray.CreateBuilder<Diagnostic>();
        foreach (string file in files)
        {
            Diagnostic[] ofFile = [.. kept
                .Where(diagnostic => diagnostic.File == file && diagnostic.Severity == severity)
                .OrderBy(diagnostic => diagnostic.Line)
                .ThenBy(diagnostic => diagnostic.Column)];
            sorted.AddRange(ofFile.AsSpan(0, Math.Min(ofFile.Length, ShownPerFile)));
            int hidden = counts.GetValueOrDefault((file, severity)) - ShownPerFile;
            if (hidden > 0) sorted.Add(More(ofFile[ShownPerFile], hidden));
        }

        return sorted.ToImmutable();
    }

    private static Diagnostic More(Diagnostic first, int hidden) =>
        first with
        {
            Message = FormattableString.Invariant($"and {hidden} more"),
            Help = first.Severity == Severity.Error ? "put the ones above right first" : "only the first are listed",
        };

    private void Add(SourcePlace place, Severity severity, string message, Func<string> help)
    {
        if (severity == Severity.Error) ErrorCount++;
        int count = counts.GetValueOrDefault((place.File, severity));
        counts[(place.File, severity)] = count + 1;
        if (count < KeptPerFile) kept.Add(new(place.File, place.Line, place.Column, severity, message, help()));
    }
}
