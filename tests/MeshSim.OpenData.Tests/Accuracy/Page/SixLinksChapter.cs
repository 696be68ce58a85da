using MeshSim.OpenData.Tests.Accuracy.Sets;
using static MeshSim.OpenData.Tests.Accuracy.Page.PageNumbers;

namespace MeshSim.OpenData.Tests.Accuracy.Page;

/// <summary>Six links at 868 MHz.</summary>
internal static class SixLinksChapter
{
    // What regressions of the data give for a heavy wall.
    private const double LeastHeavyDb = 9.0, MostHeavyDb = 9.7;

    /// <summary>The lines of the chapter.</summary>
    public static IEnumerable<string> Lines()
    {
        SixthLink[] links = [.. SixLinks.Read()];
        SixthLink open = links.Single(link => link.HeavyWalls + link.WoodWalls == 0);
        SixthLink[] others = [.. links.Where(link => link != open)];
        double bias = links.Average(link => link.ErrorDb);
        yield return "## Six links at 868 MHz";
        yield return "";
        yield return "Six end devices and a gateway on the floor of a university; published are distance, number of walls, and mean levels over six months. Power and antennas "
            + "are stated, so nothing need be fitted. Each link is built as a row of that many walls.";
        yield return "";
        yield return "**Source.** N. M. Obiri, K. Van Laerhoven, IEEE Access 13 (2025) 83148, doi 10.1109/ACCESS.2025.3569164; data doi 10.5281/zenodo.15349730. "
            + "**Licence.** CC BY 4.0. **Radio.** chirp modulation, 867 to 868.5 MHz, 14 dBm. **Assumed.** Heavy walls (\"brick\" in one place of the "
            + $"publication, \"concrete\" in another) are `{SixLinks.Heavy}`, wooden ones `{SixLinks.Wood}`.";
        yield return "";
        yield return "| link | m | heavy walls | wooden walls | measured dB | predicted dB | error dB | measured beyond ED0 | predicted beyond ED0 | error dB |";
        yield return "|---|---:|---:|---:|---:|---:|---:|---:|---:|---:|";
        foreach (SixthLink link in links)
            yield return $"| {link.Name} | {Count((int)link.DistanceMetres)} | {Count(link.HeavyWalls)} | {Count(link.WoodWalls)} | {Tenths(link.MeasuredDb)} | "
                + $"{Tenths(link.PredictedDb)} | {Tenths(link.ErrorDb)} "
                + $"| {Tenths(link.MeasuredDb - open.MeasuredDb)} | {Tenths(link.PredictedDb - open.PredictedDb)} | {Tenths(link.ErrorDb - open.ErrorDb)} |";
        yield return "";
        yield return $"Mean error, either way, with nothing fitted: **{Tenths(links.Average(link => Math.Abs(link.ErrorDb)))} dB**, against a goal of 6. The absolute "
            + $"levels cannot be used: {open.Name}, {Count((int)open.DistanceMetres)} m in the open, "
            + $"was measured {Tenths(-open.ErrorDb)} dB above free space, where no wall stands that could be wrong. So much is lost at the ends (antennas low "
            + "on desks, housings, connectors, the register), and the other five share it. "
            + $"Against {open.Name} the five are off by {Tenths(others.Average(link => Math.Abs(link.ErrorDb - open.ErrorDb)))} dB on average, all of it too "
            + $"little loss; and that takes all of {open.Name}'s own scatter with it. "
            + $"With one offset for the set the mean error is {Tenths(links.Average(link => Math.Abs(link.ErrorDb - bias)))} dB.";
        yield return "";
        foreach (string line in Walls()) yield return line;
    }

    private static IEnumerable<string> Walls()
    {
        yield return "| a wall | by the data | catalogue at 868 MHz |";
        yield return "|---|---|---|";
        yield return $"| heavy | {Tenths(LeastHeavyDb)} to {Tenths(MostHeavyDb)} dB (regressions of the six means and of all packets) | 200 mm concrete "
            + $"{Tenths(SixLinks.LossDb("concrete-200"))}, cavity wall {Tenths(SixLinks.LossDb("cavity-brick"))}, one brick "
            + $"{Tenths(SixLinks.LossDb("brick-full"))}, half brick {Tenths(SixLinks.LossDb("brick-half"))} |";
        yield return $"| wooden | 2.6 to 3.6 dB | solid 44 mm {Tenths(SixLinks.LossDb("door-timber"))}, stud partition {Tenths(SixLinks.LossDb("stud-partition"))}, 200 "
            + $"mm timber {Tenths(SixLinks.LossDb("log-wall"))} |";
        yield return "";
        yield return "Concrete and cavity walls are within 3 dB of the measured heavy wall; one brick and half a brick are not. By the same layers, computed anew, a "
            + "heavy wall costs 9.0 to 9.7 dB "
            + $"where it is brickwork of {Span(SixLinks.MillimetresFor("brick-full", LeastHeavyDb), SixLinks.MillimetresFor("brick-full", MostHeavyDb))} mm, or concrete of "
            + $"{Span(SixLinks.MillimetresFor("concrete-200", LeastHeavyDb), SixLinks.MillimetresFor("concrete-200", MostHeavyDb))} mm; or where one brick (215 mm) conducts "
            + $"{Tenths(SixLinks.ConductivityFactorFor("brick-full", LeastHeavyDb))} to {Tenths(SixLinks.ConductivityFactorFor("brick-full", MostHeavyDb))} "
            + "times what ITU-R P.2040 says of dry brick, as damp brick may. "
            + "So the figure is that of an outer or bearing wall, or of a corridor wall with what stands along it; for half a brick it is out of reach of any "
            + "dry wall. A wooden wall of 3 dB would be "
            + $"{Count((int)SixLinks.MillimetresFor("door-timber", 3))} mm of solid wood, which no inner wall is: shelves, radiators and cable ducts must be "
            + "in it. They are within 3 dB all the same. All of it rests on six links.";
    }

    private static string Span(double low, double high) => FormattableString.Invariant($"{low:0} to {high:0}");
}
