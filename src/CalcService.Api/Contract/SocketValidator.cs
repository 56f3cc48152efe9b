using CalcService.Api.Units;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a socket's numbers may be.</summary>
public sealed class SocketValidator : Contradictions<Socket>
{
    protected override void Check(Socket socket, ValidationContext<Socket> context)
    {
        void Check(Quantity? own, string ownName, Quantity bore, string boreName)
        {
            if ((own ?? socket.OuterDiameter) is { } outside && outside.Si <= bore.Si)
            {
                context.Contradict(own is null ? nameof(Socket.OuterDiameter) : ownName, $"{nameof(Socket.Basket)}.{boreName}",
                    "The outside is not larger than the bore.");
            }
        }

        Check(socket.OuterAtSmallEnd, nameof(Socket.OuterAtSmallEnd), socket.Basket.SmallEndDiameter, nameof(Basket.SmallEndDiameter));
        Check(socket.OuterAtMouth, nameof(Socket.OuterAtMouth), socket.Basket.LargeEndDiameter, nameof(Basket.LargeEndDiameter));
    }
}

/// <summary>What a range of rope diameters may be.</summary>
public sealed class RopeDiametersValidator : Contradictions<RopeDiameters>
{
    protected override void Check(RopeDiameters range, ValidationContext<RopeDiameters> context)
    {
        if (range.Minimum.Si > range.Maximum.Si)
        {
            context.Contradict(nameof(RopeDiameters.Minimum), nameof(RopeDiameters.Maximum), "The minimum is above the maximum.");
        }
    }
}

/// <summary>What a basket's sizes may be.</summary>
public sealed class BasketValidator : Contradictions<Basket>
{
    protected override void Check(Basket basket, ValidationContext<Basket> context)
    {
        if (basket.SmallEndDiameter.Si >= basket.LargeEndDiameter.Si)
        {
            context.Contradict(nameof(Basket.SmallEndDiameter), nameof(Basket.LargeEndDiameter),
                "The small end is not smaller than the mouth.");
        }

        if (basket.LargeEndDiameter.Si - basket.SmallEndDiameter.Si > 2 * basket.Length.Si)
        {
            context.Contradict(nameof(Basket.LargeEndDiameter), nameof(Basket.Length), "The cone is wider than 90° included.");
        }

        var smallest = Math.Min(basket.SmallEndDiameter.Si, basket.Length.Si);
        if (basket.Tolerance is { } tolerance && tolerance.Si > smallest / 2)
        {
            context.Contradict(nameof(Basket.Tolerance), nameof(Basket.SmallEndDiameter),
                "The tolerance is more than half of the smallest size.");
        }
    }
}
