using System.Text.Json.Nodes;
using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Pouring.Findings.PourExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Pouring.Findings;

/// <summary>What the vapour and the place raise.</summary>
internal static class VapourExamples
{
    private const string Room = "/conditions/room", MixingFactor = "/conditions/mixingFactor", Place = "/conditions/place",
        AirLimits = "/conditions/airLimits";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("vapour-above-law", Severity.Stop, Room, pour => pour.With(Room, Of(5, 0))),
        new("vapour-may-exceed-law", Severity.Caution, Room, pour => pour.With(Room, Of(1, 60)).Without(MixingFactor)),
        new("vapour-above-recommended", Severity.Caution, Room, pour => pour.With(Room, Of(8, 0))),
        new("vapour-above-own-limit", Severity.Stop, AirLimits + "/shortTerm", pour => pour.With(AirLimits,
            new JsonObject { ["shortTerm"] = Quantity(.01, "ppm"), ["source"] = "rule 4 of the yard" })),
        new("vapour-above-own-limit", Severity.Caution, AirLimits + "/timeWeighted",
        pour => pour.With(Room, Of(40, 20)).Without(MixingFactor)
            .With(AirLimits, new JsonObject { ["timeWeighted"] = Quantity(.5, "ppm"), ["source"] = "rule 4 of the yard" })),
        new("vapour-not-computed", Severity.Unknown, Sheet + "/vapour", pour => pour.Without(Sheet + "/vapour")),
        new("room-missing", Severity.Unknown, Room, pour => pour.Without(Room)),
        new("vapour-above-stricter-law", Severity.Caution, Room, pour => pour.With(Room, Of(8, 0)).Without("/conditions/jurisdiction")),
        new("confined-space", Severity.Caution, Place, pour => pour.With(Place, "confined")),
        new("ignition-source", Severity.Stop, "/conditions/ignitionSource", pour => pour.With("/conditions/ignitionSource", "yes")),
        new("ignition-source", Severity.Unknown, "/conditions/ignitionSource",
            pour => pour.With("/conditions/ignitionSource", "yes").Without(Sheet + "/vapour")),
    ];

    private static JsonObject Of(double cubicMetres, double airChangesPerHour) =>
        new() { ["volume"] = Quantity(cubicMetres, "m3"), ["airChanges"] = Quantity(airChangesPerHour, "1/h") };
}
