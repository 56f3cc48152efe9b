using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>A row of broken wires that is asked of a rope.</summary>
/// <param name="Rule">The row.</param>
/// <param name="Question">Which question it answers; rows of one question say the same thing about the same wires.</param>
/// <param name="HangsOnFunction">Whether it holds only if the rope turns out to do what the row is for.</param>
internal sealed record WireRow(BrokenWireRule Rule, int Question, bool HangsOnFunction)
{
    /// <summary>Rows that answer the same question: a rule set without a row of its own borrows those of the others.</summary>
    private static readonly WireWindow[][] Questions =
    [
        [WireWindow.Lay, WireWindow.LayBeyondEnds, WireWindow.Strand, WireWindow.SixDiameters, WireWindow.ThirtyDiameters],
        [WireWindow.EndLay],
        [WireWindow.Valley],
    ];

    private static readonly RopeFunction[] Known = [.. Enum.GetValues<RopeFunction>().Where(function => function != RopeFunction.Unknown)];

    /// <summary>The rows for this rope; those of every function where nobody says what it does.</summary>
    public static IReadOnlyList<WireRow> Of(InspectionScope scope)
    {
        var rope = scope.Input.Rope;
        return rope.Function != RopeFunction.Unknown ? [.. For(scope, rope.Function)]
            : [.. Known.SelectMany(one => For(scope, one)).DistinctBy(row => row.Rule)
                .Select(row => row with { HangsOnFunction = Known.Except(row.Rule.Functions).Any() && !(IsOfResistant(row.Rule) && rope.IsRotationResistant == true) })];
    }

    /// <summary>Rows of rotation resistant rope alone hold for it whatever else it does.</summary>
    private static bool IsOfResistant(BrokenWireRule rule) => rule.Functions is [RopeFunction.RotationResistant];

    private static IEnumerable<WireRow> For(InspectionScope scope, RopeFunction function)
    {
        var isResistant = scope.Input.Rope.IsRotationResistant == true;
        var holding = scope.Rules.BrokenWires.Where(rule => rule.Functions.Contains(function) || (isResistant && IsOfResistant(rule))).ToArray();
        for (var question = 0; question < Questions.Length; question++)
        {
            // A set's row for ropes of every kind is no row for a rotation resistant one: that one is borrowed besides.
            foreach (var rows in holding.Where(rule => Questions[question].Contains(rule.Window)).GroupBy(IsOfResistant))
            {
                var own = rows.Where(rule => rule.Limit.RuleSet == scope.Input.RuleSet).ToArray();
                foreach (var rule in own.Length > 0 ? own : [.. rows])
                {
                    yield return new(rule, question, false);
                }
            }
        }
    }
}
