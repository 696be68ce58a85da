using System.Text;
using MeshSim.Files;

namespace MeshSim.Cli.Outputs;

/// <summary>An output file that appears whole or not at all: it is written beside its final place and moved there.</summary>
internal static class StagedFile
{
    /// <summary>Refuses a place that must not be written, before any work is done.</summary>
    /// <param name="path">The final place.</param>
    /// <exception cref="InputException">It is empty, a folder, or one of the files that a home is made of.</exception>
    public static void Refuse(string path)
    {
        if (path.Length == 0) throw new InputException("error: --out is empty; give the file to write");
        if (Directory.Exists(path)) throw new InputException($"{path}: error: is a folder; give a file");
        if (HomeFileNames.All.Contains(Path.GetFileName(path), StringComparer.OrdinalIgnoreCase))
            throw new InputException($"{path}: error: is the name of a file that a home is read from; give another");
        string parent = Path.GetDirectoryName(Path.GetFullPath(path)) ?? path;
        if (!Directory.Exists(parent)) throw new InputException($"{path}: error: there is no folder {parent}");
    }

    /// <summary>Writes text, UTF-8 without a byte order mark, replacing an earlier file in one move.</summary>
    public static void Write(string path, string content) => Write(path, Encoding.UTF8.GetBytes(content));

    /// <summary>Writes bytes, replacing an earlier file in one move.</summary>
    public static void Write(string path, byte[] content)
    {
        Refuse(path);
        Replace(path, content);
    }

    /// <summary>The same for a text that belongs to a home, whose name must not be refused.</summary>
    public static void WriteOwn(string path, string content) => Replace(path, Encoding.UTF8.GetBytes(content));

    private static void Replace(string path, byte[] content)
    {
        string full = Path.GetFullPath(path);
        string staging = FormattableString.Invariant($"{full}.{Environment.ProcessId}.partial");
        try
        {
            Writing.To(path, () =>
            {
                File.WriteAllBytes(staging, content);
                File.Move(staging, full, overwrite: true);
            });
        }
        finally
        {
            if (File.Exists(staging)) File.Delete(staging);
        }
    }
}
