using System.Reflection;
using MeshSim.Devices;
using MeshSim.Drawing.Inks;
using MeshSim.Drawing.Sheets;
using MeshSim.FloorPlans.Geometry;
using MeshSim.Propagation;
using MeshSim.Propagation.Fields;

namespace MeshSim.Drawing.Layers;

/// <summary>What the sheet shows, above; what made it, below, without a date so that equal input gives equal sheets.</summary>
internal sealed class TitleLayer : ILayer
{
    /// <inheritdoc/>
    public void Draw(MapContents map, Pen pen)
    {
        PixelBox title = map.Layout.Title, footer = map.Layout.Footer;
        pen.Text(TitleOf(map), new(title.Left, title.Top + 24), TextStyle.Title, Tone.Text);
        pen.Text(SubtitleOf(map), new(title.Left, title.Top + 50), TextStyle.Subtitle, Tone.Quiet);
        pen.Text(ProvenanceOf(map), new(footer.Left, footer.Bottom - 6), TextStyle.Small, Tone.Quiet);
        pen.Frame(map.Layout.Map, Tone.Quiet, 1);
    }

    private static string TitleOf(MapContents map) => $"{map.Coverage.Home.Name}: network {map.Map.Network}, storey {map.Map.Storey}";

    private static string SubtitleOf(MapContents map)
    {
        Network network = map.Coverage.Network;
        double heightMetres = Lattice.ToMetres(map.Map.Margin.Grid.Z) - map.Storey.ElevationMetres;
        return FormattableString.Invariant($"Margin of a battery device {heightMetres:0.##} m above the floor, {network.Carrier}, model {WordsFor(map.Coverage.Model)}");
    }

    private static string ProvenanceOf(MapContents map)
    {
        FieldGrid grid = map.Map.Margin.Grid;
        string state = map.Coverage.State is { } named ? $"state {named.Name}" : "everything on, doors closed";
        Version version = Assembly.GetExecutingAssembly().GetName().Version ?? new Version();
        return FormattableString.Invariant(
            $"MeshSim {version.ToString(3)}, {map.Coverage.Network.Radio.Name} channel {map.Coverage.Network.Channel}, {state}, grid {Lattice.ToMetres(grid.Step):0.###} m");
    }

    private static string WordsFor(ModelName model) => model switch
    {
        ModelName.LogDistance => "log-distance with walls",
        ModelName.MultiWall => "COST 231 multi-wall",
        _ => "ITU-R P.1238 site-general",
    };
}
