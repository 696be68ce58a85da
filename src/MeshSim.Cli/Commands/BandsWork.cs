using System.CommandLine;
using MeshSim.Cli.Answers;
using MeshSim.Cli.Json;
using MeshSim.Cli.Outputs;
using MeshSim.Cli.Progress;
using MeshSim.Cli.Tables;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Drawing;
using MeshSim.Studies;

namespace MeshSim.Cli.Commands;

/// <summary>The work of <c>bands</c>.</summary>
internal static class BandsWork
{
    /// <summary>Compares two networks, writes the tables, and the pictures where a folder is given.</summary>
    public static ExitCode Run(BandsCommand shape, ParseResult parsed, Terminal terminal)
    {
        using StagedAnswer staged = new(file: null, parsed.GetValue(shape.Out));
        StagedFolder? folder = staged.Pictures;
        StudyRequest request = StudyRequest.Read(shape.Study, parsed, terminal).On(shape.Grid, parsed);
        request.Storeys(name: null); // Refuses a grid that is too fine.
        (Network first, Network second) = Chosen(request.Home, parsed.GetValue(shape.Between) ?? []);
        var names = new PictureNames(request.Home);
        PictureFormat format = shape.Picture.Of(parsed);
        BandComparison bands = Steps.Show(terminal, 1 + (folder is null ? 0 : request.Home.FloorPlan.Storeys.Length), step =>
        {
            step($"Comparing {first.Name} with {second.Name}");
            BandComparison comparison = BandStudy.Compare(request.Home, first, second, request.Options);
            foreach (BandMap map in folder is null ? [] : comparison.Maps)
            {
                step($"Picture of {map.Storey}");
                folder!.Add(names.Difference(comparison, map, format), DifferencePicture.Draw(comparison, map, PictureSize.Default, format));
            }

            return comparison;
        });
        staged.Write(terminal, parsed.GetValue(shape.Study.Json) ? JsonText.Of(BandsJson.Of(bands, folder is null ? null : names, format)) : Text(bands, terminal.Width));
        return ExitCode.Done;
    }

    private static string Text(BandComparison bands, int width)
    {
        string text = TextTable.Paragraph(BandWords.Answer(bands), width) + TextTable.Paragraph(BandWords.Basis(bands), width);
        if (!bands.Rooms.IsEmpty) text += "\n" + TextTable.Render(BandTables.Rooms(bands), width) + "\n" + TextTable.Render(BandTables.Reasons(bands), width);
        return bands.Devices.IsEmpty ? text : text + "\n" + TextTable.Render(BandTables.Devices(bands), width);
    }

    private static (Network First, Network Second) Chosen(Home home, string[] names)
    {
        if (names.Length == 0)
        {
            return BandStudy.Default(home)
                ?? throw new InputException("error: the home has no two networks to compare, one below 1 GHz and one above; name two with --between");
        }

        Network[] chosen = [.. names.Select(name => StudyRequest.Find(home.Networks, network => network.Name.Value, name, "networks"))];
        return chosen[0] == chosen[1] ? throw new InputException("error: --between wants two different networks") : (chosen[0], chosen[1]);
    }
}
