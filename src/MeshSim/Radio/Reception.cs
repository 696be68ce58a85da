using System.Collections.Immutable;
using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>Something that sends in a receiver's channel for part of the time.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Level">What the receiver takes in while it sends.</param>
/// <param name="Busy">Share of the time that it sends, 0 to 1.</param>
public readonly record struct Interferer(string Name, PowerLevel Level, double Busy);

/// <summary>One combination of interferers that send and others that are silent.</summary>
/// <param name="Share">Share of the time.</param>
/// <param name="Interference">What arrives of those that send; null when all are silent.</param>
/// <param name="RequiredLevel">What a signal needs meanwhile.</param>
public readonly record struct ReceptionCondition(double Share, PowerLevel? Interference, PowerLevel RequiredLevel);

/// <summary>What a signal needs at one receiver: its sensitivity, its noise, and whoever else sends nearby.</summary>
/// <remarks>
/// Interferers send independently of each other. Of more than <see cref="MostCombined"/> the strongest are combined exactly, and
/// the others count as always sending with their mean power.
/// </remarks>
public sealed class Reception
{
    /// <summary>More interferers than this would make thousands of combinations, and a home has not so many that matter.</summary>
    public const int MostCombined = 6;

    /// <summary>
    /// Share of frames that interference may spoil at every attempt before planning counts it. Assumed: one in twenty, because
    /// what has sent the frame then tries anew; more would be noticed.
    /// </summary>
    public const double ToleratedLoss = 0.05;

    /// <summary>Accepted shares of time.</summary>
    public static readonly ValidRange Busy = new(0, 1, "(share of time)");

    private readonly PowerLevel reference;

    /// <summary>Works out the conditions of a receiver.</summary>
    /// <param name="receiver">The receiver.</param>
    /// <param name="noiseRise">By how much its noise floor is raised.</param>
    /// <param name="interferers">Who sends nearby, in any order.</param>
    /// <param name="attempts">How often a frame is tried: what decides which interference the planning level counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share of time is outside <see cref="Busy"/>, or there is no attempt.</exception>
    public Reception(Receiver receiver, Decibels noiseRise, IEnumerable<Interferer> interferers, int attempts)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(attempts, 1);
        Interferers =
        [
            .. from interferer in interferers
               where Busy.Check(interferer.Busy) > 0
               orderby interferer.Level.Dbm descending, interferer.Name
               select interferer,
        ];
        NoiseRise = noiseRise;
        reference = receiver.RequiredLevel;
        Conditions = Combine(receiver, receiver.NoiseFloor + noiseRise);
        QuietLevel = Conditions[0].RequiredLevel;
        PlanningLevel = Absorbed(attempts);
    }

    /// <summary>By how much the noise floor is raised.</summary>
    public Decibels NoiseRise { get; }

    /// <summary>Who sends nearby, the strongest first.</summary>
    public ImmutableArray<Interferer> Interferers { get; }

    /// <summary>Every combination of interferers, the least disturbed first. The shares sum to 1.</summary>
    public ImmutableArray<ReceptionCondition> Conditions { get; }

    /// <summary>What a signal needs while nobody else sends.</summary>
    public PowerLevel QuietLevel { get; }

    /// <summary>
    /// What a signal must have to be planned with: the least level at which no more than <see cref="ToleratedLoss"/> of frames
    /// find worse conditions at every one of their attempts.
    /// </summary>
    public PowerLevel PlanningLevel { get; }

    /// <summary>What a signal needs while everybody sends.</summary>
    public PowerLevel BusyLevel => Conditions[^1].RequiredLevel;

    /// <summary>By how much a condition raises what a signal needs above the undisturbed receiver.</summary>
    public Decibels RiseIn(ReceptionCondition condition) => condition.RequiredLevel - reference;

    /// <summary>Mean power of all interferers over time; null when there is none.</summary>
    public PowerLevel? MeanInterference =>
        Interferers.IsEmpty ? null : PowerLevel.FromMilliwatts(Interferers.Sum(interferer => interferer.Busy * interferer.Level.Milliwatts));

    /// <summary>Share of the time in which the interference lies at or above a level.</summary>
    public double ShareFrom(PowerLevel threshold) =>
        Conditions.Where(condition => condition.Interference is { } level && level >= threshold).Sum(condition => condition.Share);

    private ImmutableArray<ReceptionCondition> Combine(Receiver receiver, PowerLevel noise)
    {
        Interferer[] combined = [.. Interferers.Take(MostCombined)];
        double steadyMilliwatts = Interferers.Skip(MostCombined).Sum(interferer => interferer.Busy * interferer.Level.Milliwatts);
        var conditions = new List<ReceptionCondition>();
        for (int set = 0; set < 1 << combined.Length; set++)
        {
            double share = 1, milliwatts = steadyMilliwatts;
            for (int i = 0; i < combined.Length; i++)
            {
                bool sends = (set >> i & 1) == 1;
                share *= sends ? combined[i].Busy : 1 - combined[i].Busy;
                if (sends) milliwatts += combined[i].Level.Milliwatts;
            }

            if (share == 0) continue;
            PowerLevel? interference = milliwatts > 0 ? PowerLevel.FromMilliwatts(milliwatts) : null;
            PowerLevel floor = interference is { } level ? PowerLevel.Together(noise, level) : noise;
            conditions.Add(new(share, interference, receiver.RequiredLevelIn(floor)));
        }

        // A stable order: sets of equal need stay as they were counted.
        return [.. conditions.OrderBy(condition => condition.RequiredLevel).ThenBy(condition => condition.Interference?.Dbm ?? double.NegativeInfinity)];
    }

    private PowerLevel Absorbed(int attempts)
    {
        double worse = 0;
        for (int i = Conditions.Length - 1; i > 0; i--)
        {
            worse += Conditions[i].Share;
            if (Math.Pow(worse, attempts) > ToleratedLoss) return Conditions[i].RequiredLevel;
        }

        return Conditions[0].RequiredLevel;
    }
}
