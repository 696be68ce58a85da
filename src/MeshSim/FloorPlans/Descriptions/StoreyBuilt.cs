using System.Collections.Immutable;

namespace MeshSim.FloorPlans.Descriptions;

/// <summary>What about a described element a problem lies in.</summary>
public enum Aspect
{
    /// <summary>The element as a whole.</summary>
    Whole,

    /// <summary>Its name.</summary>
    Name,

    /// <summary>Its corners, or the ends of its line.</summary>
    Outline,

    /// <summary>The room, rooms, side or name by which it names a wall.</summary>
    Place,

    /// <summary>Its offset along the wall.</summary>
    Offset,

    /// <summary>Its width.</summary>
    Width,

    /// <summary>Its sill or underside.</summary>
    Sill,

    /// <summary>Its height, or the ceiling's.</summary>
    Height,

    /// <summary>Its thickness.</summary>
    Thickness,

    /// <summary>The default construction of outer walls.</summary>
    Outer,

    /// <summary>The default construction of inner walls.</summary>
    Inner,
}

/// <summary>Something that makes a description impossible to build as it stands.</summary>
/// <param name="Source">Where the element was described.</param>
/// <param name="Aspect">What about it.</param>
/// <param name="Wrong">What is wrong, as a sentence without a full stop, names included.</param>
/// <param name="Right">What would be right, in the same form; empty when there is nothing to suggest.</param>
public sealed record FloorPlanProblem(SourceKey Source, Aspect Aspect, string Wrong, string Right);

/// <summary>Something that was put right without asking, and that a person should know of.</summary>
/// <param name="Source">Where the element was described.</param>
/// <param name="Text">What was done, as a sentence without a full stop.</param>
public sealed record FloorPlanNotice(SourceKey Source, string Text);

/// <summary>A storey made of a description, with everything that is to be said about it.</summary>
/// <param name="Storey">The storey; elements with a problem are left out of it.</param>
/// <param name="Problems">All that is wrong; the storey is to be used only when this is empty.</param>
/// <param name="Notices">All that was put right.</param>
public sealed record StoreyBuilt(Storey Storey, ImmutableArray<FloorPlanProblem> Problems, ImmutableArray<FloorPlanNotice> Notices);
