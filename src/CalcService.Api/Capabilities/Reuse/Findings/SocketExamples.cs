using CalcService.Api.Pages;
using CalcService.Engine.Findings;
using static CalcService.Api.Capabilities.Reuse.Findings.ReuseExamples;
using static CalcService.Api.Pages.NodeEdits;

namespace CalcService.Api.Capabilities.Reuse.Findings;

/// <summary>What the socket is, went through, and looks like.</summary>
internal static class SocketExamples
{
    private const string Heat = "/coneRemoval/maximumTemperature", Method = "/coneRemoval/method", Indications = "/inspection/indications",
        Visual = "/inspection/visual";

    public static IReadOnlyList<FindingExample> All { get; } =
    [
        new("socket-identity-missing", Severity.Unknown, Socket + "/id", socket => socket.Without(Socket + "/id")),
        new("socket-steel-unknown", Severity.Unknown, Socket + "/material/known",
        socket => socket.With(Socket + "/material/known", "unknown")),
        new("socket-history-missing", Severity.Unknown, Past + "/overloaded", socket => socket.Without(Past + "/overloaded")),
        new("socket-welded", Severity.Stop, Past + "/welded", socket => socket.With(Past + "/welded", "yes")),
        new("socket-straightened", Severity.Stop, Past + "/straightened", socket => socket.With(Past + "/straightened", "yes")),
        new("socket-arc-struck", Severity.Stop, Past + "/arcStruck", socket => socket.With(Past + "/arcStruck", "yes")),
        new("socket-overloaded", Severity.Stop, Past + "/overloaded", socket => socket.With(Past + "/overloaded", "yes")),
        new("socket-medium-changed", Severity.Note, Past + "/lastMedium", socket => socket.With(Past + "/lastMedium", "zinc")),
        new("cone-removal-unknown", Severity.Unknown, Method, socket => socket.Without(Method)),
        new("cone-burnt-out", Severity.Stop, Method, socket => socket.With(Method, "burntOut").Without(Heat)),
        new("socket-overheated", Severity.Stop, Heat, socket => socket.With(Method, "pressedWarm").With(Heat, Quantity(350, "degC"))
            .With("/limits/removalTemperature", Quantity(300, "degC"))),
        new("socket-overheated", Severity.Unknown, "/limits/removalTemperature",
            socket => socket.With(Method, "pressedWarm").With(Heat, Quantity(450, "degC"))),
        new("socket-warmed", Severity.Caution, Heat, socket => socket.With(Method, "pressedWarm").With(Heat, Quantity(250, "degC"))),
        new("socket-cracked", Severity.Stop, Indications + "/0", socket => Indication(socket, "ears", "linear")),
        new("crack-search-missing", Severity.Unknown, "/inspection/surfaceMethod",
        socket => socket.With("/inspection/surfaceMethod", "visualOnly")),
        new("visual-inspection-missing", Severity.Unknown, Visual + "/cracks", socket => socket.Without(Visual + "/cracks")),
        new("indication-unclear", Severity.Unknown, Indications + "/0", socket => Indication(socket, "ears", "unknown")),
        new("rounded-indication", Severity.Caution, Indications + "/0", socket => Indication(socket, "ears", "rounded")),
        new("crack-search-old", Severity.Caution, "/inspection/inspectedOn",
        socket => socket.With("/inspection/inspectedOn", "2025-03-01")),
        new("socket-surface-covered", Severity.Unknown, Visual + "/surface", socket => socket.With(Visual + "/surface", "oldResin")),
        new("socket-corroded", Severity.Stop, Visual + "/corrosion", socket => socket.With(Visual + "/corrosion", "severe")),
        new("socket-rusty", Severity.Caution, Visual + "/corrosion", socket => socket.With(Visual + "/corrosion", "light")),
    ];
}
