using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Api.Validation;
using FluentValidation;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>Sizes of a used socket that can't belong together: without metal between two surfaces there is no stress to compute.</summary>
internal static class SocketSizesCheck
{
    /// <summary>A size further off its drawing than this is of another socket, or a slip of the pen.</summary>
    private const double FarOff = .25;

    private const string Drawn = nameof(SocketToReuse.Nominal);
    private const string Found = nameof(SocketToReuse.Measured);

    public static void Check(SocketToReuse socket, ValidationContext<SocketToReuse> context)
    {
        var (drawn, found) = (socket.Nominal, socket.Measured);
        CheckEars(drawn, found, context);
        CheckWall(drawn, found, context);
        if (found is null)
        {
            return;
        }

        void Near(Quantity? now, string nowName, Quantity? made, string madeName)
        {
            if (now is not null && made is not null && Math.Abs(now.Si - made.Si) > FarOff * made.Si)
            {
                context.Contradict($"{Found}.{nowName}", $"{Drawn}.{madeName}", "The measured size is more than a quarter away from the drawing's.");
            }
        }

        Near(found.PinDiameter, nameof(found.PinDiameter), drawn.PinDiameter, nameof(drawn.PinDiameter));
        Near(found.EarThickness, nameof(found.EarThickness), drawn.EarThickness, nameof(drawn.EarThickness));
        Near(found.EarWidth, nameof(found.EarWidth), drawn.EarWidth, nameof(drawn.EarWidth));
        Near(found.EarEndDistance, nameof(found.EarEndDistance), drawn.EarEndDistance, nameof(drawn.EarEndDistance));
        Near(found.EarGap, nameof(found.EarGap), drawn.EarGap, nameof(drawn.EarGap));
        for (var i = 0; i < (found.PinHoleDiameters?.Count ?? 0); i++)
        {
            Near(found.PinHoleDiameters![i], $"{nameof(found.PinHoleDiameters)}[{i}]", drawn.PinHoleDiameter, nameof(drawn.PinHoleDiameter));
        }

        CheckStations(drawn, found, context);
    }

    private static void CheckEars(SocketDrawing drawn, SocketMeasurement? found, ValidationContext<SocketToReuse> context)
    {
        void Less(double? inner, string innerName, double? outer, string outerName, string message)
        {
            if (inner >= outer)
            {
                context.Contradict(innerName, outerName, message);
            }
        }

        string Of(string owner, string member) => $"{owner}.{member}";
        var holes = found?.PinHoleDiameters ?? [];
        var (hole, grown) = (drawn.PinHoleDiameter?.Si, holes.Count > 0 ? holes.Max(one => one.Si) : (double?)null);
        Less(drawn.PinDiameter?.Si, Of(Drawn, nameof(drawn.PinDiameter)), hole + 1e-12, Of(Drawn, nameof(drawn.PinHoleDiameter)), "The pin does not go into its hole.");
        Less(hole, Of(Drawn, nameof(drawn.PinHoleDiameter)), drawn.EarWidth?.Si, Of(Drawn, nameof(drawn.EarWidth)), "The hole is as wide as the ear.");
        Less(hole / 2, Of(Drawn, nameof(drawn.PinHoleDiameter)), drawn.EarEndDistance?.Si, Of(Drawn, nameof(drawn.EarEndDistance)), "The hole reaches the end of the ear.");
        Less(grown, Of(Found, nameof(found.PinHoleDiameters)), found?.EarWidth?.Si ?? drawn.EarWidth?.Si, Of(Drawn, nameof(drawn.EarWidth)), "The worn hole is as wide as the ear.");
        Less(grown - (hole / 2), Of(Found, nameof(found.PinHoleDiameters)), found?.EarEndDistance?.Si ?? drawn.EarEndDistance?.Si, Of(Drawn, nameof(drawn.EarEndDistance)), "The worn hole reaches the end of the ear.");
        Less(2 * found?.PitDepth?.Si, Of(Found, nameof(found.PitDepth)), found?.EarThickness?.Si, Of(Found, nameof(found.EarThickness)), "Pits go through the ear.");
        Less(2 * found?.PitDepth?.Si, Of(Found, nameof(found.PitDepth)), drawn.EarThickness?.Si, Of(Drawn, nameof(drawn.EarThickness)), "Pits go through the ear.");
    }

    private static void CheckWall(SocketDrawing drawn, SocketMeasurement? found, ValidationContext<SocketToReuse> context)
    {
        // As far as the bore may have grown where it was not measured.
        var widest = (found?.Stations ?? []).SelectMany(station => station.Diameters.Select(one => (station, one)))
            .Select(pair => pair.one.Si / BoreAt(drawn, pair.station.FromSmallEnd.Si)).Append(1).Max();
        void Wall(Quantity? outer, string name, double bore, double pits)
        {
            if (outer is not null && outer.Si - pits <= bore)
            {
                context.Contradict(name, $"{Drawn}.Basket", "The outside is not larger than the bore: the socket has no wall.");
            }
        }

        var (small, mouth) = (drawn.Basket.SmallEndDiameter.Si, drawn.Basket.LargeEndDiameter.Si);
        var pits = 2 * (found?.PitDepth?.Si ?? 0);
        Wall(drawn.OuterDiameter, $"{Drawn}.OuterDiameter", mouth * widest, pits);
        Wall(drawn.OuterAtSmallEnd, $"{Drawn}.OuterAtSmallEnd", small * widest, pits);
        Wall(drawn.OuterAtMouth, $"{Drawn}.OuterAtMouth", mouth * widest, pits);
        Wall(found?.OuterDiameter, $"{Found}.OuterDiameter", mouth * widest, pits);
        Wall(found?.OuterAtSmallEnd, $"{Found}.OuterAtSmallEnd", small * widest, pits);
        Wall(found?.OuterAtMouth, $"{Found}.OuterAtMouth", mouth * widest, pits);
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
                    context.Contradict($"{Found}.Stations[{other}].FromSmallEnd", $"{name}.FromSmallEnd", "Two sections at the same place: put all diameters into one.");
                }
            }

            var bore = BoreAt(drawn, at);
            for (var d = 0; d < stations[i].Diameters.Count; d++)
            {
                if (Math.Abs(stations[i].Diameters[d].Si - bore) > FarOff * bore)
                {
                    context.Contradict($"{name}.Diameters[{d}]", $"{Drawn}.Basket", "The measured bore is more than a quarter away from the drawing's.");
                }
            }
        }
    }

    private static double BoreAt(SocketDrawing drawn, double fromSmallEndM) => drawn.Basket.ToEngine().DiameterAtM(fromSmallEndM / drawn.Basket.Length.Si);
}
