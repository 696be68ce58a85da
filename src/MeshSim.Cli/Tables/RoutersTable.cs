using System.Collections.Immutable;
using MeshSim.Cli.Wording;
using MeshSim.Devices;
using MeshSim.Mesh.Routers;
using MeshSim.Studies;

namespace MeshSim.Cli.Tables;

/// <summary>Which mains devices carry the mesh, and which others would help.</summary>
internal static class RoutersTable
{
    /// <summary>What each mains device does for the others; those to act upon first.</summary>
    public static Table Duties(NetworkRouters routers) => new(
        [new("Device"), new("Verdict"), new("Carries", true), new("Needed by", true), new("Why"), new("Power taken by")],
        [.. routers.Duties.OrderBy(Urgency).ThenByDescending(duty => duty.NeededBy.Length).ThenByDescending(duty => duty.Carries.Length).Select(Row)])
    {
        Notes =
        [
            "Carries: devices whose best way leads through it. Needed by: devices without a reliable way, within the hop limit, when it is off. "
            + "Harmless means: to the ways of this network, and that one alone.",
            .. routers.Duties.Any(duty => duty.Verdict == RouterVerdict.Replace) ? [FixTables.Mains] : Array.Empty<string>(),
            .. routers.Coverage.Home.DevicesOf(routers.Coverage.Network).Any(Alarms.Includes) ? [ExplainWords.NothingForAlarms] : Array.Empty<string>(),
        ],
    };

    /// <summary>The same of those alone that carry somebody, are needed by somebody, or call for something to be done.</summary>
    public static Table Matter(NetworkRouters routers) => Duties(routers with
    {
        Duties = [.. routers.Duties.Where(duty => duty.Verdict != RouterVerdict.Harmless || duty.NeededBy.Length + duty.Carries.Length + duty.LeavesOneWay.Length > 0)],
    });

    /// <summary>Mains devices that would help if they routed in the network.</summary>
    public static Table Help(NetworkRouters routers) => new(
        [new("Place of"), new("Where"), new("Network now"), new("Then with a reliable way"), new("Then with a second one"), new("Switched by")],
        [.. routers.NewRouters.Select(router => Row(routers, router))]);

    private static int Urgency(RouterDuty duty) => duty.Verdict switch
    {
        RouterVerdict.Replace => 0,
        RouterVerdict.Keep => 1,
        _ => 2,
    };

    private static ImmutableArray<string> Row(RouterDuty duty) =>
    [
        duty.Device.Value,
        RouterWords.Verdict(duty.Verdict),
        Figures.Count(duty.Carries.Length),
        Figures.Count(duty.NeededBy.Length),
        RouterWords.Why(duty),
        RouterWords.TakenBy(duty),
    ];

    private static ImmutableArray<string> Row(NetworkRouters routers, NewRouter router) =>
    [
        router.Device.Value,
        CoverageWords.Place(routers.Coverage.Home, router.Device),
        router.Network.Value,
        NameList.Short(router.Reached),
        NameList.Short(router.SecondWay),
        router.SwitchedBy ?? "",
    ];
}
