using MeshSim.Materials;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>
/// A loss curve in steps over the square of the cosine, which needs no root. Within one step the curve changes by less than
/// <see cref="StepDb"/> and the value is the middle of its range, so an entry is never off by more than half a step.
/// </summary>
internal sealed class LossTable
{
    /// <summary>Most by which the curve changes within one entry, dB.</summary>
    public const double StepDb = 0.1;

    // A table in whole numbers is off by up to half a unit more; together they keep the promise.
    private const double RangeDb = StepDb - (1.0 / AngleChannel.UnitsPerDecibel);

    private const int FewestEntries = 1024, MostEntries = 1 << 20;

    private LossTable(float[] valuesDb) => ValuesDb = valuesDb;

    /// <summary>Entry i holds for squared cosines from i / length to (i + 1) / length.</summary>
    public float[] ValuesDb { get; }

    /// <summary>The table of a curve.</summary>
    public static LossTable Of(LossCurve curve)
    {
        for (int entries = FewestEntries; ; entries *= 2)
        {
            if (TryMake(curve, entries) is { } values) return new(values);
            if (entries >= MostEntries) throw new ArgumentException("the loss changes too fast with the angle for a table", nameof(curve));
        }
    }

    private static float[]? TryMake(LossCurve curve, int entries)
    {
        var values = new float[entries];
        int knot = 0;
        double lowest = curve.At(0).Value, highest = lowest;
        for (int i = 0; i < entries; i++)
        {
            // The curve is straight between its knots, so its extremes in an entry are at the borders or at a knot between.
            double upper = Math.Sqrt((i + 1.0) / entries);
            for (; knot <= LossCurve.Intervals && KnotCosine(knot) <= upper; knot++)
                Widen(curve.At(KnotCosine(knot)).Value);
            double atUpper = curve.At(upper).Value;
            Widen(atUpper);
            if (highest - lowest > RangeDb) return null;
            values[i] = (float)((lowest + highest) / 2);
            lowest = highest = atUpper;
        }

        return values;

        void Widen(double valueDb) => (lowest, highest) = (Math.Min(lowest, valueDb), Math.Max(highest, valueDb));
    }

    private static double KnotCosine(int knot) =>
        PlanningLoss.CapCosine + (knot * (1 - PlanningLoss.CapCosine) / LossCurve.Intervals);
}
