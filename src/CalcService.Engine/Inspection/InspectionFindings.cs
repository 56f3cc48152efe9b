using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Inspection;

/// <summary>Every finding that an inspection can raise, by theme in the other parts of this class.</summary>
public static partial class InspectionFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingDefinition> All => Catalogue.All;

    private static IReadOnlyList<FindingDefinition> Shared =>
        [CompoundFindings.Demonstration, CompoundFindings.SheetSilent, BoundFindings.RopeThick, .. MineFindings.All];

    private static Source Prudence => Source.NotGiven("/docs/service-inspections");

    private static Source OfTheLimit => new("the document that the limit names", "/docs/service-inspections", Basis.Derived);

    private static Rule[] LimitsOf(RuleBook rules, EndCondition condition) =>
        [.. rules.Inspection.Conditions.Where(rule => rule.Condition == condition).Select(rule => rule.Limit)];

    private static FindingDefinition Unknown(
        string code, string since, Actor actor, string meaning, string message, string action, Func<RuleBook,
            IReadOnlyList<Rule>>? limits = null) =>
        FindingKinds.Unknown(code, since, actor, meaning, message, action, Prudence, limits);

    /// <summary>Its own class, so that it is made when all parts have been.</summary>
    private static class Catalogue
    {
        public static IReadOnlyList<FindingDefinition> All { get; } =
            FindingKinds.CatalogueOf(typeof(InspectionFindings), Shared);
    }
}
