using System.Numerics;
using MeshSim.Quantities;

namespace MeshSim.Materials;

/// <summary>
/// The recursion of ITU-R P.2040-3 (08/2023) for layers in air, prepared for one frequency, angle and polarisation: all that does not
/// depend on thickness is worked out once. The printed form multiplies by e^(+jδ), which overflows in metal; here its
/// magnitude is kept apart as a logarithm, so no thickness overflows.
/// </summary>
internal sealed class LayerRecursion
{
    private readonly Complex[] normalWavenumbersPerMetre;
    private readonly Complex[] steps;

    /// <summary>Prepares layers for a wave.</summary>
    /// <param name="permittivities">Complex relative permittivity of each layer, front first.</param>
    /// <param name="frequency">Above zero.</param>
    /// <param name="cosine">Cosine of the angle of incidence, above 0, at most 1.</param>
    /// <param name="polarisation">Of the wave.</param>
    public LayerRecursion(ReadOnlySpan<Complex> permittivities, Frequency frequency, double cosine, Polarisation polarisation)
    {
        double airWavenumberPerMetre = 2 * Math.PI / frequency.WavelengthMetres;
        double sineSquared = (1 - cosine) * (1 + cosine);
        normalWavenumbersPerMetre = new Complex[permittivities.Length];
        steps = new Complex[permittivities.Length + 1];

        // Layer 0 and layer N + 1 are air. The admittance is √η cos θ for TE and cos θ / √η for TM, so that the ratio of
        // two of them is Y of the text for TE and W for TM.
        Complex before = cosine;
        for (int m = 0; m < permittivities.Length; m++)
        {
            Complex normal = Complex.Sqrt(permittivities[m] - sineSquared);
            normalWavenumbersPerMetre[m] = airWavenumberPerMetre * normal;
            Complex admittance = polarisation == Polarisation.TransverseElectric ? normal : normal / permittivities[m];
            steps[m] = admittance / before;
            before = admittance;
        }

        steps[permittivities.Length] = cosine / before;
    }

    /// <summary>Both coefficients and both losses.</summary>
    /// <param name="thicknessesMetres">One per layer, front first.</param>
    public SlabResponse Respond(ReadOnlySpan<double> thicknessesMetres)
    {
        (Complex forward, Complex backward, double logScale) = WavesInFirstLayer(thicknessesMetres);
        (Complex incident, Complex reflected) = AcrossFace(forward, backward, steps[0]);

        // |A|² − |B|² = Re[(A + B)·conj(Y(A − B))]: the power that enters, without the cancellation that would eat the
        // digits of a reflection loss as small as that of metal.
        double incidentPower = Power(incident);
        double entering = ((forward + backward) * Complex.Conjugate(steps[0] * (forward - backward))).Real / incidentPower;
        Complex reflection = reflected / incident;
        double reflectionLossDb = Power(reflection) > 0.5 ? -SmallDifferences.LogarithmOfOnePlus(-entering) * DecibelsPerNeperOfPower
            : -Math.Log(Power(reflection)) * DecibelsPerNeperOfPower;
        double transmissionLossDb = ((2 * logScale) + Math.Log(incidentPower)) * DecibelsPerNeperOfPower;
        return new(reflection, Math.Exp(-logScale) / incident, new(reflectionLossDb), new(transmissionLossDb));
    }

    /// <summary>Transmitted over incident power, 0 to 1; zero where it is smaller than any double.</summary>
    /// <param name="thicknessesMetres">One per layer, front first.</param>
    public double TransmittedPower(ReadOnlySpan<double> thicknessesMetres)
    {
        (Complex forward, Complex backward, double logScale) = WavesInFirstLayer(thicknessesMetres);
        (Complex incident, _) = AcrossFace(forward, backward, steps[0]);
        return Math.Exp(-2 * logScale) / Power(incident);
    }

    private const double DecibelsPerNeperOfPower = 10 / 2.302585092994045684;

    // Far from overflow, yet never met by fewer than some fifty interfaces with metal.
    private const double RescaleAbovePower = 1e200;

    // A and B (F and G for TM) from the back face to the front face, over e^logScale.
    private (Complex Forward, Complex Backward, double LogScale) WavesInFirstLayer(ReadOnlySpan<double> thicknessesMetres)
    {
        Complex forward = 1, backward = 0;
        double logScale = 0;
        for (int m = normalWavenumbersPerMetre.Length - 1; m >= 0; m--)
        {
            (Complex ahead, Complex back) = AcrossFace(forward, backward, steps[m + 1]);
            double phase = normalWavenumbersPerMetre[m].Real * thicknessesMetres[m];
            double nepers = -normalWavenumbersPerMetre[m].Imaginary * thicknessesMetres[m];
            (double sine, double cosine) = Math.SinCos(phase);
            forward = ahead * new Complex(cosine, sine);
            backward = back * new Complex(cosine, -sine) * Math.Exp(-2 * nepers);
            logScale += nepers;
            if (Power(forward) < RescaleAbovePower) continue;

            double magnitude = Math.Sqrt(Power(forward));
            forward /= magnitude;
            backward /= magnitude;
            logScale += Math.Log(magnitude);
        }

        return (forward, backward, logScale);
    }

    // The step of the text from behind an interface to before it: [A(1+Y) + B(1−Y)]/2 and [A(1−Y) + B(1+Y)]/2, regrouped.
    private static (Complex Forward, Complex Backward) AcrossFace(Complex forward, Complex backward, Complex step)
    {
        Complex sum = (forward + backward) * 0.5, difference = (forward - backward) * 0.5 * step;
        return (sum + difference, sum - difference);
    }

    private static double Power(Complex field) => (field.Real * field.Real) + (field.Imaginary * field.Imaginary);
}
