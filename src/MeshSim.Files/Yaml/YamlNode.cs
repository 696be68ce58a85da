using System.Collections.Immutable;
using MeshSim.Files.Diagnostics;

namespace MeshSim.Files.Yaml;

/// <summary>One value of a YAML file, with its place.</summary>
/// <param name="Place">Where it begins.</param>
internal abstract record YamlNode(SourcePlace Place)
{
    /// <summary>What it is, for messages.</summary>
    public abstract string Describe { get; }
}

/// <summary>A piece of text.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Text">What it says; quotes taken off.</param>
/// <param name="IsEmpty">Whether there is nothing: no text, <c>~</c> or <c>null</c> without quotes.</param>
internal sealed record YamlText(SourcePlace Place, string Text, bool IsEmpty) : YamlNode(Place)
{
    /// <inheritdoc/>
    public override string Describe => IsEmpty ? "nothing" : KnownNames.Quote(Text);
}

/// <summary>A list.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Items">Its items.</param>
internal sealed record YamlList(SourcePlace Place, ImmutableArray<YamlNode> Items) : YamlNode(Place)
{
    /// <inheritdoc/>
    public override string Describe => "a list";
}

/// <summary>A set of keys with values. No key occurs twice.</summary>
/// <param name="Place">Where it begins.</param>
/// <param name="Entries">In the order written.</param>
internal sealed record YamlMap(SourcePlace Place, ImmutableArray<YamlEntry> Entries) : YamlNode(Place)
{
    /// <inheritdoc/>
    public override string Describe => "keys with values";

    /// <summary>The entry with a key, or null.</summary>
    public YamlEntry? Find(string key) => Entries.FirstOrDefault(entry => entry.Key == key);
}

/// <summary>One key and its value.</summary>
/// <param name="Key">The key.</param>
/// <param name="Place">Where the key begins.</param>
/// <param name="Value">The value.</param>
internal sealed record YamlEntry(string Key, SourcePlace Place, YamlNode Value);
