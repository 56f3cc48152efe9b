using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>What the request of an evaluation may be. What is wrong with test or end is a finding, not an error.</summary>
public sealed class ProofLoadEvaluationValidator : AbstractValidator<ProofLoadEvaluationRequest>
{
    private static readonly string[] RuleSets =
        [.. Editions.Known.Current.Matching.Duties.Select(duty => duty.DesignFactor!.RuleSet), PouringRules.General];

    public ProofLoadEvaluationValidator(CompoundCatalogue compounds)
    {
        RuleFor(request => request.RuleSet).Must(set => set is null || RuleSets.Contains(set))
            .WithErrorCode("unknown-rule-set").WithMessage($"No such rule set; known: {string.Join(", ", RuleSets)}.");
        RuleFor(request => request.Compound).SetValidator(new CompoundValidator(compounds));
        RuleFor(request => request.Rope).SetValidator(new RopeValidator());
        RuleFor(request => request.Socket).SetValidator(new ProofedSocketValidator());
        RuleFor(request => request.Test!).SetValidator(new ProofTestValidator());
        RuleFor(request => request.Measured!).SetValidator(new ProofMeasuredValidator());
    }
}

/// <summary>What a socket's numbers may be.</summary>
public sealed class ProofedSocketValidator : AbstractValidator<ProofedSocket>
{
    public ProofedSocketValidator()
    {
        RuleFor(socket => socket.Basket).SetValidator(new BasketValidator());
        this.Ranges()
            .Of(socket => socket.OuterAtSmallEnd, 1, 2000, "mm", QuantityKind.Length)
            .Of(socket => socket.OuterAtMouth, 1, 2000, "mm", QuantityKind.Length)
            .Of(socket => socket.ProofRating, .1, 100000, "kN", QuantityKind.Force);
        RuleFor(socket => socket).Custom((socket, context) =>
        {
            if (socket.OuterAtSmallEnd?.Si <= socket.Basket.SmallEndDiameter.Si)
            {
                context.Contradict(nameof(ProofedSocket.OuterAtSmallEnd), "Basket.SmallEndDiameter", "The outside is not larger than the bore: the socket has no wall.");
            }

            if (socket.OuterAtMouth?.Si <= socket.Basket.LargeEndDiameter.Si)
            {
                context.Contradict(nameof(ProofedSocket.OuterAtMouth), "Basket.LargeEndDiameter", "The outside is not larger than the bore: the socket has no wall.");
            }
        });
    }
}

/// <summary>What the numbers of a test may be.</summary>
public sealed class ProofTestValidator : AbstractValidator<ProofTest>
{
    public ProofTestValidator()
    {
        this.Ranges()
            .Of(test => test.RatedLoad, .001, 50000, "kN", QuantityKind.Force)
            .Of(test => test.ProofLoad, .001, 100000, "kN", QuantityKind.Force)
            .Of(test => test.Friction, .01, 1, "1", QuantityKind.Count);
        RuleFor(test => test.Hardness!).SetValidator(new ProofHardnessValidator());
    }
}

/// <summary>What a hardness may be.</summary>
public sealed class ProofHardnessValidator : AbstractValidator<ProofHardness>
{
    public ProofHardnessValidator() => this.Ranges().Of(hardness => hardness.Value, 0, 1000, "1", QuantityKind.Count);
}

/// <summary>What the readings of a test may be.</summary>
public sealed class ProofMeasuredValidator : AbstractValidator<ProofMeasured>
{
    public ProofMeasuredValidator()
    {
        RuleFor(measured => measured.Steps).Must(steps => steps is null or { Count: > 0 }).WithErrorCode("required").WithMessage("A test has at least one load.");
        RuleForEach(measured => measured.Steps).SetValidator(new ProofReadingValidator());
    }
}

/// <summary>What one reading may be.</summary>
public sealed class ProofReadingValidator : AbstractValidator<ProofReading>
{
    public ProofReadingValidator()
    {
        this.Ranges()
            .Of(reading => reading.Load, .001, 100000, "kN", QuantityKind.Force)
            .Of(reading => reading.Seating, -50, 500, "mm", QuantityKind.Length);
    }
}
