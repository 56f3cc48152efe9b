using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>Broken wires against every row that holds for this rope.</summary>
internal static class WireChecks
{
    /// <summary>Rows that answer the same question: a rule set without a row of its own borrows those of the others.</summary>
    private static readonly WireWindow[][] Questions =
    [
        [WireWindow.Lay, WireWindow.LayBeyondEnds, WireWindow.Strand, WireWindow.SixDiameters, WireWindow.ThirtyDiameters],
        [WireWindow.End, WireWindow.FittingLay],
        [WireWindow.Valley],
    ];

    /// <returns>The farthest broken wire of known place where a row rejects; else null.</returns>
    public static double? Check(InspectionScope scope)
    {
        var rope = scope.Input.Rope;
        if (scope.Input.BrokenWires is not { } wires)
        {
            scope.Find(InspectionFindings.NotLookedAt, InspectionPointers.Wires, words: new FindingWord("what", "whether wires are broken"));
            foreach (var rule in Applied(scope, rope.Function))
            {
                scope.Check(rule.Id, CheckOutcome.Undetermined, Severity.Unknown, rule.Limit, missing: [InspectionPointers.Wires]);
            }

            return null;
        }

        if (wires.Any(one => one.Place == WirePlace.Core))
        {
            scope.Find(InspectionFindings.CoreBroken, InspectionPointers.Wires);
        }

        var rows = rope.Function == RopeFunction.Unknown
            ? [.. Enum.GetValues<RopeFunction>().SelectMany(function => Applied(scope, function)).Distinct()]
            : Applied(scope, rope.Function);
        var failed = new List<BrokenWireRule>();
        foreach (var rule in rows)
        {
            var hangsOnFunction = rope.Function == RopeFunction.Unknown && rule.Functions.Count < Enum.GetValues<RopeFunction>().Length - 1;
            if (CheckRow(scope, rule, wires, hangsOnFunction) == CheckOutcome.Fail)
            {
                failed.Add(rule);
            }
        }

        SayStricter(scope, wires, [.. rows.Select(rule => rule.Id)]);
        return failed.Count == 0 ? null : FarthestM(wires);
    }

    private static List<BrokenWireRule> Applied(InspectionScope scope, RopeFunction function)
    {
        var holding = scope.Rules.BrokenWires.Where(rule => rule.Functions.Contains(function)).ToArray();
        var applied = new List<BrokenWireRule>();
        foreach (var question in Questions)
        {
            var rows = holding.Where(rule => question.Contains(rule.Window)).ToArray();
            var own = Array.FindAll(rows, rule => rule.Limit.RuleSet == scope.Input.RuleSet);
            applied.AddRange(own.Length > 0 ? own : rows);
        }

        return applied;
    }

    private static CheckOutcome CheckRow(InspectionScope scope, BrokenWireRule rule, IReadOnlyList<BrokenWires> wires, bool hangsOnFunction)
    {
        var count = WireCount.Of(wires, rule.Window, scope.Input.Rope);
        var limit = rule.Limit.Value!.Value;
        var (measured, weight) = (Measure.Count(count.High), scope.WeightOf(rule.Limit));
        var use = count.High / limit.Si;
        if (count.High < limit.Si)
        {
            scope.Check(rule.Id, CheckOutcome.Pass, weight, rule.Limit, measured, use);
            return CheckOutcome.Pass;
        }

        if (count.Low < limit.Si || hangsOnFunction)
        {
            var missing = Missing(scope, rule, wires, hangsOnFunction);
            // What is only a caution where it is certain can't weigh more where it isn't.
            var unsure = weight == Severity.Stop ? Severity.Unknown : Severity.Caution;
            scope.Check(rule.Id, CheckOutcome.Undetermined, unsure, rule.Limit, measured, use, missing);
            scope.Find(InspectionFindings.WiresNotPlaced, missing[0], measured, limit, [InspectionPointers.Wires, .. missing.Skip(1)], unsure, rule.Limit.Source,
                [new("rule", rule.Limit.Text), new("document", rule.Limit.Source.Document)]);
            return CheckOutcome.Undetermined;
        }

        measured = Measure.Count(count.Low);
        scope.Check(rule.Id, CheckOutcome.Fail, weight, rule.Limit, measured, count.Low / limit.Si);
        scope.Find(InspectionFindings.BrokenWires, InspectionPointers.Wires, measured, limit, [InspectionPointers.RuleSet, InspectionPointers.Function], weight, rule.Limit.Source,
            new("rule", rule.Limit.Text), new("document", rule.Limit.Source.Document));
        return CheckOutcome.Fail;
    }

    private static List<string> Missing(InspectionScope scope, BrokenWireRule rule, IReadOnlyList<BrokenWires> wires, bool hangsOnFunction)
    {
        var missing = new List<string>();
        if (hangsOnFunction)
        {
            missing.Add(InspectionPointers.Function);
        }

        var hangsOnLay = rule.Window is not (WireWindow.End or WireWindow.SixDiameters or WireWindow.ThirtyDiameters);
        for (var i = 0; i < wires.Count; i++)
        {
            if (wires[i].Place == WirePlace.Unknown)
            {
                missing.Add($"{InspectionPointers.Wires}/{i}/place");
            }

            if (WireCount.PlaceM(wires[i]) is null && rule.Window != WireWindow.End)
            {
                missing.Add($"{InspectionPointers.Wires}/{i}/fromMouth");
            }

            if (rule.Window == WireWindow.Strand && wires[i].InOneStrand is null)
            {
                missing.Add($"{InspectionPointers.Wires}/{i}/inOneStrand");
            }
        }

        if (hangsOnLay && scope.Input.Rope.LayLengthM is null)
        {
            missing.Add(InspectionPointers.LayLength);
        }

        // Strands of neighbouring groups may be the same one: only looking again can tell.
        return missing.Count > 0 ? missing : [InspectionPointers.Wires];
    }

    /// <summary>A row of another rule set that would reject what this one lets pass is worth knowing.</summary>
    private static void SayStricter(InspectionScope scope, IReadOnlyList<BrokenWires> wires, string[] applied)
    {
        foreach (var rule in scope.Rules.BrokenWires.Where(rule => !applied.Contains(rule.Id) && rule.Functions.Contains(scope.Input.Rope.Function)))
        {
            var count = WireCount.Of(wires, rule.Window, scope.Input.Rope).Low;
            if (count >= rule.Limit.Si)
            {
                scope.Find(InspectionFindings.StricterElsewhere, InspectionPointers.Wires, Measure.Count(count), rule.Limit.Value, [InspectionPointers.RuleSet], source: rule.Limit.Source,
                    words: [new("rule", rule.Limit.Text), new("document", rule.Limit.Source.Document)]);
            }
        }
    }

    private static double? FarthestM(IReadOnlyList<BrokenWires> wires) => wires.Select(WireCount.PlaceM).Max();
}
