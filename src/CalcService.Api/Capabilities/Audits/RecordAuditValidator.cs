using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using FluentValidation;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>What a record may be. What it lacks, and what it tells that should not have been, are findings, not errors.</summary>
public sealed class RecordAuditValidator(CompoundCatalogue compounds) : Contradictions<RecordAuditRequest>
{
    protected override void Check(RecordAuditRequest request, ValidationContext<RecordAuditRequest> context)
    {
        if (compounds.SheetOf(request.Compound) is { } sheet)
        {
            context.MustBeOn(sheet, request.Mix?.Kits, "Mix.Kits");
        }

        SteelReadingOrder.Check(request.Conditions?.SteelSeries, request.Times?.MixedAt, "Conditions.SteelSeries", "Times.MixedAt",
            context);
        if (request.Proof is { Asked: Fact.No, AskedLoad: not null })
        {
            context.Contradict("Proof.Asked", "Proof.AskedLoad", "No proof load is asked for, and yet it is given.");
        }
    }
}

/// <summary>What a recorded socket may be.</summary>
public sealed class RecordedSocketValidator : Contradictions<RecordedSocket>
{
    protected override void Check(RecordedSocket socket, ValidationContext<RecordedSocket> context)
    {
        if (socket.OuterAtSmallEnd?.Si <= socket.Basket?.SmallEndDiameter.Si)
        {
            context.Contradict(nameof(RecordedSocket.OuterAtSmallEnd), "Basket.SmallEndDiameter",
                "The outside is not larger than the bore.");
        }

        if (socket.OuterAtMouth?.Si <= socket.Basket?.LargeEndDiameter.Si)
        {
            context.Contradict(nameof(RecordedSocket.OuterAtMouth), "Basket.LargeEndDiameter", "The outside is not larger than the bore.");
        }
    }
}

/// <summary>What recorded times may be: their order is what the audit looks at.</summary>
public sealed class RecordedTimesValidator : Contradictions<RecordedTimes>
{
    protected override void Check(RecordedTimes times, ValidationContext<RecordedTimes> context)
    {
        if (times.StillSoftAt >= times.GelAt)
        {
            context.Contradict(nameof(RecordedTimes.StillSoftAt), nameof(RecordedTimes.GelAt), "It was still soft after it had gelled.");
        }
    }
}
