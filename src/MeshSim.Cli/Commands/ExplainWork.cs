using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Files.Diagnostics;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>explain</c>.</summary>
internal static class ExplainWork
{
    /// <summary>Explains a device or a room and writes the answer.</summary>
    public static ExitCode Run(ExplainCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal).On(shape.Grid, parsed);
        string name = parsed.GetRequiredValue(shape.Name);
        bool json = parsed.GetValue(shape.Study.Json), namesNetwork = parsed.GetValue(shape.Study.Network) is not null;
        (string result, ExitCode code) = request.Home.Devices.FirstOrDefault(device => device.Id.Value == name) is { } known
            ? Device(request, known, namesNetwork, json, terminal)
            : Room(request, RoomOf(request.Home, name), json, terminal);
        Result.Write(terminal, file, result);
        return code;
    }

    private static (string Result, ExitCode Code) Device(StudyRequest request, Device device, bool namesNetwork, bool json, Terminal terminal)
    {
        if (namesNetwork && request.Networks[0].Name != device.Network)
            throw new InputException($"error: {device.Id} belongs to network {device.Network}, not {request.Networks[0].Name}; leave --network out");

        DeviceExplanation answer = Steps.Show(terminal, 1, step =>
        {
            step($"Trying what helps {device.Id}");
            return ExplainStudy.Device(request.Home, device, request.Options);
        });
        string result = json ? JsonText.Of(DeviceExplanationJson.Of(answer)) : Text(answer, terminal.Width);
        return (result, answer.Now.IsOn && !answer.Now.IsReached && !ExplainWords.IsCoordinator(answer) ? ExitCode.GoalNotMet : ExitCode.Done);
    }

    private static (string Result, ExitCode Code) Room(StudyRequest request, RoomName room, bool json, Terminal terminal)
    {
        if (request.Networks.IsEmpty) throw new InputException("error: the home has no network, so there is nothing to explain");
        request.Storeys(request.Home.FloorPlan.Storeys.First(storey => storey.Rooms.Any(known => known.Name == room)).Name.Value);
        RoomExplanation answer = Steps.Show(terminal, 1, step =>
        {
            step($"Trying what helps {room}");
            return ExplainStudy.Room(request.Home, request.Networks[0], room, request.Options);
        });
        string result = json ? JsonText.Of(RoomExplanationJson.Of(answer)) : Text(answer, terminal.Width);
        return (result, answer.Now.DarkShare > DarkWords.MostlyDark ? ExitCode.GoalNotMet : ExitCode.Done);
    }

    private static string Text(DeviceExplanation answer, int width)
    {
        string text = TextTable.Paragraph(ExplainWords.Answer(answer), width) + TextTable.Paragraph(CoverageWords.Basis(answer.Coverage), width);
        if (answer.Budget is { } budget) text += "\n" + TextTable.Render(BudgetTable.Of(budget) with { Notes = OtherLinks(answer) }, width);
        text += Lines(ExplainWords.Situations(answer), width);
        if (!answer.Fixes.IsEmpty) text += "\n" + TextTable.Render(FixTables.Of(answer), width);
        return text;
    }

    // The answer names the weakest link of the whole way, which need not be the one in the table.
    private static ImmutableArray<string> OtherLinks(DeviceExplanation answer) => answer.Now.Reach?.Route is { Hops: > 1 } route
        ? [$"This is the first link; the way goes on over {Figures.Count(route.Hops - 1)} more, and the weakest of all has {Figures.Decibels(route.WeakestMargin)} dB."]
        : [];

    private static string Text(RoomExplanation answer, int width)
    {
        string text = TextTable.Paragraph(RoomWords.Answer(answer), width) + TextTable.Paragraph(CoverageWords.Basis(answer.Coverage), width);
        if (answer.Budget is { } budget) text += "\n" + TextTable.Render(BudgetTable.Of(budget), width);
        text += Lines(RoomWords.Situations(answer), width);
        if (!answer.Fixes.IsEmpty) text += "\n" + TextTable.Render(FixTables.Of(answer), width);
        return text;
    }

    private static string Lines(IEnumerable<string> lines, int width)
    {
        string text = string.Concat(lines.Select(line => TextTable.Paragraph(line, width)));
        return text.Length == 0 ? "" : "\n" + text;
    }

    private static RoomName RoomOf(Home home, string name)
    {
        string[] rooms = [.. home.FloorPlan.Storeys.SelectMany(storey => storey.Rooms).Select(room => room.Name.Value)];
        if (rooms.Contains(name, StringComparer.Ordinal)) return new(name);
        string help = KnownNames.Help(name, [.. home.Devices.Select(device => device.Id.Value), .. rooms], "devices and rooms");
        throw new InputException($"error: {KnownNames.Quote(name)} is neither a device nor a room of the home; {help}");
    }
}
