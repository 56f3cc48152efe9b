namespace CalcService.Engine.Reuse;

/// <summary>Sizes that the strength is computed from; not a number where one isn't known.</summary>
internal sealed record StrengthSizes
{
    public required double PinM { get; init; }

    public required double HoleM { get; init; }

    public required double ThicknessM { get; init; }

    /// <summary>Thickness of the ears as the pin's lever: never less than the drawing's, so that wear can't help the pin.</summary>
    public required double LeverThicknessM { get; init; }

    public required double WidthM { get; init; }

    public required double EndDistanceM { get; init; }

    public required double GapM { get; init; }

    public required double OuterAtSmallEndM { get; init; }

    public required double OuterAtMouthM { get; init; }

    public required double LengthM { get; init; }

    /// <summary>Metal of an ear beside the hole, both sides together.</summary>
    public double BesideHoleM => WidthM - HoleM;

    /// <summary>Metal of an ear between the hole and its end.</summary>
    public double BehindHoleM => EndDistanceM - (HoleM / 2);

    /// <summary>Places from the small end with the bore there.</summary>
    public required IReadOnlyList<(double AtM, double BoreM)> Bores { get; init; }

    /// <summary>Outside at a place from the small end.</summary>
    public double OuterAtM(double atM) => OuterAtSmallEndM + (atM / LengthM * (OuterAtMouthM - OuterAtSmallEndM));

    /// <summary>Wall at a place, both sides together.</summary>
    public double WallM((double AtM, double BoreM) place) => OuterAtM(place.AtM) - place.BoreM;

    /// <summary>Bore at any place: it has grown there as at the nearest section.</summary>
    public required Func<double, double> BoreAtM { get; init; }

    /// <summary>The socket as its maker drew it.</summary>
    public static StrengthSizes AsMade(UsedSocket socket)
    {
        var drawn = socket.Nominal;
        return new()
        {
            PinM = Known(drawn.PinDiameterM),
            HoleM = Known(drawn.PinHoleDiameterM),
            ThicknessM = Known(drawn.EarThicknessM),
            LeverThicknessM = Known(drawn.EarThicknessM),
            WidthM = Known(drawn.EarWidthM),
            EndDistanceM = Known(drawn.EarEndDistanceM),
            GapM = Known(drawn.EarGapM),
            OuterAtSmallEndM = Known(drawn.OuterAtSmallEndM),
            OuterAtMouthM = Known(drawn.OuterAtMouthM),
            LengthM = drawn.Basket.LengthM,
            BoreAtM = at => drawn.Basket.DiameterAtM(at / drawn.Basket.LengthM),
            Bores = [.. Places(socket).Select(at => (at, drawn.Basket.DiameterAtM(at / drawn.Basket.LengthM)))],
        };
    }

    /// <summary>
    /// The socket as found, the worse of drawing and measurement in each size: metal above the drawing's isn't counted on.
    /// Each reading counts as far to the bad side as it may be off. Pits go off both faces of the ears and off the outside of the wall; a
    /// hole counts as grown towards the end of its ear.
    /// </summary>
    public static StrengthSizes AsMeasured(UsedSocket socket, WearFacts wear, double offM = 0)
    {
        var (made, found) = (AsMade(socket), socket.Measured);
        // No pit isn't a reading.
        var pits = found.PitDepthM == 0 ? 0 : 2 * (Known(found.PitDepthM) + offM);
        var hole = Math.Max(made.HoleM, found.PinHoleDiametersM.Count > 0 ? found.PinHoleDiametersM.Max() + offM : double.NaN);
        return made with
        {
            PinM = Math.Max(0, Math.Min(made.PinM, Known(found.PinDiameterM) - offM)),
            HoleM = hole,
            ThicknessM = Math.Min(made.ThicknessM, Known(found.EarThicknessM) - offM) - pits,
            // Width and end distance hardly wear; what the hole takes of them is counted.
            WidthM = found.EarWidthM is { } width ? Math.Min(made.WidthM, width - offM) : made.WidthM,
            EndDistanceM = (found.EarEndDistanceM is { } end ? Math.Min(made.EndDistanceM, end - offM)
            : made.EndDistanceM) - ((hole - made.HoleM) / 2),
            GapM = Math.Max(made.GapM, Known(found.EarGapM) + offM),
            OuterAtSmallEndM = Math.Min(made.OuterAtSmallEndM, Known(found.OuterAtSmallEndM) - offM) - pits,
            OuterAtMouthM = Math.Min(made.OuterAtMouthM, Known(found.OuterAtMouthM) - offM) - pits,
            BoreAtM = Bore,
            Bores = [.. made.Bores.Select(place => (place.AtM, Bore(place.AtM)))],
        };

        double Bore(double at) => made.BoreAtM(at) * (1 + Math.Max(0, Growth(Nearest(wear, at))));
        double Growth(StationWear? near) => near is null ? double.NaN : near.Growth + (offM / near.NominalM);
    }

    private static StationWear? Nearest(WearFacts wear, double atM) =>
        wear.Stations.MinBy(station => Math.Abs(station.FromSmallEndM - atM));

    private static double[] Places(UsedSocket socket) =>
        [.. socket.Measured.Stations.Select(station => station.FromSmallEndM).Append(0).Append(socket.Nominal.Basket.LengthM).Distinct()
        .Order()];

    private static double Known(double? size) => size ?? double.NaN;
}
