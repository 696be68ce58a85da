using System.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>What a stack of layers with air on both sides does to a plane wave.</summary>
/// <param name="Reflection">Reflected field over incident field, both at the front face. For TM the sign is that of the magnetic field.</param>
/// <param name="Transmission">
/// Field behind the back face over field at the front face. It becomes zero where a double has no smaller number, beyond
/// about 6400 dB; <paramref name="TransmissionLoss"/> stays exact.
/// </param>
/// <param name="ReflectionLoss">Incident over reflected power; infinite when nothing comes back.</param>
/// <param name="TransmissionLoss">Incident over transmitted power.</param>
public readonly record struct SlabResponse(Complex Reflection, Complex Transmission, Decibels ReflectionLoss, Decibels TransmissionLoss);
