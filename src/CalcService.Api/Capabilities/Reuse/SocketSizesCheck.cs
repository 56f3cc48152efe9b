using CalcService.Api.Units;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>
/// Sizes that can't belong together: a drawing of a socket that couldn't be made, sections that aren't on it. How far a socket was
/// found off its drawing is for the findings, however far it is.
/// </summary>
internal static class SocketSizesCheck
{
    private const string Drawn = nameof(SocketToReuse.Nominal);
    private const string Found = nameof(SocketToReuse.Measured);

    public static void Check(SocketToReuse socket, ValidationContext<SocketToReuse> context)
    {
        var drawn = socket.Nominal;
        CheckEars(drawn, context);
        Wall(drawn.OuterDiameter, nameof(drawn.OuterDiameter), drawn.Basket.LargeEndDiameter, context);
        Wall(drawn.OuterAtSmallEnd, nameof(drawn.OuterAtSmallEnd), drawn.Basket.SmallEndDiameter, context);
        Wall(drawn.OuterAtMouth, nameof(drawn.OuterAtMouth), drawn.Basket.LargeEndDiameter, context);
        if (socket.Measured is { } found)
        {
            CheckStations(drawn, found, context);
        }
    }

    private static void CheckEars(SocketDrawing drawn, ValidationContext<SocketToReuse> context)
    {
        void Less(double? inner, string innerName, double? outer, string outerName, string message)
        {
            if (inner >= outer)
            {
                context.Contradict($"{Drawn}.{innerName}", $"{Drawn}.{outerName}", message);
            }
        }

        var hole = drawn.PinHoleDiameter?.Si;
        Less(drawn.PinDiameter?.Si, nameof(drawn.PinDiameter), hole + 1e-12, nameof(drawn.PinHoleDiameter),
            "The pin does not go into its hole.");
        Less(hole, nameof(drawn.PinHoleDiameter), drawn.EarWidth?.Si, nameof(drawn.EarWidth), "The hole is as wide as the ear.");
        Less(hole / 2, nameof(drawn.PinHoleDiameter), drawn.EarEndDistance?.Si, nameof(drawn.EarEndDistance),
            "The hole reaches the end of the ear.");
    }

    private static void Wall(Quantity? outer, string name, Quantity bore, ValidationContext<SocketToReuse> context)
    {
        if (outer is not null && outer.Si <= bore.Si)
        {
            context.Contradict($"{Drawn}.{name}", $"{Drawn}.Basket", "The outside is not larger than the bore: the socket has no wall.");
        }
    }

    private static void CheckStations(SocketDrawing drawn, SocketMeasurement found, ValidationContext<SocketToReuse> context)
    {
        var stations = found.Stations ?? [];
        for (var i = 0; i < stations.Count; i++)
        {
            var (name, at) = ($"{Found}.Stations[{i}]", stations[i].FromSmallEnd.Si);
            if (at > drawn.Basket.Length.Si)
            {
                context.Contradict($"{name}.FromSmallEnd", $"{Drawn}.Basket.Length", "The section lies beyond the mouth.");
                continue;
            }

            for (var other = 0; other < i; other++)
            {
                if (stations[other].FromSmallEnd.Si == at)
                {
                    context.Contradict($"{Found}.Stations[{other}].FromSmallEnd", $"{name}.FromSmallEnd",
                        "Two sections at the same place: put all diameters into one.");
                }
            }
        }
    }
}
