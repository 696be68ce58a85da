using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Placement;

/// <summary>The margin of the link between two nodes of a <see cref="RepeaterProblem"/>; the same in both directions.</summary>
/// <param name="a">One node.</param>
/// <param name="b">Another node.</param>
public delegate Decibels MarginBetween(int a, int b);

/// <summary>
/// The repeater problem without its radio: which nodes there are, who passes frames on, and with what margin each pair hears
/// each other. The devices are the nodes from 0, the outlets follow them. A chosen outlet passes frames on; the others do not
/// exist. Every device but the coordinator must be reached.
/// </summary>
public sealed class RepeaterProblem
{
    private readonly double[] marginsDb;

    /// <summary>Sets the problem up.</summary>
    /// <param name="relays">Per device, whether it passes frames on; the coordinator must.</param>
    /// <param name="coordinator">The device where all routes end.</param>
    /// <param name="outletCount">Number of outlets, 0 or more.</param>
    /// <param name="hopLimit">Most links in a row, 1 or more.</param>
    /// <param name="designMargin">The margin that a link must have to count.</param>
    /// <param name="margin">
    /// Asked once for each pair of nodes of which at least one can pass frames on, the lower node first; from several threads.
    /// </param>
    /// <exception cref="ArgumentException">There is no such coordinator, it passes nothing on, or a margin is not a number.</exception>
    public RepeaterProblem(
        ImmutableArray<bool> relays, int coordinator, int outletCount, int hopLimit, Decibels designMargin, MarginBetween margin)
    {
        ArgumentNullException.ThrowIfNull(margin);
        ArgumentOutOfRangeException.ThrowIfNegative(outletCount);
        ArgumentOutOfRangeException.ThrowIfLessThan(hopLimit, 1);
        if (coordinator < 0 || coordinator >= relays.Length || !relays[coordinator])
            throw new ArgumentException("must be a device that passes frames on", nameof(coordinator));
        if (!double.IsFinite(designMargin.Value)) throw new ArgumentException("must be a number", nameof(designMargin));

        Relays = relays;
        Coordinator = coordinator;
        OutletCount = outletCount;
        HopLimit = hopLimit;
        DesignMargin = designMargin;
        marginsDb = Ask(margin);
    }

    private RepeaterProblem(RepeaterProblem other, int hopLimit, Decibels designMargin, double[] marginsDb)
    {
        (Relays, Coordinator, OutletCount) = (other.Relays, other.Coordinator, other.OutletCount);
        (HopLimit, DesignMargin, this.marginsDb) = (hopLimit, designMargin, marginsDb);
    }

    /// <summary>Per device, whether it passes frames on.</summary>
    public ImmutableArray<bool> Relays { get; }

    /// <summary>The device where all routes end.</summary>
    public int Coordinator { get; }

    /// <summary>Number of devices, the coordinator included.</summary>
    public int DeviceCount => Relays.Length;

    /// <summary>Number of outlets.</summary>
    public int OutletCount { get; }

    /// <summary>Devices and outlets together.</summary>
    public int NodeCount => DeviceCount + OutletCount;

    /// <summary>Most links in a row.</summary>
    public int HopLimit { get; }

    /// <summary>The margin that a link must have to count.</summary>
    public Decibels DesignMargin { get; }

    /// <summary>The node of an outlet.</summary>
    /// <param name="outlet">Its place among the outlets, from 0.</param>
    public int NodeOf(int outlet) => DeviceCount + outlet;

    /// <summary>Whether a node passes frames on, an outlet when it is chosen.</summary>
    public bool CanRelay(int node) => node >= DeviceCount || Relays[node];

    /// <summary>The margin between two nodes; minus infinity for two that both pass nothing on.</summary>
    public Decibels Margin(int a, int b) => new(marginsDb[(a * NodeCount) + b]);

    /// <summary>The same nodes and links under another hop limit or design margin.</summary>
    internal RepeaterProblem Under(int hopLimit, Decibels designMargin) => new(this, hopLimit, designMargin, marginsDb);

    /// <summary>The same with the coordinator at another place.</summary>
    /// <param name="margin">The margin there between the coordinator and each other node.</param>
    internal RepeaterProblem WithCoordinatorMoved(Func<int, Decibels> margin)
    {
        double[] moved = [.. marginsDb];
        for (int other = 0; other < NodeCount; other++)
        {
            if (other == Coordinator) continue;
            double marginDb = margin(other).Value;
            moved[(Coordinator * NodeCount) + other] = marginDb;
            moved[(other * NodeCount) + Coordinator] = marginDb;
        }

        return new(this, HopLimit, DesignMargin, moved);
    }

    /// <summary>The margins between a node and each other one, dB; minus infinity with itself.</summary>
    internal ReadOnlySpan<double> MarginsDb(int node) => marginsDb.AsSpan(node * NodeCount, NodeCount);

    /// <summary>The links of at least some margin.</summary>
    internal ReachGraph LinksAtLeast(Decibels margin) => new(this, margin);

    private double[] Ask(MarginBetween margin)
    {
        double[] answers = new double[NodeCount * NodeCount];
        Array.Fill(answers, double.NegativeInfinity);
        Parallel.For(0, NodeCount, a =>
        {
            for (int b = a + 1; b < NodeCount; b++)
            {
                if (!CanRelay(a) && !CanRelay(b)) continue;
                double marginDb = margin(a, b).Value;
                answers[(a * NodeCount) + b] = marginDb;
                answers[(b * NodeCount) + a] = marginDb;
            }
        });
        return Array.Exists(answers, double.IsNaN) ? throw new ArgumentException("a margin is not a number", nameof(margin)) : answers;
    }
}
