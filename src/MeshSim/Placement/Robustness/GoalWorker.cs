using System.Numerics;
using MeshSim.Mesh.Reliability;

namespace MeshSim.Placement.Robustness;

/// <summary>What one thread needs to draw.</summary>
internal sealed class GoalWorker
{
    private readonly PlannedLinks links;
    private readonly LinkShadowing shadowing;
    private readonly UnknownDraws unknowns;
    private readonly DrawnCase[] cases;
    private readonly ReachWords reach;
    private readonly double[] nodeTerms, unknownValues;
    private readonly double designDb;
    private readonly ulong[][][] exists; // By what is drawn, set of doors and link.

    /// <summary>Prepares buffers.</summary>
    public GoalWorker(PlannedLinks links, LinkShadowing shadowing, UnknownDraws unknowns, DrawnCase[] cases)
    {
        (this.links, this.shadowing, this.unknowns, this.cases) = (links, shadowing, unknowns, cases);
        (int From, int To)[] ends = [.. links.Links.Select(link => (link.From, link.To))];
        reach = new(links.Nodes.Length, node => Array.Exists(cases, drawn => drawn.Spreading.Relays[node]), ends);
        nodeTerms = new double[64 * links.Nodes.Length];
        unknownValues = new double[64 * unknowns.Count];
        designDb = links.Doors[0].DesignMargin.Value;
        exists = [.. Enum.GetValues<Drawn>().Select(_ => links.Doors.Select(_ => new ulong[ends.Length]).ToArray())];
        Counts = new(links.Nodes.Length);
    }

    /// <summary>What was counted.</summary>
    public GoalCounts Counts { get; }

    /// <summary>Draws 64 times.</summary>
    /// <param name="random">Where the numbers come from.</param>
    /// <param name="counted">The draws that count.</param>
    public void Work(SplitMix64 random, ulong counted)
    {
        for (int i = 0; i < nodeTerms.Length; i += 2) (nodeTerms[i], nodeTerms[i + 1]) = random.NextNormals();
        unknowns.Draw(ref random, unknownValues);
        for (int link = 0; link < links.Links.Length; link++) DrawLink(link, ref random);

        foreach (Drawn drawn in Enum.GetValues<Drawn>()) Judge(drawn, counted);
    }

    private void DrawLink(int index, ref SplitMix64 random)
    {
        PlannedLink link = links.Links[index];
        Span<double> shadowDb = stackalloc double[64];
        (double ofDeviceDb, double ofLinkDb) = (shadowing.OfDevice.Value, shadowing.OfLink.Value);
        for (int draw = 0; draw < 64; draw += 2)
        {
            (double first, double second) = random.NextNormals();
            shadowDb[draw] = (ofDeviceDb * (nodeTerms[(64 * link.From) + draw] + nodeTerms[(64 * link.To) + draw])) + (ofLinkDb * first);
            shadowDb[draw + 1] = (ofDeviceDb * (nodeTerms[(64 * link.From) + draw + 1] + nodeTerms[(64 * link.To) + draw + 1])) + (ofLinkDb * second);
        }

        Span<double> medianDb = stackalloc double[64];
        for (int doors = 0; doors < link.Doors.Length; doors++)
        {
            LinkInDoors with = link.Doors[doors];
            medianDb.Fill(with.MarginDb);
            foreach ((int unknown, double deviationDb) in with.Slopes)
                for (int draw = 0; draw < 64; draw++) medianDb[draw] -= deviationDb * unknownValues[(64 * unknown) + draw];
            ulong shadowed = 0, dearer = 0, both = 0;
            for (int draw = 0; draw < 64; draw++)
            {
                ulong bit = 1UL << draw;
                if (with.MarginDb + shadowDb[draw] >= 0) shadowed |= bit;
                if (medianDb[draw] >= designDb) dearer |= bit;
                if (medianDb[draw] + shadowDb[draw] >= 0) both |= bit;
            }

            exists[(int)Drawn.Shadowing][doors][index] = shadowed;
            exists[(int)Drawn.Losses][doors][index] = dearer;
            exists[(int)Drawn.Both][doors][index] = both;
        }
    }

    private void Judge(Drawn drawn, ulong counted)
    {
        ulong goal = counted;
        foreach (DrawnCase which in cases)
        {
            reach.Spread(which.Spreading, exists[(int)drawn][which.Doors]);
            ulong all = counted;
            foreach (int device in which.Devices) all &= reach.Reached[device];
            goal &= all;
            if (!which.IsEveryday) continue;
            Counts.Everyday[(int)drawn] += BitOperations.PopCount(all);
            if (drawn == Drawn.Both)
                foreach (int device in which.Devices) Counts.Connected[device] += BitOperations.PopCount(reach.Reached[device] & counted);
        }

        Counts.Goal[(int)drawn] += BitOperations.PopCount(goal);
    }
}
