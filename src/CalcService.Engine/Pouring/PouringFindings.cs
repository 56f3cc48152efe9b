using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Pouring;

/// <summary>Every finding that a pour plan can raise, by theme in the other parts of this class.</summary>
public static partial class PouringFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    private static Source Prudence => Source.NotGiven("docs/pour-plans.md");

    private static Source Geometry => FitFindings.Geometry;

    private static FindingDefinition Unknown(string code, string since, Actor actor, string meaning, string message, string action) =>
        FindingKinds.Unknown(code, since, actor, meaning, message, action, Prudence);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            [.. new[] { Readings, Sheet, DoseAndGel, Stock, Fit, Broom, Vapour }.SelectMany(theme => theme).OrderBy(definition => definition.Code, StringComparer.Ordinal)];
    }
}
