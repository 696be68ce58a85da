namespace MeshSim.Placement;

/// <summary>What sites of a hub are ranked by: a device without any way weighs more than any number that lack a second one, and both more than money.</summary>
/// <param name="OutOfReach">Devices without a way everyday.</param>
/// <param name="Unserved">Devices that cannot have all that is asked, those among them.</param>
/// <param name="Cost">In the home's units.</param>
internal readonly record struct SiteScore(int OutOfReach, int Unserved, int Cost)
{
    /// <summary>Of two networks at one site, or of two sites.</summary>
    public static SiteScore operator +(SiteScore a, SiteScore b) => new(a.OutOfReach + b.OutOfReach, a.Unserved + b.Unserved, a.Cost + b.Cost);

    /// <summary>What is compared: the least is the best.</summary>
    public (int OutOfReach, int Unserved, int Cost) Rank => (OutOfReach, Unserved, Cost);
}

/// <summary>What a site comes to at least.</summary>
/// <param name="Score">Those that lack something, to the device, and with so few the least cost.</param>
/// <param name="RelaxedCost">The same cost before it was rounded to whole units: of two sites of one score the lesser promises more.</param>
internal readonly record struct SiteBound(SiteScore Score, double RelaxedCost)
{
    /// <summary>Of two networks at one site.</summary>
    public static SiteBound operator +(SiteBound a, SiteBound b) => new(a.Score + b.Score, a.RelaxedCost + b.RelaxedCost);
}
