using CalcService.Api.Contract;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>What a used socket may be.</summary>
public sealed class SocketToReuseValidator : AbstractValidator<SocketToReuse>
{
    public SocketToReuseValidator()
    {
        RuleFor(socket => socket.Material!).SetValidator(new SocketSteelValidator()).When(socket => socket.Material is not null);
        RuleFor(socket => socket.Pin!).SetValidator(new SocketPinValidator()).When(socket => socket.Pin is not null);
        RuleFor(socket => socket.RatedLoad).Between(.001, 50000, "kN", QuantityKind.Force);
        RuleFor(socket => socket.ProofRating).Between(.001, 100000, "kN", QuantityKind.Force);
        RuleFor(socket => socket.BreakingForce).Between(.1, 100000, "kN", QuantityKind.Force);
        RuleFor(socket => socket.Nominal).SetValidator(new SocketDrawingValidator());
        RuleFor(socket => socket.Measured!).SetValidator(new SocketMeasurementValidator()).When(socket => socket.Measured is not null);
        RuleFor(socket => socket.History!).SetValidator(new SocketPastValidator()).When(socket => socket.History is not null);
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
        RuleFor(steel => steel.YieldStrength).Between(50, 3000, "MPa", QuantityKind.Stress);
        RuleFor(steel => steel.TensileStrength).Between(50, 3000, "MPa", QuantityKind.Stress);
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
    public SocketPinValidator() => RuleFor(pin => pin.YieldStrength).Between(50, 3000, "MPa", QuantityKind.Stress);
}

/// <summary>What a history may be.</summary>
public sealed class SocketPastValidator : AbstractValidator<SocketPast>
{
    public SocketPastValidator() => RuleFor(past => past.Pours).Between(0, 1000);
}

/// <summary>What the sizes of a drawing may be.</summary>
public sealed class SocketDrawingValidator : AbstractValidator<SocketDrawing>
{
    public SocketDrawingValidator()
    {
        RuleFor(drawing => drawing.Basket).SetValidator(new BasketValidator());
        RuleFor(drawing => drawing.OuterDiameter).Between(1, 2000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.OuterAtSmallEnd).Between(1, 2000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.OuterAtMouth).Between(1, 2000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.PinDiameter).Between(1, 1000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.PinHoleDiameter).Between(1, 1000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.EarThickness).Between(1, 1000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.EarWidth).Between(1, 3000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.EarEndDistance).Between(1, 3000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing.EarGap).Between(1, 3000, "mm", QuantityKind.Length);
        RuleFor(drawing => drawing).Custom((drawing, context) => OneOutside.Check(drawing.OuterDiameter, drawing.OuterAtSmallEnd, drawing.OuterAtMouth, context));
    }
}

/// <summary>What measured sizes may be.</summary>
public sealed class SocketMeasurementValidator : AbstractValidator<SocketMeasurement>
{
    public SocketMeasurementValidator()
    {
        RuleForEach(measured => measured.Stations).SetValidator(new BasketStationValidator());
        RuleFor(measured => measured.OuterDiameter).Between(1, 2000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.OuterAtSmallEnd).Between(1, 2000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.OuterAtMouth).Between(1, 2000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.PinDiameter).Between(1, 1000, "mm", QuantityKind.Length);
        RuleForEach(measured => measured.PinHoleDiameters).Between(1, 1000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.EarThickness).Between(1, 1000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.EarWidth).Between(1, 3000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.EarEndDistance).Between(1, 3000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.EarGap).Between(1, 3000, "mm", QuantityKind.Length);
        RuleFor(measured => measured.PitDepth).Between(0, 100, "mm", QuantityKind.Length);
        RuleFor(measured => measured).Custom((measured, context) => OneOutside.Check(measured.OuterDiameter, measured.OuterAtSmallEnd, measured.OuterAtMouth, context));
    }
}

/// <summary>What a section of the bore may be.</summary>
public sealed class BasketStationValidator : AbstractValidator<BasketStation>
{
    public BasketStationValidator()
    {
        RuleFor(station => station.FromSmallEnd).Between(0, 3000, "mm", QuantityKind.Length);
        RuleForEach(station => station.Diameters).Between(1, 1000, "mm", QuantityKind.Length);
    }
}
