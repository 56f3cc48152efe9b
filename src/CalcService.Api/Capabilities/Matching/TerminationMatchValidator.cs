using CalcService.Api.Contract;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>What a socket's numbers may be.</summary>
public sealed class SocketToMatchValidator : Contradictions<SocketToMatch>
{
    /// <summary>A wall thinner than this share of the bore is a measuring error.</summary>
    private const double ThinnestWallRatio = 1.01;

    protected override void Check(SocketToMatch socket, ValidationContext<SocketToMatch> context)
    {
        var (outer, small, mouth) = (nameof(SocketToMatch.OuterDiameter), nameof(SocketToMatch.OuterAtSmallEnd),
            nameof(SocketToMatch.OuterAtMouth));
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
            context.Contradict(nameof(SocketToMatch.RatedLoad), nameof(SocketToMatch.BreakingForce),
                "The rated load is above the breaking force.");
        }
    }
}

/// <summary>What service may be.</summary>
public sealed class MatchedServiceValidator : Contradictions<MatchedService>
{
    protected override void Check(MatchedService service, ValidationContext<MatchedService> context)
    {
        if (service.Lowest?.Si > service.Highest?.Si)
        {
            context.Contradict(nameof(MatchedService.Lowest), nameof(MatchedService.Highest), "The lowest is above the highest.");
        }
    }
}
