using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>hub</c>.</summary>
internal static class HubWork
{
    /// <summary>Ranks the sites of the hub and writes the table.</summary>
    public static ExitCode Run(HubCommand shape, ParseResult parsed, Terminal terminal)
    {
        string? file = parsed.GetValue(shape.Out);
        Result.Refuse(file);
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        Home home = request.Home;
        ImmutableArray<Network> networks = Chosen(home, parsed.GetValue(shape.Networks) ?? []);
        ImmutableArray<RoomName> rooms = [.. (parsed.GetValue(shape.Rooms) ?? []).Distinct().Select(name => RoomOf(home, name))];
        StudyOptions options = request.Options with { Goals = shape.Goals.Of(parsed) };
        HubPlacement hub = Steps.Show(terminal, 1, step =>
        {
            step($"Trying sites for the hub of {NameList.Spoken([.. networks.Select(network => network.Name.Value)])}");
            return HubStudy.Run(home, networks, rooms, options);
        });
        Result.Write(terminal, file, parsed.GetValue(shape.Study.Json) ? JsonText.Of(HubJson.Of(home, options, hub)) : Text(home, options, hub, terminal.Width));
        return hub.ServesAll ? ExitCode.Done : ExitCode.GoalNotMet;
    }

    private static string Text(Home home, StudyOptions options, HubPlacement hub, int width) =>
        TextTable.Paragraph(HubWords.Answer(hub), width)
        + (HubWords.Apart(hub) is { } apart ? TextTable.Paragraph(apart, width) : "")
        + TextTable.Paragraph(HubWords.Basis(home, options, hub), width)
        + "\n" + TextTable.Render(HubTable.Of(hub), width);

    private static ImmutableArray<Network> Chosen(Home home, string[] names)
    {
        if (home.Networks.IsEmpty) throw new InputException("error: the home has no network");
        Network[] named = [.. names.Select(name => StudyRequest.Find(home.Networks, network => network.Name.Value, name, "networks"))];
        return named.Length == 0 ? home.Networks : [.. home.Networks.Where(named.Contains)];
    }

    private static RoomName RoomOf(Home home, string name) =>
        StudyRequest.Find([.. home.FloorPlan.Storeys.SelectMany(storey => storey.Rooms)], room => room.Name.Value, name, "rooms").Name;
}
