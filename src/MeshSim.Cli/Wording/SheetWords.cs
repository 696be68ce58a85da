using MeshSim.Drawing;

namespace MeshSim.Cli.Wording;

/// <summary>Plan sheets in sentences.</summary>
internal static class SheetWords
{
    /// <summary>How many sheets on what paper, and how to print them.</summary>
    public static string Answer(PlanSheetSet set)
    {
        int sheets = set.Storeys.Sum(storey => storey.PlanSheets + storey.KeySheets);
        return $"{Figures.Counted(sheets, "sheet")} on {set.Storeys[0].Paper}. Print at 100 %, without fitting to the page, and check the scale bar with a ruler.";
    }
}
