using MeshSim.FloorPlans.Geometry;

namespace MeshSim.Propagation.Fields.Shadows;

/// <summary>Everything that one thread needs to sum one transmitter after another.</summary>
internal sealed class ShadowWorkspace(ShadowScene scene)
{
    private readonly WallShadows[] casters = scene.MakeCasters();
    private readonly ShadowLines shadows = new(scene.Frame, scene.Channels.Count);
    private readonly RowSummer summer = new(scene);

    /// <summary>Hands over the path loss from a transmitter, row by row from the lowest.</summary>
    public void Sum<TTaker>(Position transmitter, ref TTaker taker)
        where TTaker : struct, IRowTaker, allows ref struct
    {
        shadows.Start(transmitter);
        foreach (WallShadows caster in casters) caster.Cast(shadows);
        shadows.Finish();
        summer.Sum(shadows, 0, ShadowLines.StripCount(scene.Frame.Rows), ref taker);
    }
}
