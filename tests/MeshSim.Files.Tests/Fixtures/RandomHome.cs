using System.Globalization;
using System.Text;
using CsCheck;

namespace MeshSim.Files.Tests.Fixtures;

/// <summary>Random home folders: each storey a grid of rooms, some of them L-shaped, with doors, windows, objects, devices.</summary>
internal static class RandomHome
{
    private static readonly string[] Walls = ["brick-full", "stud-partition", "block-100", "own \"quoted\" wall", "brick-half"];

    public static readonly Gen<(string Home, string Devices)> Folder =
        from storeys in Gen.Int[1, 3]
        from columns in Gen.Int[100, 400].Array[1, 4]
        from rows in Gen.Int[100, 400].Array[1, 3]
        from seed in Gen.Int[0, 1_000_000]
        select Write(storeys, columns, rows, seed);

    private static (string Home, string Devices) Write(int storeys, int[] columns, int[] rows, int seed)
    {
        // The generator shrinks the grid; the small choices within hang on the seed alone.
        Random random = new(seed);
        StringBuilder home = new(
            "home: \"Höhe #1: test\"\nregion: EU\nnorth: 90\nconstructions:\n"
                + "  - { construction: \"own \\\"quoted\\\" wall\", layers: \"brick:102.5, air:50.25\" }\nstoreys:\n");
        StringBuilder devices = new("id,network,power,storey,x,y,height,note\nhub,mesh,usb,s0,0.3,0.3,1,\n");
        for (int storey = 0; storey < storeys; storey++) WriteStorey(home, devices, storey, columns, rows, random);
        home.Append("networks:\n  - { network: mesh, radio: ieee802154-2450, channel: 15, coordinator: hub, hops: 4 }\n");
        return (home.ToString(), devices.ToString());
    }

    private static void WriteStorey(StringBuilder home, StringBuilder devices, int storey, int[] columns, int[] rows, Random random)
    {
        home.Append(
            FormattableString.Invariant(
                $"  - storey: s{storey}\n    ceiling: 2.{random.Next(2, 8)}\n    outer: cavity-brick\n    inner: {Quote(Walls[random.Next(Walls.Length)])}\n"));
        if (storey > 0)
            home.Append(
                FormattableString.Invariant(
                    $"    floor: joists-boards-lath\n    structure: 0.2{random.Next(10)}\n    stairwells: [{{ from: [0.1, 0.1], to: [0.9, 0.8] }}]\n"));
        home.Append("    rooms:\n");
        StringBuilder openings = new("    openings:\n"), walls = new("    walls:\n      - { line: [[0.2, 0.5], [0.7, 0.5]], is: brick-half }\n");
        int y = 0;
        for (int row = 0; row < rows.Length; y += rows[row++])
        {
            int x = 0;
            for (int column = 0; column < columns.Length; x += columns[column++])
            {
                string name = FormattableString.Invariant($"r{storey} {row}, {column}");
                (double left, double low, double right, double high) = (x / 100.0, y / 100.0, (x + columns[column]) / 100.0, (y + rows[row]) / 100.0);
                home.Append(FormattableString.Invariant($"      \"{name}\": {{ from: [{left}, {low}], to: [{right}, {high}] }}\n"));
                string power = random.Next(2) == 0 ? "mains" : "battery";
                devices.Append(FormattableString.Invariant(
                    $"\"d{storey} {row}, {column}\",mesh,{power},s{storey},{left + 0.4},{low + 0.6},{random.Next(20) / 10.0},\" said \"\"so\"\"\nthen\"\n"));
                if (column > 0)
                    openings.Append(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"      - {{ door: \"door {name}\", between: [\"r{storey} {row}, {column - 1}\", \"{name}\"], at: 0.1, width: 0.7, height: 2, "
                                + $"is: door-timber, open: {(random.Next(2) == 0 ? "true" : "false")} }}\n"));
                if (row == 0)
                    openings.Append(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"      - {{ window: \"window {name}\", of: \"{name}\", facing: east, at: 0.2, width: 0.6, sill: 0.9, height: 1, is: "
                                + $"glazing-double }}\n"));
                if (column > 0 && random.Next(2) == 0)
                    walls.Append(
                        FormattableString.Invariant(
                            $"      - {{ between: [\"r{storey} {row}, {column - 1}\", \"{name}\"], is: {Quote(Walls[random.Next(Walls.Length)])} }}\n"));
            }
        }

        home.Append(walls).Append(openings).Append("    objects:\n      - { object: box, from: [0.3, 0.2], to: [0.5, 0.4], base: 0.5, height: 1, is: metal-cabinet }\n");
    }

    private static string Quote(string text) => $"\"{text.Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
