namespace MeshSim.Drawing.Sheets;

/// <summary>A place on the sheet, in pixels. x runs right, y runs down. The default is the upper left corner.</summary>
/// <param name="X">Pixels from the left edge.</param>
/// <param name="Y">Pixels from the upper edge.</param>
internal readonly record struct Pixel(float X, float Y)
{
    /// <summary>Distance on the sheet, pixels.</summary>
    public float DistanceTo(Pixel other) => MathF.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>The place a share of the way towards another, 0 here, 1 there.</summary>
    public Pixel Towards(Pixel other, float share) => new(X + ((other.X - X) * share), Y + ((other.Y - Y) * share));

    /// <summary>The direction towards another place, one pixel long; to the right when both are the same.</summary>
    public Pixel DirectionTo(Pixel other)
    {
        float distance = DistanceTo(other);
        return distance > 0 ? new((other.X - X) / distance, (other.Y - Y) / distance) : new(1, 0);
    }

    /// <summary>The place moved along a direction.</summary>
    public Pixel Along(Pixel direction, float pixels) => new(X + (direction.X * pixels), Y + (direction.Y * pixels));
}
