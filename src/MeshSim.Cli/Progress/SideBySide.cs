using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace MeshSim.Cli.Progress;

/// <summary>Pieces of work of which none needs another, on as many processors as there are.</summary>
internal static class SideBySide
{
    /// <summary>What the work makes of each thing, in the order of the things.</summary>
    /// <param name="things">The things; work on the first begins first.</param>
    /// <param name="work">The work; it writes nothing that the work on another thing reads.</param>
    /// <param name="stopping">Set to stop the run.</param>
    /// <exception cref="OperationCanceledException">The person stopped the run.</exception>
    public static ImmutableArray<TResult> Of<T, TResult>(ImmutableArray<T> things, Func<T, TResult> work, CancellationToken stopping)
    {
        // A piece may take seconds, and the pool would meanwhile add thread after thread beyond the processors there are.
        ParallelOptions options = new() { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = stopping };
        var results = new TResult[things.Length];
        Parallel.For(0, things.Length, options, index => results[index] = work(things[index]));
        return ImmutableCollectionsMarshal.AsImmutableArray(results);
    }
}
