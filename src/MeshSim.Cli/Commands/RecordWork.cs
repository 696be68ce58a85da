using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>record</c>.</summary>
internal static class RecordWork
{
    /// <summary>A page of a binder or a narrow terminal, columns.</summary>
    private const int WidestBlock = 80;

    /// <summary>Puts the record together, writes it, and the table where a file is given.</summary>
    public static ExitCode Run(RecordCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        var all = Steps.Show<ImmutableArray<(Network Network, ImmutableArray<DeviceRecord> Records)>>(terminal, request.Networks.Length, step =>
        [
            .. request.Networks.Select(network =>
            {
                step($"Record of {network.Name}");
                return (network, RecordStudy.Run(request.Home, network, request.Options));
            }),
        ]);
        if (file is not null) StagedFile.Write(file, RecordCsv.Of(all.SelectMany(network => network.Records)));
        terminal.Output.Write(parsed.GetValue(shape.Study.Json)
            ? JsonText.OfEach(all.Select(one => RecordJson.Of(request.Home, one.Network, request.Options, one.Records)))
            : Text(request.Home, [.. all.SelectMany(network => network.Records)], Math.Min(terminal.Width, WidestBlock)));
        if (file is not null) terminal.Error.Write($"The table is in {file}\n");
        return ExitCode.Done;
    }

    private static string Text(Home home, ImmutableArray<DeviceRecord> records, int width) =>
        TextTable.Paragraph(RecordWords.Answer(records), width)
        + string.Concat(RecordWords.Cautions.Select(caution => TextTable.Paragraph(caution, width)))
        + string.Concat(records.Select(record => "\n" + TextTable.Render(DeviceRecordTable.Of(home, record), width)));
}
