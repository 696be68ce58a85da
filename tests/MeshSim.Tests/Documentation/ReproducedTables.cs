using MeshSim.Tests.Fitting.Estimation;
using MeshSim.Tests.Materials;
using MeshSim.Tests.Propagation.Recommendations;
using MeshSim.Tests.Radio;

namespace MeshSim.Tests.Documentation;

/// <summary>A table of the page: its heading, the test that compares it, and the comparison itself.</summary>
public sealed record PageTable(string Heading, string TestClass, ReproducedTable Table);

/// <summary>Every table that a test compares, in the order of the page.</summary>
public static class ReproducedTables
{
    public static readonly IReadOnlyList<(string Heading, PageTable[] Tables)> Chapters =
    [
        ("Building materials",
        [
            new("Parameters of materials", nameof(MaterialTests), MaterialTests.Catalogue),
            new("Permittivity", nameof(MaterialTests), MaterialTests.Permittivities),
            new("Permittivity at 9 GHz", nameof(MaterialTests), MaterialTests.AtNineGigahertz),
            new("Half space", nameof(HalfSpaceTests), HalfSpaceTests.Reflections),
            new("Slabs by P.2040-1", nameof(SlabSolverTests), SlabTables.Editions[0]),
            new("Slabs by P.2040-3", nameof(SlabSolverTests), SlabTables.Editions[1]),
            new("Slabs by P.2040-4", nameof(SlabSolverTests), SlabTables.Editions[2]),
        ]),
        ("Path loss",
        [
            new("Free space", nameof(FreeSpaceTests), FreeSpaceTests.Losses),
            new("COST 231, floor term", nameof(Cost231Tests), Cost231Tests.FloorTerm),
            new("COST 231, multi-wall", nameof(Cost231Tests), Cost231Tests.MultiWall),
            new("P.1238, older form", nameof(P1238Tests), P1238Tests.Losses),
            new("P.1238, coefficients of the site-general form", nameof(P1238SiteGeneralTests), P1238SiteGeneralTests.Coefficients),
            new("P.1238, site-general form", nameof(P1238SiteGeneralTests), P1238SiteGeneralTests.Losses),
        ]),
        ("Error rates",
        [
            new("O-QPSK, bits", nameof(BitErrorRateTests), BitErrorRateTests.OQpskTable),
            new("O-QPSK, frames", nameof(PacketErrorRateTests), PacketErrorRateTests.OQpsk),
            new("O-QPSK, required SINR", nameof(PacketErrorRateTests), PacketErrorRateTests.OQpskRequired),
            new("FSK and PSK, bits", nameof(BitErrorRateTests), BitErrorRateTests.FskTable),
            new("FSK, frames", nameof(PacketErrorRateTests), PacketErrorRateTests.Fsk),
            new("FSK, required Eb/N0", nameof(PacketErrorRateTests), PacketErrorRateTests.FskRequired),
        ]),
        ("Receivers, channels and airtime",
        [
            new("Noise floor and sensitivity, 2450 MHz", nameof(ReceiverTests), ReceiverTests.Noise),
            new("Sensitivity of ITU-T G.9959", nameof(ReceiverTests), ReceiverTests.SubGhz),
            new("Channels, 2450 MHz", nameof(RadioProfileTests), RadioProfileTests.Channels),
            new("Airtime of ITU-T G.9959", nameof(AirtimeTests), AirtimeTests.G9959),
            new("Airtime of IEEE 802.15.4 below 1 GHz", nameof(AirtimeTests), AirtimeTests.SubGhz),
        ]),
        ("Wi-Fi in a channel",
        [
            new("Channels, IEEE 802.11", nameof(WifiOverlapTests), WifiOverlapTests.Centres),
            new("The mask", nameof(TransmitMaskTests), TransmitMaskTests.Integrals),
            new("Shares by the mask", nameof(TransmitMaskTests), TransmitMaskTests.Fractions),
            new("Shares by channel", nameof(WifiOverlapTests), WifiOverlapTests.Shares),
        ]),
        ("Getting across a link",
        [
            new("Constants, 2450 MHz", nameof(HopTimeTests), HopTimeTests.Constants),
            new("Access to the channel", nameof(BackOffTests), BackOffTests.Access),
            new("One hop of unslotted CSMA-CA", nameof(HopTimeTests), HopTimeTests.Throughput),
            new("Wait of ITU-T G.9959 for an acknowledgement", nameof(HopTimeTests), HopTimeTests.AcknowledgementWait),
        ]),
        ("Radiated power",
        [
            new("ERP and EIRP", nameof(RadiatedPowerTests), RadiatedPowerTests.Erp),
            new("Field strength", nameof(RadiatedPowerTests), RadiatedPowerTests.Field),
        ]),
        ("Margins",
        [
            new("Q", nameof(NormalDistributionTests), NormalDistributionTests.Tails),
            new("Inverse of Q", nameof(NormalDistributionTests), NormalDistributionTests.Quantiles),
            new("Log-normal", nameof(FadingMarginTests), FadingMarginTests.LogNormal),
            new("Rayleigh", nameof(FadingMarginTests), FadingMarginTests.Rayleigh),
            new("Rician", nameof(FadingMarginTests), FadingMarginTests.Rician),
            new("Suzuki", nameof(FadingMarginTests), FadingMarginTests.Suzuki),
        ]),
        ("Fitting",
        [
            new("Certified linear regressions", nameof(MapEstimatorTests), MapEstimatorTests.Certified),
        ]),
        ("Whole links",
        [
            new("Links through the printed wall losses", nameof(LinkExampleTests), LinkExampleTests.PrintedWalls),
            new("Links through walls solved here", nameof(LinkExampleTests), LinkExampleTests.ComputedWalls),
        ]),
    ];

    public static IEnumerable<PageTable> All => Chapters.SelectMany(chapter => chapter.Tables);
}
