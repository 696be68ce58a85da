namespace MeshSim.Cli.Reporting;

/// <summary>What a person must know before acting on a report.</summary>
internal static class CautionsChapter
{
    private static readonly string[] Cautions =
    [
        "Work on the mains is for licensed electricians, under the rules of the place. Before any box is opened: isolate the circuit, "
            + "secure it against being switched on, and prove it dead.",
        "A repeater in an outlet must stay powered. An outlet behind a wall switch, or on a circuit that is turned off at night, "
            + "is no place for one.",
        "Alarms must not depend on this mesh: smoke, gas, medical and security alarms need their own approved path that works when "
            + "every device here is off.",
        "These are predictions from a drawing. Before plaster closes a wall, try the weakest links with the real devices in place.",
        "Limits of power and time on the air are set by law and change; check the ones in force.",
    ];

    /// <summary>The chapter as HTML; the same in every report.</summary>
    public static string Of(ReportContent content) => $"<div class=\"caution\">\n{Html.List(Cautions)}</div>\n";
}
