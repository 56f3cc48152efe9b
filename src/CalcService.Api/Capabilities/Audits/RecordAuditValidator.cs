using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>What a record may be. What it lacks, and what it tells that should not have been, are findings, not errors.</summary>
public sealed class RecordAuditValidator : AbstractValidator<RecordAuditRequest>
{
    private readonly CompoundCatalogue _compounds;

    public RecordAuditValidator(CompoundCatalogue compounds)
    {
        _compounds = compounds;
        RuleFor(request => request.Compound).SetValidator(new CompoundValidator(compounds));
        RuleFor(request => request.Record!).SetValidator(new RecordIdentityValidator());
        RuleFor(request => request.Rope!).SetValidator(new RopeValidator());
        RuleFor(request => request.Socket!).SetValidator(new RecordedSocketValidator());
        RuleFor(request => request.Conditions!).SetValidator(new RecordedConditionsValidator());
        RuleFor(request => request.Mix!).SetValidator(new RecordedMixValidator());
        RuleFor(request => request.Times!).SetValidator(new RecordedTimesValidator());
        RuleFor(request => request.Hardness!).SetValidator(new RecordedHardnessValidator());
        RuleFor(request => request.Proof!).SetValidator(new RecordedProofValidator());
        RuleForEach(request => request.People).SetValidator(new RecordedPersonValidator());
        RuleFor(request => request.Looks!).SetValidator(new RecordedLooksValidator());
        RuleFor(request => request).Custom(CheckWhole);
    }

    private void CheckWhole(RecordAuditRequest request, ValidationContext<RecordAuditRequest> context)
    {
        var kits = request.Mix?.Kits ?? [];
        for (var i = 0; i < kits.Count; i++)
        {
            if (_compounds.SheetOf(request.Compound) is { } sheet && sheet.Kits.All(kit => kit.Code != kits[i].Kit))
            {
                context.Fail($"Mix.Kits[{i}].Kit", $"No such kit on the sheet; known: {string.Join(", ", sheet.Kits.Select(kit => kit.Code))}.", "unknown-kit");
            }
        }

        SteelReadingValidator.CheckOrder(request.Conditions?.SteelSeries, request.Times?.MixedAt, "Conditions.SteelSeries", "Times.MixedAt", context);
        if (request.Proof is { Asked: Fact.No, AskedLoad: not null })
        {
            context.Contradict("Proof.Asked", "Proof.AskedLoad", "No proof load is asked for, and yet it is given.");
        }
    }
}

/// <summary>What tells a record from others: texts only.</summary>
public sealed class RecordIdentityValidator : AbstractValidator<RecordIdentity>;

/// <summary>What a recorded socket may be.</summary>
public sealed class RecordedSocketValidator : AbstractValidator<RecordedSocket>
{
    public RecordedSocketValidator()
    {
        RuleFor(socket => socket.Basket!).SetValidator(new BasketValidator());
        RuleFor(socket => socket.Material!).SetValidator(new SocketMaterialValidator());
        this.Ranges()
            .Of(socket => socket.OuterAtSmallEnd, 1, 3000, "mm", QuantityKind.Length)
            .Of(socket => socket.OuterAtMouth, 1, 3000, "mm", QuantityKind.Length)
            .Of(socket => socket.BreakingForce, .1, 100000, "kN", QuantityKind.Force)
            .Of(socket => socket.ProofRating, .001, 100000, "kN", QuantityKind.Force);
        RuleFor(socket => socket).Custom((socket, context) =>
        {
            if (socket.OuterAtSmallEnd?.Si <= socket.Basket?.SmallEndDiameter.Si)
            {
                context.Contradict(nameof(RecordedSocket.OuterAtSmallEnd), "Basket.SmallEndDiameter", "The outside is not larger than the bore.");
            }

            if (socket.OuterAtMouth?.Si <= socket.Basket?.LargeEndDiameter.Si)
            {
                context.Contradict(nameof(RecordedSocket.OuterAtMouth), "Basket.LargeEndDiameter", "The outside is not larger than the bore.");
            }
        });
    }
}

/// <summary>What recorded readings may be.</summary>
public sealed class RecordedConditionsValidator : AbstractValidator<RecordedConditions>
{
    public RecordedConditionsValidator()
    {
        RuleFor(conditions => conditions.Air!).SetValidator(new CureAirValidator());
        RuleForEach(conditions => conditions.SteelSeries).SetValidator(new SteelReadingValidator());
        this.Ranges()
            .Of(conditions => conditions.SteelTemperature, -60, 150, "degC", QuantityKind.Temperature)
            .Of(conditions => conditions.CompoundTemperature, -30, 100, "degC", QuantityKind.Temperature)
            .Of(conditions => conditions.RelativeHumidity, 1, 100, "%", QuantityKind.Fraction);
    }
}

/// <summary>What a recorded mix may be.</summary>
public sealed class RecordedMixValidator : AbstractValidator<RecordedMix>
{
    public RecordedMixValidator()
    {
        RuleForEach(mix => mix.Kits).SetValidator(new StockLotValidator());
        this.Ranges()
            .Of(mix => mix.Volume, 0, 1000, "L", QuantityKind.Volume)
            .Of(mix => mix.DosesPerKit, 0, 100)
            .Of(mix => mix.Baskets, 1, 1000);
    }
}

/// <summary>What recorded times may be: their order is what the audit looks at.</summary>
public sealed class RecordedTimesValidator : AbstractValidator<RecordedTimes>
{
    public RecordedTimesValidator() => RuleFor(times => times).Custom((times, context) =>
    {
        if (times.StillSoftAt >= times.GelAt)
        {
            context.Contradict(nameof(RecordedTimes.StillSoftAt), nameof(RecordedTimes.GelAt), "It was still soft after it had gelled.");
        }
    });
}

/// <summary>What a recorded hardness may be.</summary>
public sealed class RecordedHardnessValidator : AbstractValidator<RecordedHardness>
{
    public RecordedHardnessValidator() => this.Ranges().Of(hardness => hardness.Value, 0, 1000, "1", QuantityKind.Count);
}

/// <summary>What a recorded proof load may be.</summary>
public sealed class RecordedProofValidator : AbstractValidator<RecordedProof>
{
    public RecordedProofValidator()
    {
        this.Ranges()
            .Of(proof => proof.RatedLoad, .001, 100000, "kN", QuantityKind.Force)
            .Of(proof => proof.AskedLoad, .001, 100000, "kN", QuantityKind.Force)
            .Of(proof => proof.Load, .001, 100000, "kN", QuantityKind.Force)
            .Of(proof => proof.Seating, -50, 500, "mm", QuantityKind.Length);
    }
}

/// <summary>What a person of the record may be: words and a day.</summary>
public sealed class RecordedPersonValidator : AbstractValidator<RecordedPerson>;

/// <summary>What looks may come to: their words say it all.</summary>
public sealed class RecordedLooksValidator : AbstractValidator<RecordedLooks>;
