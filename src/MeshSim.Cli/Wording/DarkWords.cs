using System.Collections.Immutable;
using MeshSim.FloorPlans;
using MeshSim.Studies;

namespace MeshSim.Cli.Wording;

/// <summary>Where it is dark, in sentences.</summary>
internal static class DarkWords
{
    /// <summary>A room counts as dark from this share of its floor on: there a sensor put anywhere more likely fails than works.</summary>
    public const double MostlyDark = 0.5;

    /// <summary>The answer in one line, such as "Dark in more than half of the floor: loft room (84.2 %), shed (100 %)".</summary>
    public static string Answer(ImmutableArray<MarginMap> maps)
    {
        (RoomName Room, double DarkShare)[] rooms = [.. maps.SelectMany(map => map.Rooms)];
        if (rooms.Length == 0) return "No rooms are drawn, so there is no share of dark floor to give; a picture (--out) shows where it is dark.";

        string[] dark = [.. rooms.Where(room => room.DarkShare > MostlyDark).Select(InWords)];
        if (dark.Length > 0) return $"Dark in more than half of the floor: {string.Join(", ", dark)}.";

        string[] partly = [.. rooms.Where(room => room.DarkShare > 0).Select(InWords)];
        return partly.Length > 0 ? $"No room is mostly dark; partly: {string.Join(", ", partly)}." : "No room is dark anywhere.";
    }

    private static string InWords((RoomName Room, double DarkShare) room) => $"{room.Room} ({Figures.Percent(room.DarkShare)} %)";
}
