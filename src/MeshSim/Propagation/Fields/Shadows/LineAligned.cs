using System.Runtime.CompilerServices;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>Numbers that begin with a line of the cache, all zero at first: a long vector that straddled two lines would cost twice.</summary>
internal sealed class LineAligned<T>
    where T : unmanaged
{
    private const int LineBytes = 64;

    private readonly T[] memory;
    private readonly int start, length;

    /// <summary>Takes the memory.</summary>
    /// <param name="length">How many numbers.</param>
    public LineAligned(int length)
    {
        // Pinned, because whatever is moved may come to lie elsewhere in a line.
        memory = GC.AllocateArray<T>(length + (LineBytes / Unsafe.SizeOf<T>()), pinned: true);
        (start, this.length) = (ToLine(memory), length);
    }

    /// <summary>The numbers.</summary>
    public Span<T> Values => memory.AsSpan(start, length);

    private static int ToLine(T[] pinned)
    {
        nint first = Unsafe.ByteOffset(ref Unsafe.NullRef<T>(), ref pinned[0]);
        return (int)((LineBytes - (first % LineBytes)) % LineBytes) / Unsafe.SizeOf<T>();
    }
}
