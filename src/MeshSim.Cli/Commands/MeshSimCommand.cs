using System.CommandLine;

namespace MeshSim.Cli.Commands;

/// <summary>The root: all commands in the order in which a person uses them, each shape joined to its work.</summary>
internal static class MeshSimCommand
{
    private const string Description =
        "Answers, from a floor plan and a device list, before plaster is cut: which radio device reaches its coordinator, "
        + "through what, with what margin, where the house is dark, and where mains repeaters should go.";

    private const string Order = """
        meshsim new FOLDER                  a home to start with; or
        meshsim import DRAWING --out FOLDER one from a drawing
        meshsim check HOME                  first: is the home folder right?
        meshsim report HOME --out FILE.html then: all answers on one page
        meshsim routes HOME                 who reaches the coordinator, and how
        meshsim routers HOME                which mains devices must stay powered
        meshsim rehearse HOME               what each outage does before it happens
        meshsim explain HOME ROOM|DEVICE    why it drops out, and what would help
        meshsim links HOME                  who hears whom, through what
        meshsim map HOME --out FOLDER       where it is dark
        meshsim bands HOME --out FOLDER     what another band would make of it
        meshsim hub HOME                    where the coordinator should go
        meshsim repeaters HOME              what to add, and where
        meshsim compare BEFORE AFTER        what a change made better or worse
        meshsim sheets HOME --out FILE.pdf  plan sheets to scale for the wall
        meshsim record HOME                 what feeds a device, how it comes out
        meshsim fit HOME                    is it true? what the radios report
        meshsim loss cavity-brick           what one wall costs
        """;

    private const string ExitCodes = """
        0  done
        1  done, and the goal is not met: a device has no reliable way, a state
           that must hold drops one, most of a room is dark, (compare) something
           got worse, or (fit) the readings contradict the plan
        2  the command line, the home folder or the place for the output is
           wrong; nothing was written
        3  a fault of the program
        130  stopped from the keyboard; nothing was written
        """;

    /// <summary>Makes the root for one run.</summary>
    /// <param name="terminal">Where the commands write.</param>
    public static RootCommand Make(Terminal terminal)
    {
        var root = new RootCommand(Description) { HelpName = "meshsim" };
        Add(root, new NewCommand(), NewWork.Run, terminal);
        Add(root, new ImportCommand(), ImportWork.Run, terminal);
        Add(root, new CheckCommand(), CheckWork.Run, terminal);
        Add(root, new ReportCommand(), ReportWork.Run, terminal);
        Add(root, new RoutesCommand(), RoutesWork.Run, terminal);
        Add(root, new RoutersCommand(), RoutersWork.Run, terminal);
        Add(root, new RehearseCommand(), RehearseWork.Run, terminal);
        Add(root, new ExplainCommand(), ExplainWork.Run, terminal);
        Add(root, new LinksCommand(), LinksWork.Run, terminal);
        Add(root, new MapCommand(), MapWork.Run, terminal);
        Add(root, new BandsCommand(), BandsWork.Run, terminal);
        Add(root, new HubCommand(), HubWork.Run, terminal);
        Add(root, new RepeatersCommand(), RepeatersWork.Run, terminal);
        Add(root, new SheetsCommand(), SheetsWork.Run, terminal);
        Add(root, new CompareCommand(), CompareWork.Run, terminal);
        Add(root, new RecordCommand(), RecordWork.Run, terminal);
        Add(root, new FitCommand(), FitWork.Run, terminal);
        Add(root, new LossCommand(), LossWork.Run, terminal);
        HelpWithExamples.Install(root, [("Order of use", Order), ("Exit codes", ExitCodes)]);
        return root;
    }

    private static void Add<TShape>(RootCommand root, TShape shape, Func<TShape, ParseResult, Terminal, ExitCode> work, Terminal terminal)
        where TShape : Command
    {
        // Off the calling thread: only then does the parser listen for an interrupt while the work goes on.
        shape.SetAction((parsed, stopping) => Task.Run(() => (int)work(shape, parsed, terminal with { Stopping = stopping }), stopping));
        root.Subcommands.Add(shape);
    }
}
