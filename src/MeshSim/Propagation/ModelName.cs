namespace MeshSim.Propagation;

/// <summary>The path-loss models that a study can use. They are never mixed; each figure says which one made it.</summary>
public enum ModelName
{
    /// <summary>Log-distance with each wall, opening, object and floor on the path counted.</summary>
    LogDistance,

    /// <summary>The same, but power may go round the walls, so their sum saturates. The default.</summary>
    Detour,

    /// <summary>COST 231 multi-wall as printed: light walls, heavy walls and floors by category.</summary>
    MultiWall,

    /// <summary>ITU-R P.1238 older form: distance and floors only.</summary>
    SiteGeneral,
}

/// <summary>The models' names as a person writes and reads them.</summary>
public static class ModelNames
{
    /// <summary>Log-distance with walls.</summary>
    public const string LogDistance = "log-distance";

    /// <summary>Log-distance with walls and a way round them.</summary>
    public const string Detour = "detour";

    /// <summary>COST 231 multi-wall.</summary>
    public const string MultiWall = "multi-wall";

    /// <summary>ITU-R P.1238, older form.</summary>
    public const string SiteGeneral = "site-general";

    /// <summary>The name of a model.</summary>
    public static string Of(ModelName model) => model switch
    {
        ModelName.LogDistance => LogDistance,
        ModelName.Detour => Detour,
        ModelName.MultiWall => MultiWall,
        ModelName.SiteGeneral => SiteGeneral,
        _ => throw new ArgumentOutOfRangeException(nameof(model), model, "no such model"),
    };
}
