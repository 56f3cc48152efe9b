using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>What a used socket may be.</summary>
public sealed class SocketToReuseValidator : AbstractValidator<SocketToReuse>
{
    public SocketToReuseValidator()
    {
        RuleFor(socket => socket.Material!).SetValidator(new SocketSteelValidator());
        RuleFor(socket => socket.Pin!).SetValidator(new SocketPinValidator());
        this.Ranges()
            .Of(socket => socket.RatedLoad, .001, 50000, "kN", QuantityKind.Force)
            .Of(socket => socket.ProofRating, .001, 100000, "kN", QuantityKind.Force)
            .Of(socket => socket.BreakingForce, .1, 100000, "kN", QuantityKind.Force);
        RuleFor(socket => socket.Nominal).SetValidator(new SocketDrawingValidator());
        RuleFor(socket => socket.Measured!).SetValidator(new SocketMeasurementValidator());
        RuleFor(socket => socket.History!).SetValidator(new SocketPastValidator());
        RuleFor(socket => socket).Custom((socket, context) =>
        {
            if (socket.RatedLoad?.Si > socket.BreakingForce?.Si)
            {
                context.Contradict(nameof(SocketToReuse.RatedLoad), nameof(SocketToReuse.BreakingForce), "The rated load is above the breaking force.");
            }

            SocketSizesCheck.Check(socket, context);
        });
    }
}

/// <summary>What a steel may be.</summary>
public sealed class SocketSteelValidator : AbstractValidator<SocketSteel>
{
    public SocketSteelValidator()
    {
        this.Ranges()
            .Of(steel => steel.YieldStrength, 50, 3000, "MPa", QuantityKind.Stress)
            .Of(steel => steel.TensileStrength, 50, 3000, "MPa", QuantityKind.Stress);
        RuleFor(steel => steel).Custom((steel, context) =>
        {
            if (steel.YieldStrength?.Si > steel.TensileStrength?.Si)
            {
                context.Contradict(nameof(SocketSteel.YieldStrength), nameof(SocketSteel.TensileStrength), "The yield strength is above the tensile strength.");
            }

            if (steel is { Known: Fact.No, YieldStrength: not null })
            {
                context.Contradict(nameof(SocketSteel.Known), nameof(SocketSteel.YieldStrength), "The steel is not known, and yet its strength is given.");
            }
        });
    }
}

/// <summary>What a pin's steel may be.</summary>
public sealed class SocketPinValidator : AbstractValidator<SocketPin>
{
    public SocketPinValidator() => this.Ranges().Of(pin => pin.YieldStrength, 50, 3000, "MPa", QuantityKind.Stress);
}

/// <summary>What a history may be.</summary>
public sealed class SocketPastValidator : AbstractValidator<SocketPast>
{
    public SocketPastValidator() => this.Ranges().Of(past => past.Pours, 0, 1000);
}

/// <summary>What the sizes of a drawing may be.</summary>
public sealed class SocketDrawingValidator : AbstractValidator<SocketDrawing>
{
    public SocketDrawingValidator()
    {
        RuleFor(drawing => drawing.Basket).SetValidator(new BasketValidator());
        this.Ranges()
            .Of(drawing => drawing.OuterDiameter, 1, 2000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.OuterAtSmallEnd, 1, 2000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.OuterAtMouth, 1, 2000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.PinDiameter, 1, 1000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.PinHoleDiameter, 1, 1000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.EarThickness, 1, 1000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.EarWidth, 1, 3000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.EarEndDistance, 1, 3000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.EarGap, 1, 3000, "mm", QuantityKind.Length)
            .Of(drawing => drawing.Tolerance, 0, 5, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing).Custom((drawing, context) => OneOutside.Check(drawing.OuterDiameter, drawing.OuterAtSmallEnd, drawing.OuterAtMouth, context));
    }
}

/// <summary>What measured sizes may be.</summary>
public sealed class SocketMeasurementValidator : AbstractValidator<SocketMeasurement>
{
    public SocketMeasurementValidator()
    {
        RuleForEach(measured => measured.Stations).SetValidator(new BasketStationValidator());
        this.Ranges()
            .Of(measured => measured.OuterDiameter, .1, 2000, "mm", QuantityKind.Length)
            .Of(measured => measured.OuterAtSmallEnd, .1, 2000, "mm", QuantityKind.Length)
            .Of(measured => measured.OuterAtMouth, .1, 2000, "mm", QuantityKind.Length)
            .Of(measured => measured.PinDiameter, .1, 1000, "mm", QuantityKind.Length)
            .Of(measured => measured.EarThickness, .1, 1000, "mm", QuantityKind.Length)
            .Of(measured => measured.EarWidth, .1, 3000, "mm", QuantityKind.Length)
            .Of(measured => measured.EarEndDistance, .1, 3000, "mm", QuantityKind.Length)
            .Of(measured => measured.EarGap, .1, 3000, "mm", QuantityKind.Length)
            .Of(measured => measured.PitDepth, 0, 100, "mm", QuantityKind.Length)
            .Of(measured => measured.Uncertainty, 0, 5, "mm", QuantityKind.Length);
        RuleForEach(measured => measured.PinHoleDiameters).Between(.1, 1000, "mm", QuantityKind.Length);
        RuleFor(measured => measured).Custom((measured, context) => OneOutside.Check(measured.OuterDiameter, measured.OuterAtSmallEnd, measured.OuterAtMouth, context));
    }
}

/// <summary>What a section of the bore may be.</summary>
public sealed class BasketStationValidator : AbstractValidator<BasketStation>
{
    public BasketStationValidator()
    {
        this.Ranges().Of(station => station.FromSmallEnd, 0, 3000, "mm", QuantityKind.Length);
        RuleForEach(station => station.Diameters).Between(.1, 1000, "mm", QuantityKind.Length);
    }
}
