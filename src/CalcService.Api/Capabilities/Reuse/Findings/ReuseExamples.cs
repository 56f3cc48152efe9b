using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;
using CalcService.Api.Pages;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Reuse.Findings;

/// <summary>A used socket with which nothing is wrong, and what raises each finding of its own. Socket and limits are invented.</summary>
internal static class ReuseExamples
{
    public const string Socket = "/socket", Past = "/socket/history", Found = "/socket/measured", Drawn = "/socket/nominal";

    /// <summary>
    /// The sound socket of the documentation with all that a note would ask for. The source has no quote in it: the pages go into a shell.
    /// </summary>
    public static OperationExamples Operation { get; } = new("/v1/reuse-assessments",
        RequestExamples.Of("reuse-assessments", "reuse").Json
            .With("/limits/source", "operator rule 7").With("/limits/pinWear", Quantity(2, "%"))
                .With("/limits/earThicknessLoss", Quantity(5, "%")),
        [.. SocketExamples.All, .. WearExamples.All]);

    public static JsonObject Indication(JsonObject socket, string? place, string? kind) =>
        socket.With("/inspection/indications", new JsonArray(new JsonObject { ["place"] = place, ["kind"] = kind }));
}
