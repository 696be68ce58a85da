using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.FloorPlans;
using MeshSim.Placement;
using MeshSim.Studies;
using MeshSim.Studies.Sites;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>hub</c>.</summary>
internal static class HubWork
{
    /// <summary>Ranks the sites of the hub and writes the table.</summary>
    public static ExitCode Run(HubCommand shape, ParseResult parsed, Terminal terminal)
    {
        shape.Apply.Refuse(parsed);
        using StagedAnswer staged = new(parsed.GetValue(shape.Out), parsed.GetValue(shape.Maps));
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal);
        Home home = request.Home;
        ImmutableArray<Network> networks = Chosen(home, parsed.GetValue(shape.Networks) ?? []);
        ImmutableArray<RoomName> rooms = [.. (parsed.GetValue(shape.Rooms) ?? []).Distinct().Select(name => RoomOf(home, name))];
        StudyOptions options = request.Options with { Goals = shape.Goals.Of(parsed) };
        (HubPlacement hub, HubReview? review) = Steps.Show(terminal, 2, step =>
        {
            step($"Trying sites for the hub of {NameList.Spoken([.. networks.Select(network => network.Name.Value)])}");
            HubPlacement placed = HubStudy.Run(home, networks, rooms, options);
            step("Zone and chances of the best site");
            HubReview? firm = ReviewStudy.Hub(home, placed, options, shape.Chance.Of(parsed)) is { } there
                ? there with { Sites = HubStudy.InPessimisticCase(home, placed, rooms, options) }
                : null;
            if (staged.Pictures is { } folder) SitePictures.AddHub(folder, home, placed, firm, options, shape.Picture.Of(parsed), step);
            return (placed, firm);
        });
        staged.Write(terminal, parsed.GetValue(shape.Study.Json) ? JsonText.Of(HubJson.Of(home, options, hub, review)) : Text(home, options, hub, review, terminal.Width));
        shape.Apply.Write(parsed, parsed.GetRequiredValue(shape.Study.Home), () => FollowedAdvice.With(request.AsRead, hub), terminal);
        return hub.ServesAll ? ExitCode.Done : ExitCode.GoalNotMet;
    }

    private static string Text(Home home, StudyOptions options, HubPlacement hub, HubReview? review, int width) =>
        TextTable.Paragraph(HubWords.Answer(hub), width)
        + (HubWords.Apart(hub) is { } apart ? TextTable.Paragraph(apart, width) : "")
        + TextTable.Paragraph(HubWords.Basis(home, options, hub), width)
        + "\n" + TextTable.Render(HubTable.Of(hub), width)
        + Paragraph(string.Join(' ', HubWords.Repeaters(hub)), width)
        + Paragraph(string.Join(' ', HubWords.Left(hub)), width)
        + (review is null ? "" : Firm(review, width));

    private static string Firm(HubReview review, int width) =>
        Paragraph(HubReviewWords.Zone(review), width)
        + (review.Networks.Any(network => network.Chances is not null) ? "\n" + TextTable.Render(HubChancesTable.Of(review), width) : "")
        + string.Concat(HubReviewWords.Pessimistic(review).Select(sentence => Paragraph(sentence, width)));

    private static string Paragraph(string text, int width) => text.Length == 0 ? "" : "\n" + TextTable.Paragraph(text, width);

    private static ImmutableArray<Network> Chosen(Home home, string[] names)
    {
        if (home.Networks.IsEmpty) throw new InputException("error: the home has no network");
        Network[] named = [.. names.Select(name => StudyRequest.Find(home.Networks, network => network.Name.Value, name, "networks"))];
        return named.Length == 0 ? home.Networks : [.. home.Networks.Where(named.Contains)];
    }

    private static RoomName RoomOf(Home home, string name) =>
        StudyRequest.Find([.. home.FloorPlan.Storeys.SelectMany(storey => storey.Rooms)], room => room.Name.Value, name, "rooms").Name;
}
