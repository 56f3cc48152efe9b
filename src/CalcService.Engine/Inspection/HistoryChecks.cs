using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Inspection;

/// <summary>What the end has been through: heat, substances, time; and the evidence that a mine asks for.</summary>
internal static class HistoryChecks
{
    public static void CheckHeat(InspectionScope scope)
    {
        var (input, remembered) = (scope.Input, scope.Rules.RememberedHighest);
        var sheet = input.Compound?.Service is { } range
            ? new RuleLimit("warmest service by the compound's sheet", Measure.Temperature(range.MaximumK), Source.DataSheet("service"))
                : null;
        if (input.Compound is null)
        {
            scope.Find(InspectionFindings.CompoundNotKnown, InspectionPointers.Compound);
        }
        else if (sheet is null)
        {
            scope.Find(CompoundFindings.SheetSilent, InspectionPointers.SheetService,
                words: new FindingWord("what", "service temperatures"));
        }

        // Of a resin that nobody names only the lowest range that one was ever made for is known.
        var rule = sheet ?? (input.Compound is null ? scope.Book.Matching.ServiceHighest : remembered);
        if (input.HighestTemperatureK is not { } hottest)
        {
            scope.Find(InspectionFindings.HeatNotKnown, InspectionPointers.Highest);
            scope.Check("heat", CheckOutcome.Undetermined, Severity.Unknown, rule, missing: [InspectionPointers.Highest]);
            return;
        }

        var judged = rule.Judge(Measure.Temperature(hottest));
        var isExceeded = judged.IsAbove;
        scope.Check("heat", !isExceeded ? CheckOutcome.Pass : sheet is null ? CheckOutcome.Undetermined : CheckOutcome.Fail, sheet is null
            ? Severity.Unknown : Severity.Stop, rule,
            Measure.Temperature(hottest), missing: isExceeded && sheet is null
            ? [input.Compound is null ? InspectionPointers.Compound : InspectionPointers.SheetService] : []);
        if (isExceeded)
        {
            scope.Find(sheet is null ? InspectionFindings.HotterThanRemembered : InspectionFindings.HotterThanSheet,
                InspectionPointers.Highest,
                judged, [InspectionPointers.Compound]);
        }
    }

    public static void CheckChemicals(InspectionScope scope)
    {
        if (scope.Input.Chemicals is not { } chemicals)
        {
            scope.Find(InspectionFindings.ChemicalsNotTold, InspectionPointers.Chemicals);
            return;
        }

        for (var i = 0; i < chemicals.Count; i++)
        {
            var row = scope.Input.Compound?.Chemicals.FirstOrDefault(known =>
                string.Equals(known.Substance, chemicals[i], StringComparison.OrdinalIgnoreCase));
            var definition = row?.Effect switch
            {
                ChemicalEffect.Resists => null,
                ChemicalEffect.Limited => InspectionFindings.MetLimited,
                ChemicalEffect.Attacked => InspectionFindings.MetAttacking,
                _ => InspectionFindings.MetUnlisted,
            };
            if (definition is not null)
            {
                scope.Find(definition, $"{InspectionPointers.Chemicals}/{i}", related: [InspectionPointers.Compound],
                    words: new FindingWord("substance", chemicals[i]));
            }
        }
    }

    public static NextDue? CheckAge(InspectionScope scope)
    {
        var (input, rule) = (scope.Input, scope.Rules.ResocketAfter);
        var isPlatform = input.RuleSet == InspectionRules.Platform;
        // The law speaks of ends that don't run onto a drum. An interval of another machine's law is no sign of damage.
        if (input.IsAtDrum == true || !isPlatform)
        {
            scope.Check("resocketing", CheckOutcome.NotApplicable, Severity.Note, rule);
            return null;
        }

        if (input.SocketedOn is not { } made)
        {
            scope.Find(InspectionFindings.SocketingDateMissing, InspectionPointers.SocketedOn);
            scope.Check("resocketing", CheckOutcome.Undetermined, Severity.Unknown, rule, missing: [InspectionPointers.SocketedOn]);
            return null;
        }

        var due = rule.MonthsFrom(made);
        var age = rule.Judge(Measure.Months(WholeMonths(made, input.AssessedOn)));
        var overdue = input.AssessedOn > due;
        scope.Check("resocketing", overdue ? CheckOutcome.Fail : CheckOutcome.Pass, Severity.Stop, rule, age.Measured, age.Share);
        if (overdue)
        {
            scope.Find(InspectionFindings.ResocketingOverdue, InspectionPointers.SocketedOn, age, ["/assessedOn"],
                words: new FindingWord("due", due.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        }

        return new(due, rule);
    }

    public static void CheckAttachment(InspectionScope scope)
    {
        var (evidence, rule) = (scope.Input.Attachment, scope.Book.Matching.MineAttachment);
        var isMine = scope.Input.RuleSet == MatchingRules.MineHoist;
        if (!isMine && evidence is { ResinByDesign: null, Efficiency: null })
        {
            scope.Check("attachment", CheckOutcome.NotApplicable, Severity.Note, rule);
            return;
        }

        var held = rule.Judge(evidence.Efficiency is { } share ? Measure.Fraction(share) : null);
        var missing = new List<(string Pointer, string What)>();
        if (evidence.ResinByDesign is null)
        {
            missing.Add((InspectionPointers.ByDesign, MineFindings.ByDesign));
        }
        else if (evidence.ResinByDesign == false)
        {
            scope.Find(MineFindings.MediumNotByDesign, InspectionPointers.ByDesign, severity: isMine ? Severity.Stop : Severity.Unknown);
        }

        var weak = held.IsBelow;
        if (evidence.Efficiency is null)
        {
            missing.Add((InspectionPointers.Efficiency, MineFindings.Holds));
        }
        else if (weak && isMine)
        {
            scope.Find(MineFindings.AttachmentWeak, InspectionPointers.Efficiency, held);
        }
        else if (weak)
        {
            scope.SayElsewhere(InspectionPointers.Efficiency, rule, held.Measured!.Value, []);
        }

        var isBad = weak || evidence.ResinByDesign == false;
        // Only a mine's law asks for what nobody said.
        if (isMine)
        {
            scope.FindMissing(MineFindings.EvidenceMissing, missing, " and ");
        }

        var outcome = isBad ? isMine ? CheckOutcome.Fail : CheckOutcome.Undetermined : isMine && missing.Count > 0
            ? CheckOutcome.Undetermined : CheckOutcome.Pass;
        string[] open = isMine ? [.. missing.Select(one => one.Pointer)] : isBad ? [InspectionPointers.RuleSet] : [];
        scope.Check("attachment", outcome, isMine ? Severity.Stop : Severity.Unknown, rule, held.Measured, held.Need, open);
    }

    private static int WholeMonths(DateOnly from, DateOnly to)
    {
        var months = ((to.Year - from.Year) * 12) + to.Month - from.Month;
        return from.AddMonths(months) > to ? months - 1 : months;
    }
}
