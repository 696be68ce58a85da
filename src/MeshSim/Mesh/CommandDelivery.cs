namespace MeshSim.Mesh;

/// <summary>How a command from the coordinator to a device fares.</summary>
/// <param name="Delivery">Share of commands that arrive, retries on every link included, 0 to 1.</param>
/// <param name="ExpectedMilliseconds">Expected time from the wish to send until the last acknowledgement, given that it arrives, ms; infinite when none does.</param>
/// <param name="P95Milliseconds">Time within which 95 of 100 commands that arrive have arrived, ms.</param>
public sealed record CommandDelivery(double Delivery, double ExpectedMilliseconds, double P95Milliseconds);
