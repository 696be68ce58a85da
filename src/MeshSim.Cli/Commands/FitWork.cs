using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Files;
using MeshSim.Files.Writing;
using MeshSim.Fitting;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>fit</c>.</summary>
internal static class FitWork
{
    /// <summary>Fits, writes the answer, and stores it where that is asked.</summary>
    public static ExitCode Run(FitCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        string folder = parsed.GetRequiredValue(shape.Home);
        Home home = ReadHome.From(folder, terminal).Home;
        ImmutableArray<Network> networks = parsed.GetValue(shape.Network) is { } name
            ? [StudyRequest.Find(home.Networks, network => network.Name.Value, name, "networks")]
            : home.Networks;
        ImmutableArray<FitResult> results = Steps.Show(terminal, networks.Length, step => networks.SelectMany(network =>
        {
            step($"Fitting {network.Name}");
            return FitStudy.Run(home, [network], terminal.Stopping);
        }).ToImmutableArray());
        if (results.IsEmpty)
            throw new InputException($"{folder}: error: there are no readings to fit to; put what the radios report into {HomeFileNames.Readings}");

        string result = parsed.GetValue(shape.Json)
            ? JsonText.OfEach(results.Select(answer => FitJson.Of(home, answer)))
            : string.Join('\n', results.Select(answer => Section(answer, terminal.Width)));
        Result.Write(terminal, file, result);
        if (parsed.GetValue(shape.Write)) Store(folder, FitStudy.Applied(home, results), terminal);
        return results.Any(answer => !answer.Findings.IsEmpty) ? ExitCode.GoalNotMet : ExitCode.Done;
    }

    private static void Store(string folder, Home fitted, Terminal terminal)
    {
        string path = Path.Combine(folder, HomeFileNames.Fit);
        StagedFile.WriteOwn(path, FitText.Of(fitted));
        terminal.Error.Write($"{path}: written; every command uses it now, and deleting it goes back to the catalogue\n");
    }

    private static string Section(FitResult answer, int width)
    {
        string text = string.Concat(FitWords.Of(answer).Select(sentence => TextTable.Paragraph(sentence, width)));
        text += "\n" + TextTable.Render(FitTables.Quality(answer), width);
        text += "\n" + TextTable.Render(FitTables.Parameters(answer), width);
        return text + string.Concat(FitWords.Remarks(answer).Select(sentence => "\n" + TextTable.Paragraph(sentence, width)));
    }
}
