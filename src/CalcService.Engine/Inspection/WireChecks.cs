using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Inspection;

/// <summary>Broken wires against every row that holds for this rope.</summary>
internal static class WireChecks
{
    /// <summary>What came of one row that is not passed.</summary>
    /// <param name="Row">The row.</param>
    /// <param name="Outcome">Whether it rejects or is open.</param>
    /// <param name="Count">How many wires count; the most that may where it is open.</param>
    /// <param name="Missing">Members that would settle it; none where the count itself is certain.</param>
    private sealed record Verdict(WireRow Row, CheckOutcome Outcome, int Count, IReadOnlyList<string> Missing)
    {
        public Judged Judged => Row.Rule.Limit.Judge(Measure.Count(Count));

        public double Use => Judged.Share!.Value;
    }

    /// <summary>Any place where wires can be broken.</summary>
    private static readonly WirePlace[] Places = [.. Enum.GetValues<WirePlace>().Where(place => place != WirePlace.Unknown)];

    public static WireDamage Check(InspectionScope scope)
    {
        var rows = WireRow.Of(scope);
        if (scope.Input.BrokenWires is not { } wires)
        {
            scope.Miss(InspectionPointers.Wires, "whether wires are broken");
            foreach (var row in rows)
            {
                scope.Check(row.Rule.Id, CheckOutcome.Undetermined, Severity.Unknown, row.Rule.Limit, missing: [InspectionPointers.Wires]);
            }

            return default;
        }

        if (wires.Any(one => one.Place == WirePlace.Core))
        {
            scope.Find(InspectionFindings.CoreBroken, InspectionPointers.Wires);
        }

        var verdicts = rows.Select(row => Judge(scope, row, wires)).OfType<Verdict>().ToArray();
        // Wires that reject are one fact, by however many rows.
        foreach (var outcome in verdicts.Where(one => one.Missing.Count == 0).GroupBy(one => one.Outcome))
        {
            Say(scope, Strictest(outcome));
        }

        // Where a question is answered by what is certain, what is not placed changes nothing.
        var answered = verdicts.Where(one => one.Missing.Count == 0).Select(one => one.Row.Question).ToHashSet();
        var rejects = verdicts.Any(one => one.Outcome == CheckOutcome.Fail);
        if (!rejects
            && (wires.Select(group => Wherever(scope, rows, group)).FirstOrDefault(one => one is not null)
            ?? WhateverItDoes(scope, wires)) is { } certain)
        {
            rejects = true;
            Say(scope, certain);
            var limit = certain.Row.Rule.Limit;
            scope.Checks.RemoveAll(check => check.Id == certain.Row.Rule.Id);
            scope.Check(certain.Row.Rule.Id, CheckOutcome.Fail, Severity.Stop, limit, Measure.Count(certain.Count), certain.Use);
        }
        else
        {
            SayUnplaced(scope, [.. verdicts.Where(one => one.Missing.Count > 0 && !answered.Contains(one.Row.Question))]);
        }

        return rejects ? new(true, wires.Select(WireCount.PlaceM).Max(), wires.All(group => WireCount.PlaceM(group) is not null)) : default;
    }

    /// <summary>
    /// Wires of unknown place that reject in any place they can be in: the mildest of those verdicts. Null where they would pass in one.
    /// </summary>
    private static Verdict? Wherever(InspectionScope scope, IReadOnlyList<WireRow> rows, BrokenWires group)
    {
        if (group.Place != WirePlace.Unknown)
        {
            return null;
        }

        var holding = rows.Where(row => row.HangsOn is null).ToArray();
        return Mildest(Places.Select(place => Rejecting(scope, holding, [group with { Place = place }])));
    }

    /// <summary>
    /// Wires that reject whatever the rope does: the mildest of those verdicts. Null where they would pass in one function.
    /// </summary>
    private static Verdict? WhateverItDoes(InspectionScope scope, IReadOnlyList<BrokenWires> wires) =>
        scope.Input.Rope.Function != RopeFunction.Unknown ? null
        : Mildest(WireRow.Functions.Select(function =>
        Rejecting(scope, [.. WireRow.For(scope, function).Where(row => row.HangsOn is null)], wires)));

    /// <summary>What rejects for certain by rows that hold here.</summary>
    private static Verdict[] Rejecting(InspectionScope scope, IReadOnlyList<WireRow> rows, IReadOnlyList<BrokenWires> wires) =>
    [
        .. rows.Where(row => scope.Holds(row.Rule.Limit))
            .Select(row =>
            new Verdict(row, CheckOutcome.Fail, WireCount.Of(wires, row.Rule.Window, scope.Input.Rope.DiameterM, scope.LayM).Low, []))
            .Where(one => !one.Judged.IsBelow),
    ];

    private static Verdict? Mildest(IEnumerable<Verdict[]> cases)
    {
        var all = cases.ToArray();
        return all.Any(verdicts => verdicts.Length == 0) ? null : all.Select(Strictest).MinBy(one => one.Use);
    }

    /// <summary>Writes the check; null where it is passed.</summary>
    private static Verdict? Judge(InspectionScope scope, WireRow row, IReadOnlyList<BrokenWires> wires)
    {
        var (rule, limit) = (row.Rule, row.Rule.Limit);
        var count = WireCount.Of(wires, rule.Window, scope.Input.Rope.DiameterM, scope.LayM);
        if (limit.Judge(Measure.Count(count.High)) is { IsBelow: true } few)
        {
            scope.Check(rule.Id, CheckOutcome.Pass, scope.WeightOf(limit), limit, few.Measured, few.Share);
            return null;
        }

        if (limit.Judge(Measure.Count(count.Low)).IsBelow || row.HangsOn is not null)
        {
            var open = new Verdict(row, CheckOutcome.Undetermined, count.High, Missing(scope, row, wires));
            scope.Check(rule.Id, open.Outcome, Severity.Unknown, limit, Measure.Count(open.Count), open.Use, open.Missing);
            return open;
        }

        var verdict = new Verdict(row, scope.OutcomeOf(limit), count.Low, []);
        scope.Check(rule.Id, verdict.Outcome, scope.WeightOf(limit), limit, Measure.Count(verdict.Count), verdict.Use,
            scope.MissingOf(limit));
        return verdict;
    }

    /// <summary>Rows of one question say one thing: the one that is exceeded most says it, of equal ones a law's.</summary>
    private static Verdict Strictest(IEnumerable<Verdict> verdicts) => verdicts
        .OrderByDescending(one => one.Use).ThenByDescending(one => one.Row.Rule.Limit.Source.Basis == Basis.Law)
        .ThenBy(one => one.Row.Rule.Limit, RuleLimit.ByNumber).ThenBy(one => one.Row.Rule.Id, StringComparer.Ordinal).First();

    private static void Say(InspectionScope scope, Verdict verdict) => scope.Exceed(
        InspectionFindings.BrokenWires, InspectionPointers.Wires, verdict.Row.Rule.Limit, Measure.Count(verdict.Count),
        [InspectionPointers.RuleSet, InspectionPointers.Function]);

    /// <summary>Wires that nobody placed are one fact, however many rows hang on it.</summary>
    private static void SayUnplaced(InspectionScope scope, IReadOnlyList<Verdict> open)
    {
        if (open.Count == 0)
        {
            return;
        }

        var worst = Strictest(open);
        string[] missing =
            [.. open.Prepend(worst).SelectMany(one => one.Missing).Append(InspectionPointers.Wires).Distinct(StringComparer.Ordinal)];
        var limit = worst.Row.Rule.Limit;
        scope.Find(InspectionFindings.WiresNotPlaced, missing[0], worst.Judged, missing[1..],
            words: [new("rule", limit.Text), new("document", limit.Source.Document)]);
    }

    private static List<string> Missing(InspectionScope scope, WireRow row, IReadOnlyList<BrokenWires> wires)
    {
        var missing = new List<string>();
        if (row.HangsOn is { } member)
        {
            missing.Add(member);
        }

        for (var i = 0; i < wires.Count; i++)
        {
            if (wires[i].Place == WirePlace.Unknown)
            {
                missing.Add($"{InspectionPointers.Wires}/{i}/place");
            }

            if (WireCount.PlaceM(wires[i]) is null)
            {
                missing.Add($"{InspectionPointers.Wires}/{i}/fromMouth");
            }

            if (row.Rule.Window == WireWindow.Strand && wires[i].InOneStrand is null)
            {
                missing.Add($"{InspectionPointers.Wires}/{i}/inOneStrand");
            }
        }

        if (row.Rule.Window is not (WireWindow.SixDiameters or WireWindow.ThirtyDiameters) && scope.LayM is null)
        {
            missing.Add(InspectionPointers.LayLength);
        }

        // Strands of neighbouring groups may be the same one: only looking again can tell.
        return missing.Count > 0 ? missing : [InspectionPointers.Wires];
    }
}

/// <summary>Broken wires that reject.</summary>
/// <param name="Rejects">Whether any do.</param>
/// <param name="ReachM">The farthest of known place; null where none is known.</param>
/// <param name="IsWhole">Whether the place of all of them is known.</param>
internal readonly record struct WireDamage(bool Rejects, double? ReachM, bool IsWhole);
