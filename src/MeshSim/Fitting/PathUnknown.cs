using MeshSim.Fitting.Estimation;

namespace MeshSim.Fitting;

/// <summary>What an unknown of a fit stands for.</summary>
internal enum UnknownKind
{
    /// <summary>The path-loss exponent.</summary>
    Exponent,

    /// <summary>What the way round the walls costs, dB.</summary>
    Detour,

    /// <summary>By how much a construction costs more than computed, dB.</summary>
    Construction,

    /// <summary>By how much a mounting costs more than the catalogue says, dB.</summary>
    Mounting,

    /// <summary>By how much all receivers of the network report more than arrives, dB.</summary>
    CommonOffset,

    /// <summary>By how much one receiver reports more than all, dB.</summary>
    Offset,

    /// <summary>What one device loses both ways that nothing on the plan explains, dB.</summary>
    DeviceLoss,

    /// <summary>What one wall, door, floor or object costs more than others of its construction, dB.</summary>
    ElementLoss,
}

/// <summary>One unknown of a fit.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Name">Which one.</param>
/// <param name="Prior">What is known about it before.</param>
internal sealed record PathUnknown(UnknownKind Kind, string Name, Prior Prior);
