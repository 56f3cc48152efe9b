using CalcService.Api.Units;
using CalcService.Api.Validation;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a socket's numbers may be.</summary>
public sealed class SocketValidator : AbstractValidator<Socket>
{
    public SocketValidator()
    {
        RuleFor(socket => socket.Basket).SetValidator(new BasketValidator());
        this.Ranges()
            .Of(socket => socket.BreakingForce, .1, 100000, "kN", QuantityKind.Force)
            .Of(socket => socket.Mass, .01, 20000, "kg", QuantityKind.Mass)
            .Of(socket => socket.OuterDiameter, 1, 3000, "mm", QuantityKind.Length)
            .Of(socket => socket.OuterAtSmallEnd, 1, 3000, "mm", QuantityKind.Length)
            .Of(socket => socket.OuterAtMouth, 1, 3000, "mm", QuantityKind.Length);
        RuleFor(socket => socket.Material!).SetValidator(new SocketMaterialValidator());
        RuleFor(socket => socket.RopeRange!).SetValidator(new RopeDiametersValidator());
        RuleFor(socket => socket.Temperature!).SetValidator(new TemperatureReadingValidator());
        RuleFor(socket => socket).Custom((socket, context) =>
        {
            void Check(Quantity? own, string ownName, Quantity bore, string boreName)
            {
                if ((own ?? socket.OuterDiameter) is { } outside && outside.Si <= bore.Si)
                {
                    context.Contradict(own is null ? nameof(Socket.OuterDiameter) : ownName, $"{nameof(Socket.Basket)}.{boreName}", "The outside is not larger than the bore.");
                }
            }

            Check(socket.OuterAtSmallEnd, nameof(Socket.OuterAtSmallEnd), socket.Basket.SmallEndDiameter, nameof(Basket.SmallEndDiameter));
            Check(socket.OuterAtMouth, nameof(Socket.OuterAtMouth), socket.Basket.LargeEndDiameter, nameof(Basket.LargeEndDiameter));
        });
    }
}

/// <summary>What a socket may be said to be made of: one of the words.</summary>
public sealed class SocketMaterialValidator : AbstractValidator<SocketMaterial>;

/// <summary>What a range of rope diameters may be.</summary>
public sealed class RopeDiametersValidator : AbstractValidator<RopeDiameters>
{
    public RopeDiametersValidator()
    {
        this.Ranges()
            .Of(range => range.Minimum, 1, 200, "mm", QuantityKind.Length)
            .Of(range => range.Maximum, 1, 200, "mm", QuantityKind.Length);
        RuleFor(range => range).Custom((range, context) =>
        {
            if (range.Minimum.Si > range.Maximum.Si)
            {
                context.Contradict(nameof(RopeDiameters.Minimum), nameof(RopeDiameters.Maximum), "The minimum is above the maximum.");
            }
        });
    }
}

/// <summary>What a reading on steel may be.</summary>
public sealed class TemperatureReadingValidator : AbstractValidator<TemperatureReading>
{
    public TemperatureReadingValidator() => this.Ranges().Of(reading => reading.Value, -60, 150, "degC", QuantityKind.Temperature);
}

/// <summary>What a basket's sizes may be.</summary>
public sealed class BasketValidator : AbstractValidator<Basket>
{
    public BasketValidator()
    {
        this.Ranges()
            .Of(basket => basket.SmallEndDiameter, 1, 400, "mm", QuantityKind.Length)
            .Of(basket => basket.LargeEndDiameter, 1, 1000, "mm", QuantityKind.Length)
            .Of(basket => basket.Length, 1, 3000, "mm", QuantityKind.Length)
            .Of(basket => basket.Tolerance, 0, 50, "mm", QuantityKind.Length);
        RuleFor(basket => basket).Custom((basket, context) =>
        {
            if (basket.SmallEndDiameter.Si >= basket.LargeEndDiameter.Si)
            {
                context.Contradict(nameof(Basket.SmallEndDiameter), nameof(Basket.LargeEndDiameter), "The small end is not smaller than the mouth.");
            }

            if (basket.LargeEndDiameter.Si - basket.SmallEndDiameter.Si > 2 * basket.Length.Si)
            {
                context.Contradict(nameof(Basket.LargeEndDiameter), nameof(Basket.Length), "The cone is wider than 90° included.");
            }

            var smallest = Math.Min(basket.SmallEndDiameter.Si, basket.Length.Si);
            if (basket.Tolerance is { } tolerance && tolerance.Si > smallest / 2)
            {
                context.Contradict(nameof(Basket.Tolerance), nameof(Basket.SmallEndDiameter), "The tolerance is more than half of the smallest size.");
            }
        });
    }
}
