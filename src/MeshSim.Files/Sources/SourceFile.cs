using System.Text;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Sources;

/// <summary>The bytes of one text file: UTF-8 without a byte order mark.</summary>
internal sealed class SourceFile
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    // Where each line begins. A table asks for the place of every bad field, so it is found by bisection.
    private readonly Lazy<int[]> lineStarts;

    private SourceFile(string name, byte[] bytes)
    {
        Name = name;
        Bytes = bytes;
        lineStarts = new(FindLineStarts);
    }

    /// <summary>The file as it is printed.</summary>
    public string Name { get; }

    /// <summary>Its content.</summary>
    public byte[] Bytes { get; }

    /// <summary>Its content as text.</summary>
    public string Text => StrictUtf8.GetString(Bytes);

    /// <summary>The place of a byte.</summary>
    /// <param name="offset">Index into <see cref="Bytes"/>, or their number.</param>
    public SourcePlace PlaceOf(int offset)
    {
        int found = Array.BinarySearch(lineStarts.Value, offset);
        int line = found >= 0 ? found : ~found - 1;
        int lineStart = lineStarts.Value[line];
        return new(Name, line + 1, Encoding.UTF8.GetCharCount(Bytes, lineStart, offset - lineStart) + 1);
    }

    /// <summary>Where a line begins; of a line beyond the last one, where that begins.</summary>
    /// <param name="line">From 1.</param>
    public int StartOfLine(int line) => lineStarts.Value[Math.Min(line, lineStarts.Value.Length) - 1];

    /// <summary>Reads a file; null with an error when it cannot be read, is too long, or is not text.</summary>
    /// <param name="path">Where it is; also how it is printed.</param>
    /// <param name="longestBytes">Longest accepted content.</param>
    /// <param name="problems">Takes the error.</param>
    public static SourceFile? Read(string path, int longestBytes, DiagnosticList problems)
    {
        SourcePlace start = SourcePlace.StartOf(path);
        byte[] bytes;
        try
        {
            using FileStream stream = File.OpenRead(path);
            bytes = ReadAtMost(stream, longestBytes + 1);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            problems.Error(start, "the file cannot be read", "check that it is a file and that you may read it");
            return null;
        }

        if (bytes.Length > longestBytes)
        {
            int megabytes = longestBytes / (1024 * 1024);
            problems.Error(
                start,
                FormattableString.Invariant($"the file is longer than {megabytes} MB"),
                "a home folder holds text of a few hundred kB at most");
            return null;
        }

        return FromBytes(path, bytes, problems);
    }

    private static byte[] ReadAtMost(FileStream stream, int mostBytes)
    {
        // The length that a device or a pipe states says nothing, so the bytes themselves are counted.
        using MemoryStream content = new();
        byte[] block = new byte[81920];
        while (content.Length < mostBytes)
        {
            int count = stream.Read(block, 0, (int)Math.Min(block.Length, mostBytes - content.Length));
            if (count == 0) break;
            content.Write(block, 0, count);
        }

        return content.ToArray();
    }

    /// <summary>Takes content for a file; null with an error when it is not text.</summary>
    /// <param name="path">How the file is printed.</param>
    /// <param name="bytes">Its content.</param>
    /// <param name="problems">Takes the error.</param>
    public static SourceFile? FromBytes(string path, byte[] bytes, DiagnosticList problems)
    {
        if (bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];

        bool isUtf16 = bytes.AsSpan().StartsWith(Encoding.Unicode.Preamble) || bytes.AsSpan().StartsWith(Encoding.BigEndianUnicode.Preamble);
        if (isUtf16)
        {
            problems.Error(SourcePlace.StartOf(path), "the file is UTF-16 text", "save it as UTF-8");
            return null;
        }

        SourceFile file = new(path, bytes);
        int zero = bytes.AsSpan().IndexOf((byte)0);
        if (zero >= 0)
        {
            problems.Error(file.PlaceOf(zero), "the file is not text: it holds a zero byte", "this must be a text file in UTF-8");
            return null;
        }

        int wrong = FirstInvalid(bytes);
        if (wrong >= 0)
        {
            string message = FormattableString.Invariant($"the file is not UTF-8 text: it holds the byte 0x{bytes[wrong]:X2}");
            problems.Error(file.PlaceOf(wrong), message, "save it as UTF-8");
            return null;
        }

        return file;
    }

    private static int FirstInvalid(byte[] bytes)
    {
        int at = 0;
        while (at < bytes.Length)
        {
            if (Rune.DecodeFromUtf8(bytes.AsSpan(at), out _, out int consumed) != System.Buffers.OperationStatus.Done) return at;
            at += consumed;
        }

        return -1;
    }

    private int[] FindLineStarts()
    {
        List<int> starts = [0];
        for (int i = 0; i < Bytes.Length; i++)
        {
            // A carriage return alone ends a line too, as both parsers count them.
            bool isBreak = Bytes[i] == (byte)'\n' || (Bytes[i] == (byte)'\r' && (i + 1 == Bytes.Length || Bytes[i + 1] != (byte)'\n'));
            if (isBreak) starts.Add(i + 1);
        }

        return [.. starts];
    }
}
