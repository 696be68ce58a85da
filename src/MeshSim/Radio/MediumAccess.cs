using MeshSim.Quantities;

namespace MeshSim.Radio;

/// <summary>
/// How a radio gets a frame across one link: waits, listens, sends, waits for the acknowledgement, and tries again. The default
/// sends once, at once, and expects no answer.
/// </summary>
public sealed record MediumAccess
{
    /// <summary>Most attempts after the first.</summary>
    public int Retries { get; init; }

    /// <summary>Step of the random wait before a frame, µs.</summary>
    public double BackOffUnitMicroseconds { get; init; }

    /// <summary>How many waits the first look draws from: 0 to one less than this, in steps. 1 where there is no random wait.</summary>
    public int BackOffUnits { get; init; } = 1;

    /// <summary>The draw doubles with every look that finds the channel busy, up to this many.</summary>
    public int MostBackOffUnits { get; init; } = 1;

    /// <summary>How often a sender looks whether the channel is free before it gives an attempt up.</summary>
    public int Looks { get; init; } = 1;

    /// <summary>Length of a look and of turning to sending after it, µs.</summary>
    public double LookMicroseconds { get; init; }

    /// <summary>Level in the channel from which a look finds it busy; null where nobody looks.</summary>
    public PowerLevel? BusyThreshold { get; init; }

    /// <summary>Fixed wait before an attempt after the first, µs.</summary>
    public double RetryDelayMicroseconds { get; init; }

    /// <summary>How many random waits an attempt after the first draws from in addition, in steps of the same unit.</summary>
    public int RetryBackOffUnits { get; init; } = 1;

    /// <summary>Turning from sending to receiving, µs.</summary>
    public double TurnaroundMicroseconds { get; init; }

    /// <summary>Length of an acknowledgement, octets of the physical-layer payload; 0 where none is sent.</summary>
    public int AcknowledgementOctets { get; init; }

    /// <summary>How much longer than turnaround and acknowledgement a sender waits before it takes a frame for lost, µs.</summary>
    public double PatienceMicroseconds { get; init; }

    /// <summary>Attempts in all.</summary>
    public int Attempts => Retries + 1;
}
