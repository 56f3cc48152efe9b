using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Audits;

/// <summary>How far the cone seated, beside what load transfer lets expect.</summary>
internal static class SeatingCheck
{
    public static RecomputedPlan Check(AuditScope scope, RopeFacts? rope, RecomputedPlan plan)
    {
        var proof = scope.Input.Proof;
        if (proof.SeatingM is { } any && SeatingBounds.Judge(any, 0, scope.Input.Rope?.DiameterM) is var (against, judged))
        {
            scope.Find(against, AuditPointers.Seating, judged, [AuditPointers.ProofLoad]);
            scope.Weigh("seating", against, against, judged, against == TestFindings.SeatingContradicts ? [AuditPointers.Seating] : []);
            return plan;
        }

        if (rope is not null && scope.Input.Socket.Basket is { } basket
            && !EndFit.Seats(scope.Input.Rope!, rope, basket, scope.Book.Pouring))
        {
            scope.Skip("seating", TestFindings.SeatingLittle);
            return plan;
        }

        if (proof.SeatingM is not { } read)
        {
            scope.Missing.Add(AuditPointers.Seating);
            scope.Find(TestFindings.SeatingNotRead, AuditPointers.Seating);
            scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingNotRead, missing: [AuditPointers.Seating]);
            return plan;
        }

        if (proof.SeatingReadAt == SeatingPlace.Unknown || proof.ReadUnderLoad != true)
        {
            var pointer = proof.SeatingReadAt == SeatingPlace.Unknown ? AuditPointers.SeatingPlace : AuditPointers.UnderLoad;
            scope.Find(TestFindings.SeatingPlaceUnknown, pointer, related: [AuditPointers.Seating]);
            scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingPlaceUnknown, Measure.Length(read), missing: [pointer]);
            return plan;
        }

        return rope is null || scope.Input.Socket.Basket is null || proof.LoadN is not { } loadN ? Open(scope, read, plan)
            : Compare(scope, rope, read, loadN, plan);
    }

    /// <summary>The gaps have been found by others.</summary>
    private static RecomputedPlan Open(AuditScope scope, double read, RecomputedPlan plan)
    {
        string[] missing =
        [
            .. scope.Input.Rope is null ? [AuditPointers.Rope] : Array.Empty<string>(), .. scope.Input.Socket.Basket is null
            ? [AuditPointers.Basket] : Array.Empty<string>(),
            .. scope.Input.Proof.LoadN is null ? [AuditPointers.ProofLoad] : Array.Empty<string>(),
        ];
        scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingLittle, Measure.Length(read), missing: missing);
        return plan;
    }

    private static RecomputedPlan Compare(AuditScope scope, RopeFacts rope, double read, double loadN, RecomputedPlan plan)
    {
        var (socket, proof, rules) = (scope.Input.Socket, scope.Input.Proof, scope.Book);
        var end = new EndCone(scope, rules.Matching, scope.Input.Compound.Cured, socket.Basket!, rope.MetallicAreaM2)
        {
            OuterAtSmallEndM = socket.OuterAtSmallEndM,
            OuterAtMouthM = socket.OuterAtMouthM,
        };
        if (SeatingForecast.Of(end, rules.Proof.ShrinkageSpread, proof.SeatingReadAt, null, "/proof")?.At(loadN,
            scope.CancellationToken) is not { } band)
        {
            scope.Write("seating", CheckOutcome.Undetermined, TestFindings.SeatingLittle, Measure.Length(read));
            return plan;
        }

        var (outside, seated) = band.Judge(read);
        if (outside is not null)
        {
            scope.Find(outside, AuditPointers.Seating, seated, [AuditPointers.ProofLoad]);
        }

        scope.Weigh("seating", outside, TestFindings.SeatingLittle, seated);
        return plan with { SeatingLowM = band.LowM, SeatingHighM = band.HighM };
    }
}
