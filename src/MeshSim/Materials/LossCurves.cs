using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>
/// The curves made so far, so that several networks, states and threads share them. A curve depends on nothing but its
/// construction and frequency, so sharing changes no result. Curves go when their construction goes.
/// </summary>
public static class LossCurves
{
    private static readonly ConditionalWeakTable<Construction, ConcurrentDictionary<Frequency, LossCurve>> Made = [];

    /// <summary>The curve of a construction at a frequency.</summary>
    /// <param name="construction">The same object for each request, as a catalogue gives it; another object makes another curve.</param>
    /// <param name="frequency">The carrier.</param>
    /// <exception cref="ArgumentException">As for <see cref="LossCurve(Construction, Frequency)"/>.</exception>
    public static LossCurve Of(Construction construction, Frequency frequency) =>
        Made.GetValue(construction, static _ => new()).GetOrAdd(frequency, static (at, of) => new LossCurve(of, at), construction);
}
