using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>What the request of an assessment may be. What speaks against the socket is a finding, not an error.</summary>
public sealed class ReuseAssessmentValidator : AbstractValidator<ReuseAssessmentRequest>
{
    public ReuseAssessmentValidator()
    {
        RuleFor(request => request.RuleSet).Must(name => name is null or PouringRules.General)
            .WithErrorCode("unknown-rule-set").WithMessage("No such rule set for used sockets; known: general.");
        RuleFor(request => request.Socket).SetValidator(new SocketToReuseValidator());
        RuleFor(request => request.Limits!).SetValidator(new ReuseLimitsValidator());
        RuleFor(request => request.ConeRemoval!).SetValidator(new ReuseConeRemovalValidator());
        RuleFor(request => request.Inspection!).SetValidator(new ReuseInspectionValidator());
        RuleFor(request => request.Intended!).SetValidator(new ReuseIntendedValidator());
        RuleFor(request => request).Custom((request, context) =>
        {
            if (request.Inspection?.InspectedOn > request.AssessedOn)
            {
                context.Contradict("Inspection.InspectedOn", nameof(ReuseAssessmentRequest.AssessedOn), "The inspection is after the assessment.");
            }

            if (request is { Inspection.Visual.Corrosion: CorrosionState.Pitted, Socket.Measured.PitDepth.Si: 0 })
            {
                context.Contradict("Inspection.Visual.Corrosion", "Socket.Measured.PitDepth", "The socket is pitted, and its deepest pit has no depth.");
            }
            if (request is { ConeRemoval: { Method: RemovalMethod.Melted, MaximumTemperature.Si: var warmest } }
                && warmest < MeltsAtK(request.Socket.History?.LastMedium))
            {
                context.Contradict("ConeRemoval.Method", "ConeRemoval.MaximumTemperature",
                    "The cone was melted out, and yet no metal of poured sockets melts so cold.");
            }
        });
    }

    /// <summary>
    /// Zinc freezes at 419.5 °C (a fixed point of ITS-90) and its eutectic with aluminium at 381 °C, of white metals that of tin and lead
    /// at 183 °C; all from memory.
    /// </summary>
    private static double MeltsAtK(SocketMedium? medium) => (medium == SocketMedium.Zinc ? 381 : 183) + 273.15;
}

/// <summary>What the cone's removal may be.</summary>
public sealed class ReuseConeRemovalValidator : AbstractValidator<ReuseConeRemoval>
{
    /// <summary>Nobody calls steel cold that burns the hand.</summary>
    private const double ColdUpToK = 60 + 273.15;

    public ReuseConeRemovalValidator()
    {
        this.Ranges().Of(removal => removal.MaximumTemperature, -60, 1500, "degC", QuantityKind.Temperature);
        RuleFor(removal => removal).Custom((removal, context) =>
        {
            if (removal.Method == RemovalMethod.PressedCold && removal.MaximumTemperature?.Si > ColdUpToK)
            {
                context.Contradict(nameof(ReuseConeRemoval.Method), nameof(ReuseConeRemoval.MaximumTemperature), "Pressed out cold, and yet warmer than 60 °C.");
            }
        });
    }
}

/// <summary>What limits of wear may be.</summary>
public sealed class ReuseLimitsValidator : AbstractValidator<ReuseLimits>
{
    public ReuseLimitsValidator()
    {
        this.Ranges()
            .Of(limits => limits.BoreGrowth, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.Ovality, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.PinHoleGrowth, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.EarSpread, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.PitDepth, 0, 50, "mm", QuantityKind.Length)
            .Of(limits => limits.TaperLoss, 0, 99, "%", QuantityKind.Fraction)
            .Of(limits => limits.PinWear, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.EarThicknessLoss, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.EarWidthLoss, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.EarEndDistanceLoss, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.OutsideLoss, 0, 50, "%", QuantityKind.Fraction)
            .Of(limits => limits.RemovalTemperature, 0, 1000, "degC", QuantityKind.Temperature)
            .Of(limits => limits.DesignFactor, 1, 50, "1", QuantityKind.Count);
    }
}

/// <summary>What an intended use may be.</summary>
public sealed class ReuseIntendedValidator : AbstractValidator<ReuseIntended>
{
    public ReuseIntendedValidator()
    {
        RuleFor(intended => intended.Rope!).SetValidator(new RopeValidator());
        this.Ranges()
            .Of(intended => intended.RatedLoad, .001, 50000, "kN", QuantityKind.Force)
            .Of(intended => intended.ProofLoad, .001, 100000, "kN", QuantityKind.Force);
        RuleFor(intended => intended).Custom((intended, context) =>
        {
            if (intended.ProofLoad?.Si < intended.RatedLoad?.Si)
            {
                context.Contradict(nameof(ReuseIntended.ProofLoad), nameof(ReuseIntended.RatedLoad), "The proof load is below the rated load.");
            }
        });
    }
}

/// <summary>What an inspection may be.</summary>
public sealed class ReuseInspectionValidator : AbstractValidator<ReuseInspection>
{
    public ReuseInspectionValidator()
    {
        RuleForEach(inspection => inspection.Indications).SetValidator(new FoundIndicationValidator());
        RuleFor(inspection => inspection.Visual!).SetValidator(new VisualInspectionValidator());
        RuleFor(inspection => inspection).Custom((inspection, context) =>
        {
            if (inspection.SurfaceMethod is SurfaceMethod.None && inspection.Indications?.Count > 0)
            {
                context.Contradict(nameof(ReuseInspection.SurfaceMethod), nameof(ReuseInspection.Indications), "The surface was not searched, and yet the search showed something.");
            }
        });
    }
}

/// <summary>What an indication may be.</summary>
public sealed class FoundIndicationValidator : AbstractValidator<FoundIndication>
{
    public FoundIndicationValidator() => this.Ranges().Of(indication => indication.Length, 0, 3000, "mm", QuantityKind.Length);
}

/// <summary>What the look by eye may be: its words say it all.</summary>
public sealed class VisualInspectionValidator : AbstractValidator<VisualInspection>;
