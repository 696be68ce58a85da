using System.Text.Json;
using MeshSim.Files.Diagnostics;
using MeshSim.Files.Sources;

namespace MeshSim.Files.Importing.GeoJson;

/// <summary>Where the features of a GeoJSON file begin.</summary>
internal static class FeaturePlaces
{
    /// <summary>The features of a collection, or the single feature that a file is, each with its place; null with an error for anything else.</summary>
    public static List<(SourcePlace Place, JsonElement Feature)>? Find(SourceFile file, JsonElement root, DiagnosticList problems)
    {
        string? type = root.ValueKind == JsonValueKind.Object && root.TryGetProperty("type", out JsonElement kind) && kind.ValueKind == JsonValueKind.String ? kind.GetString() : null;
        if (type == "Feature") return [(SourcePlace.StartOf(file.Name), root)];
        if (type == "FeatureCollection" && root.TryGetProperty("features", out JsonElement list) && list.ValueKind == JsonValueKind.Array)
        {
            SourcePlace[] places = [.. Starts(file)];
            return [.. list.EnumerateArray().Select((feature, i) => (places[i], feature))];
        }

        problems.Error(SourcePlace.StartOf(file.Name), "the file holds no features", "export a FeatureCollection, with one feature for each wall, room, door");
        return null;
    }

    // The last list of that name counts, as it does for the parser of the tree.
    private static List<SourcePlace> Starts(SourceFile file)
    {
        Utf8JsonReader reader = new(file.Bytes);
        List<SourcePlace> starts = [];
        bool isFeatures = false;
        while (reader.Read())
        {
            if (reader.CurrentDepth == 1 && reader.TokenType == JsonTokenType.PropertyName)
            {
                isFeatures = reader.ValueTextEquals("features");
                if (isFeatures) starts.Clear();
            }
            else if (isFeatures && reader.CurrentDepth == 2 && reader.TokenType is not (JsonTokenType.EndObject or JsonTokenType.EndArray))
            {
                starts.Add(file.PlaceOf((int)reader.TokenStartIndex));
            }
        }

        return starts;
    }
}
