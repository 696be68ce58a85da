using System.Collections.Immutable;
using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Drawing;
using MeshSim.FloorPlans;
using MeshSim.Studies;
using MeshSim.Studies.Changes;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>compare</c>.</summary>
internal static class CompareWork
{
    /// <summary>Compares two homes, writes what changed, and the pictures where a folder is given.</summary>
    public static ExitCode Run(CompareCommand shape, ParseResult parsed, Terminal terminal)
    {
        using StagedAnswer staged = new(file: null, parsed.GetValue(shape.Out));
        StagedFolder? folder = staged.Pictures;
        ImmutableArray<ReadHome> homes = ReadHome.From([parsed.GetRequiredValue(shape.Before), parsed.GetRequiredValue(shape.After)], terminal);
        (Home before, Home after) = (homes[0].Home, homes[1].Home);
        var options = new StudyOptions
        {
            Model = ModelWords.Parse(parsed.GetRequiredValue(shape.Study.Model)),
            GridStepMetres = parsed.GetValue(shape.Grid.Step),
            ProbeHeightMetres = parsed.GetValue(shape.Grid.Height),
        };
        Refuse(before, after, options);
        ImmutableArray<NetworkName> networks = Chosen(before, after, parsed.GetValue(shape.Study.Network));
        var names = new PictureNames(after);
        PictureFormat format = shape.Picture.Of(parsed);
        HomeComparison comparison = Steps.Show(terminal, networks.Length * (1 + (folder is null ? 0 : before.FloorPlan.Storeys.Length)), step =>
        {
            var networkChanges = ImmutableArray.CreateBuilder<NetworkChanges>();
            foreach (NetworkName network in networks)
            {
                step($"Comparing {network}");
                networkChanges.Add(CompareStudy.Network(before, after, network, options));
                if (folder is not null) Fill(folder, networkChanges[^1], names, format, step);
            }

            return new HomeComparison(before, after, options, CompareStudy.Changes(before, after), networkChanges.ToImmutable());
        });
        staged.Write(terminal, parsed.GetValue(shape.Study.Json)
            ? JsonText.Of(CompareJson.Of(comparison, folder is null ? null : names, format))
            : CompareText.Of(comparison, terminal.Width));
        return comparison.IsWorse ? ExitCode.GoalNotMet : ExitCode.Done;
    }

    private static void Fill(StagedFolder folder, NetworkChanges changes, PictureNames names, PictureFormat format, Action<string> step)
    {
        NetworkName network = changes.After.Coverage.Network.Name;
        foreach (MarginChange map in changes.Maps)
        {
            step($"Picture of {network}, {map.Storey}");
            folder.Add(names.Change(network, map.Storey, format), ChangePicture.Draw(changes, map, PictureSize.Default, format));
        }
    }

    /// <summary>Refuses homes that have nothing in common, and grids that no machine would finish.</summary>
    private static void Refuse(Home before, Home after, StudyOptions options)
    {
        StoreyName[] common = [.. after.FloorPlan.Storeys.Select(storey => storey.Name).Where(name => before.FloorPlan.FindStorey(name) is not null)];
        if (common.Length == 0)
            throw new InputException($"error: the homes \"{before.Name}\" and \"{after.Name}\" have no storey in common, so there is nothing to compare; are these two states of one home?");
        foreach (StoreyName storey in common)
        {
            GridArguments.Refuse(before.FloorPlan, storey, options);
            GridArguments.Refuse(after.FloorPlan, storey, options);
        }
    }

    private static ImmutableArray<NetworkName> Chosen(Home before, Home after, string? name)
    {
        if (name is not null)
        {
            StudyRequest.Find(before.Networks, network => network.Name.Value, name, "networks before");
            return [StudyRequest.Find(after.Networks, network => network.Name.Value, name, "networks after").Name];
        }

        ImmutableArray<NetworkName> common = [.. after.Networks.Select(network => network.Name).Where(name => before.Networks.Any(network => network.Name == name))];
        return common.IsEmpty
            ? throw new InputException($"error: the homes \"{before.Name}\" and \"{after.Name}\" have no network in common, so there is nothing to compare")
            : common;
    }
}
