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
        Cast(transmitter);
        SumBand(this, 0, 1, ref taker);
    }

    /// <summary>Casts the shadows of a transmitter; afterwards several workspaces can sum bands of rows from them at once.</summary>
    public void Cast(Position transmitter)
    {
        shadows.Start(transmitter);
        foreach (WallShadows caster in casters) caster.Cast(shadows);
        shadows.Finish();
    }

    /// <summary>Hands over one of several bands of rows, from shadows that this or another workspace has cast.</summary>
    public void SumBand<TTaker>(ShadowWorkspace cast, int band, int bands, ref TTaker taker)
        where TTaker : struct, IRowTaker, allows ref struct
    {
        int strips = ShadowLines.StripCount(scene.Frame.Rows);
        summer.Sum(cast.shadows, (int)((long)strips * band / bands), (int)((long)strips * (band + 1) / bands), ref taker);
    }
}
