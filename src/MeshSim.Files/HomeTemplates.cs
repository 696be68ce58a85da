using System.Collections.Immutable;
using MeshSim.Files.Writing;

namespace MeshSim.Files;

/// <summary>Homes to start with: complete, commented, and in order as they stand. A person changes their measures.</summary>
public static class HomeTemplates
{
    /// <summary>The one that is taken when none is named.</summary>
    public const string Default = "flat";

    /// <summary>Their names, each for the shape of a building.</summary>
    public static readonly ImmutableArray<string> Names = ["terrace", "semi-detached", "flat", "bungalow", "loft"];

    private static readonly ImmutableArray<string> Files = [HomeFileNames.Home, HomeFileNames.Devices];

    /// <summary>Writes one into a folder.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <param name="folder">The target; made when it is not there.</param>
    /// <exception cref="ArgumentException">There is no such template.</exception>
    /// <exception cref="IOException">The files cannot be written.</exception>
    public static void Write(string name, string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        if (!Names.Contains(name)) throw new ArgumentException($"no template is called \"{name}\"; there are {string.Join(", ", Names)}", nameof(name));

        using FreshFolder fresh = new(folder);
        foreach (string file in Files)
        {
            using Stream content = typeof(HomeTemplates).Assembly.GetManifestResourceStream($"templates/{name}/{file}")
                ?? throw new InvalidOperationException($"the template {name} lacks {file}");
            using FileStream written = File.Create(Path.Combine(fresh.Path, file));
            content.CopyTo(written);
        }

        fresh.MoveIntoPlace();
    }
}
