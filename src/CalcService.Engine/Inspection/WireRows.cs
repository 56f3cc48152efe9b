using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>A row of broken wires that is asked of a rope.</summary>
/// <param name="Rule">The row.</param>
/// <param name="Question">Which question it answers; rows of one question say the same thing about the same wires.</param>
/// <param name="HangsOn">The member that would say whether the row is for this rope; null where it is.</param>
internal sealed record WireRow(BrokenWireRule Rule, int Question, string? HangsOn)
{
    /// <summary>Rows that answer the same question: a rule set without a row of its own borrows those of the others.</summary>
    private static readonly WireWindow[][] Questions =
    [
        [WireWindow.Lay, WireWindow.LayBeyondEnds, WireWindow.Strand, WireWindow.SixDiameters, WireWindow.ThirtyDiameters],
        [WireWindow.EndLay],
        [WireWindow.Valley],
    ];

    public static readonly RopeFunction[] Functions =
        [.. Enum.GetValues<RopeFunction>().Where(function => function != RopeFunction.Unknown)];

    /// <summary>The rows for this rope; those of every function where nobody says what it does.</summary>
    public static IReadOnlyList<WireRow> Of(InspectionScope scope)
    {
        var rope = scope.Input.Rope;
        return rope.Function != RopeFunction.Unknown ? [.. For(scope, rope.Function)]
            : [.. Functions.SelectMany(one => For(scope, one)).DistinctBy(row => row.Rule).Select(row => row with
            {
                HangsOn = Functions.Except(row.Rule.Functions).Any() && !(IsOfResistant(row.Rule) && rope.IsRotationResistant == true)
                    ? InspectionPointers.Function : null,
            })];
    }

    /// <summary>Rows of rotation resistant rope alone hold for it whatever else it does.</summary>
    private static bool IsOfResistant(BrokenWireRule rule) => rule.Functions is [RopeFunction.RotationResistant];

    /// <summary>The rows for a rope that does this. Whether its strands are laid against rotation may hang on its class.</summary>
    public static IEnumerable<WireRow> For(InspectionScope scope, RopeFunction function)
    {
        var isResistant = scope.Input.Rope.IsRotationResistant;
        var holding = scope.Rules.BrokenWires.Where(rule => rule.Functions.Contains(function)
            || (isResistant != false && IsOfResistant(rule))).ToArray();
        for (var question = 0; question < Questions.Length; question++)
        {
            // A set's row for ropes of every kind is no row for a rotation resistant one: that one is borrowed besides.
            foreach (var rows in holding.Where(rule => Questions[question].Contains(rule.Window)).GroupBy(IsOfResistant))
            {
                var own = rows.Where(rule => rule.Limit.RuleSet == scope.Input.RuleSet).ToArray();
                foreach (var rule in own.Length > 0 ? own : [.. rows])
                {
                    yield return new(rule, question, rule.Functions.Contains(function) || isResistant == true ? null
                        : InspectionPointers.Construction);
                }
            }
        }
    }
}
