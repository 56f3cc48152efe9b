using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>What the request of a match may be. Cautions of the trade are findings, not errors.</summary>
public sealed class TerminationMatchValidator : AbstractValidator<TerminationMatchRequest>
{
    public TerminationMatchValidator(CompoundCatalogue compounds)
    {
        RuleFor(request => request.Compound).SetValidator(new CompoundValidator(compounds));
        RuleFor(request => request.Rope).SetValidator(new RopeValidator());
        RuleFor(request => request.Socket).SetValidator(new SocketToMatchValidator());
        RuleFor(request => request.Duty!).SetValidator(new MatchedDutyValidator());
        RuleFor(request => request.Service!).SetValidator(new MatchedServiceValidator());
        RuleFor(request => request.Preparation!).SetValidator(new MatchedPreparationValidator());
        RuleFor(request => request.Cone!).SetValidator(new MatchedConeValidator());
    }
}

/// <summary>What a socket's numbers may be.</summary>
public sealed class SocketToMatchValidator : AbstractValidator<SocketToMatch>
{
    /// <summary>A wall thinner than this share of the bore is a measuring error.</summary>
    private const double ThinnestWallRatio = 1.01;

    public SocketToMatchValidator()
    {
        RuleFor(socket => socket.Basket).SetValidator(new BasketValidator());
        this.Ranges()
            .Of(socket => socket.OuterDiameter, 1, 2000, "mm", QuantityKind.Length)
            .Of(socket => socket.OuterAtSmallEnd, 1, 2000, "mm", QuantityKind.Length)
            .Of(socket => socket.OuterAtMouth, 1, 2000, "mm", QuantityKind.Length)
            .Of(socket => socket.BreakingForce, .1, 100000, "kN", QuantityKind.Force)
            .Of(socket => socket.RatedLoad, .1, 100000, "kN", QuantityKind.Force)
            .Of(socket => socket.ProofRating, .1, 100000, "kN", QuantityKind.Force);
        RuleFor(socket => socket.Material!).SetValidator(new SocketMaterialValidator());
        RuleFor(socket => socket.RopeRange!).SetValidator(new RopeDiametersValidator());
        RuleFor(socket => socket).Custom((socket, context) =>
        {
            var (outer, small, mouth) = (nameof(SocketToMatch.OuterDiameter), nameof(SocketToMatch.OuterAtSmallEnd), nameof(SocketToMatch.OuterAtMouth));
            OneOutside.Check(socket.OuterDiameter, socket.OuterAtSmallEnd, socket.OuterAtMouth, context);
            void CheckWall(string member, double? outside, string bore, double inside)
            {
                if (outside < inside * ThinnestWallRatio)
                {
                    context.Contradict(member, $"Basket.{bore}", "The outside is not larger than the bore: the socket has no wall.");
                }
            }

            CheckWall(outer, socket.OuterDiameter?.Si, nameof(Basket.LargeEndDiameter), socket.Basket.LargeEndDiameter.Si);
            CheckWall(small, socket.OuterAtSmallEnd?.Si, nameof(Basket.SmallEndDiameter), socket.Basket.SmallEndDiameter.Si);
            CheckWall(mouth, socket.OuterAtMouth?.Si, nameof(Basket.LargeEndDiameter), socket.Basket.LargeEndDiameter.Si);
            if (socket.RatedLoad?.Si > socket.BreakingForce?.Si)
            {
                context.Contradict(nameof(SocketToMatch.RatedLoad), nameof(SocketToMatch.BreakingForce), "The rated load is above the breaking force.");
            }
        });
    }
}

/// <summary>What the numbers of a duty may be.</summary>
public sealed class MatchedDutyValidator : AbstractValidator<MatchedDuty>
{
    public MatchedDutyValidator()
    {
        this.Ranges()
            .Of(duty => duty.Load, .001, 50000, "kN", QuantityKind.Force)
            .Of(duty => duty.DesignFactor, 1, 50, "1", QuantityKind.Count)
            .Of(duty => duty.ProofLoad, .001, 50000, "kN", QuantityKind.Force)
            .Of(duty => duty.Efficiency, 1, 100, "%", QuantityKind.Fraction);
    }
}

/// <summary>What service may be.</summary>
public sealed class MatchedServiceValidator : AbstractValidator<MatchedService>
{
    public MatchedServiceValidator()
    {
        this.Ranges()
            .Of(service => service.Lowest, -100, 400, "degC", QuantityKind.Temperature)
            .Of(service => service.Highest, -100, 400, "degC", QuantityKind.Temperature);
        RuleForEach(service => service.Chemicals).NotEmpty().WithErrorCode("required").WithMessage("The substance has no name.");
        RuleFor(service => service).Custom((service, context) =>
        {
            if (service.Lowest?.Si > service.Highest?.Si)
            {
                context.Contradict(nameof(MatchedService.Lowest), nameof(MatchedService.Highest), "The lowest is above the highest.");
            }
        });
    }
}

/// <summary>What a preparation may be: its words say it all.</summary>
public sealed class MatchedPreparationValidator : AbstractValidator<MatchedPreparation>;

/// <summary>What the numbers of the cone may be.</summary>
public sealed class MatchedConeValidator : AbstractValidator<MatchedCone>
{
    public MatchedConeValidator()
    {
        this.Ranges()
            .Of(cone => cone.Friction, 0, 1, "1", QuantityKind.Count)
            .Of(cone => cone.Cooling, 0, 300, "K", QuantityKind.TemperatureDifference);
    }
}
