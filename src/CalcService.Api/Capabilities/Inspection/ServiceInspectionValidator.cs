using CalcService.Api.Catalogues;
using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using FluentValidation;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>What the request of an inspection may be. What is wrong with the end is a finding, not an error.</summary>
public sealed class ServiceInspectionValidator : AbstractValidator<ServiceInspectionRequest>
{
    public ServiceInspectionValidator(CompoundCatalogue compounds)
    {
        RuleFor(request => request.RuleSet).Must(set => set is null || InspectionRules.RuleSets.Contains(set))
            .WithErrorCode("unknown-rule-set").WithMessage($"No such rule set; known: {string.Join(", ", InspectionRules.RuleSets)}.");
        RuleFor(request => request.Compound!).SetValidator(new CompoundValidator(compounds));
        RuleFor(request => request.Rope).SetValidator(new RopeValidator());
        RuleFor(request => request.Inspection!).SetValidator(new InspectedEndValidator());
        RuleFor(request => request.Attachment!).SetValidator(new InspectedAttachmentValidator());
        RuleFor(request => request).Custom((request, context) =>
        {
            if (request.Inspection?.SocketedOn > request.AssessedOn)
            {
                context.Contradict("Inspection.SocketedOn", nameof(ServiceInspectionRequest.AssessedOn), "The end is inspected before it was made.");
            }
        });
    }
}

/// <summary>What the numbers of an inspection may be.</summary>
public sealed class InspectedEndValidator : AbstractValidator<InspectedEnd>
{
    public InspectedEndValidator()
    {
        RuleForEach(end => end.BrokenWires).SetValidator(new InspectedWiresValidator());
        this.Ranges()
            .Of(end => end.HighestTemperature, -100, 1000, "degC", QuantityKind.Temperature)
            .Of(end => end.BaselineDiameter, 1, 200, "mm", QuantityKind.Length)
            .Of(end => end.StrengthLoss, 0, 100, "%", QuantityKind.Fraction)
            .Of(end => end.LengthLeft, 0, 10000, "m", QuantityKind.Length)
            .Of(end => end.DrumTurnsLeft, 0, 10000, "1", QuantityKind.Count)
            .Of(end => end.DrumDiameter, 10, 20000, "mm", QuantityKind.Length);
        RuleForEach(end => end.Chemicals).NotEmpty().WithErrorCode("required").WithMessage("The substance has no name.");
    }
}

/// <summary>What broken wires may be.</summary>
public sealed class InspectedWiresValidator : AbstractValidator<InspectedWires>
{
    public InspectedWiresValidator()
    {
        this.Ranges()
            .Of(wires => wires.FromMouth, 0, 10000, "m", QuantityKind.Length)
            .Of(wires => wires.Count, 1, 10000)
            .Of(wires => wires.InOneStrand, 1, 10000);
        RuleFor(wires => wires).Custom((wires, context) =>
        {
            if (wires.InOneStrand > wires.Count)
            {
                context.Contradict(nameof(InspectedWires.InOneStrand), nameof(InspectedWires.Count), "More wires are broken in one strand than in all.");
            }
        });
    }
}

/// <summary>What evidence may be.</summary>
public sealed class InspectedAttachmentValidator : AbstractValidator<InspectedAttachment>
{
    public InspectedAttachmentValidator() => this.Ranges().Of(attachment => attachment.Efficiency, 1, 100, "%", QuantityKind.Fraction);
}
