using MeshSim.FloorPlans.Geometry;
using MeshSim.Materials;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>An amount of one channel.</summary>
/// <param name="Channel">0 for decibels, else a direction.</param>
/// <param name="Amount">
/// What a full crossing adds: a multiple of 4, because a tie counts a half or a quarter. In channel 0 quarters of
/// <see cref="LossChannels.UnitsPerDecibel"/>, in the others quarters of a crossing, in the lower or the upper 16 bits.
/// </param>
internal readonly record struct ChannelAmount(int Channel, int Amount)
{
    /// <summary>The amount in a channel, 0 in every other.</summary>
    public int In(int channel) => channel == Channel ? Amount : 0;
}

/// <summary>
/// What is summed along a row. Losses that do not depend on the angle go to channel 0 as whole numbers. The angle of any path
/// to a wall depends on the directions of both alone, so all walls of one direction and one curve share a count of how many
/// are crossed; the count times the loss at that point's angle is exact but for the steps of the table. One channel holds the
/// counts of two curves.
/// </summary>
internal sealed class LossChannels
{
    // 32-bit sums: no path can cost more than everything in the building together, and that must fit with all quarters.
    private const double LargestSum = 1 << 30;
    private const double FinestUnitsPerDecibel = 1000;

    private readonly LossCurve[] curves;
    private readonly Dictionary<(int Construction, long Dx, long Dy), ChannelAmount> amounts = [];
    private readonly Dictionary<(long Dx, long Dy), int> lastChannels = [];
    private readonly Dictionary<int, LossTable> tables = [];
    private readonly List<AngleChannel> angles = [];

    /// <summary>Starts with channel 0 alone.</summary>
    /// <param name="curves">By the tracer's construction index.</param>
    /// <param name="mostDb">Upper bound of the constant losses that any one path can collect, dB.</param>
    public LossChannels(LossCurve[] curves, double mostDb)
    {
        this.curves = curves;
        UnitsPerDecibel = Math.Min(FinestUnitsPerDecibel, LargestSum / (4 * Math.Max(1, mostDb)));
    }

    /// <summary>Whole numbers per decibel in channel 0; one is 0.001 dB unless the building is enormous.</summary>
    public double UnitsPerDecibel { get; }

    /// <summary>Number of channels.</summary>
    public int Count => angles.Count + 1;

    /// <summary>The channel of that index, from 1.</summary>
    public AngleChannel Angle(int channel) => angles[channel - 1];

    /// <summary>A constant loss in quarters of the unit, a multiple of 4.</summary>
    public int Quarters(double lossDb) => 4 * (int)Math.Round(lossDb * UnitsPerDecibel, MidpointRounding.AwayFromZero);

    /// <summary>The table of a construction whose loss depends on the angle.</summary>
    public LossTable TableOf(int construction)
    {
        if (!tables.TryGetValue(construction, out LossTable? table))
            tables.Add(construction, table = LossTable.Of(curves[construction]));
        return table;
    }

    /// <summary>What a full crossing of a wall piece adds.</summary>
    public ChannelAmount AmountOf(int construction, PlanPoint wallStart, PlanPoint wallEnd)
    {
        LossCurve curve = curves[construction];
        if (curve.IsConstant) return new(0, Quarters(curve.At(1).Value));

        long dx = (long)wallEnd.X - wallStart.X, dy = (long)wallEnd.Y - wallStart.Y, divisor = GreatestDivisor(Math.Abs(dx), Math.Abs(dy));
        if (dx < 0 || (dx == 0 && dy < 0)) divisor = -divisor;
        (long Dx, long Dy) direction = (dx / divisor, dy / divisor);
        var key = (construction, direction.Dx, direction.Dy);
        if (amounts.TryGetValue(key, out ChannelAmount amount)) return amount;

        if (!lastChannels.TryGetValue(direction, out int channel) || Angle(channel).IsFull)
        {
            double length = Math.Sqrt(((double)dx * dx) + ((double)dy * dy));
            angles.Add(new((float)(-dy / length), (float)(dx / length)));
            lastChannels[direction] = channel = angles.Count;
        }

        amount = new(channel, Angle(channel).Add(TableOf(construction)));
        amounts.Add(key, amount);
        return amount;
    }

    private static long GreatestDivisor(long a, long b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return a;
    }
}
