using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>An assessment from the contract to the engine and back.</summary>
public static class ReuseAssessmentMapping
{
    /// <param name="request">A valid request.</param>
    public static ReuseInput ToEngine(ReuseAssessmentRequest request) => new()
    {
        AssessedOn = request.AssessedOn,
        Socket = Socket(request.Socket),
        Limits = request.Limits is { } limits ? Limits(limits) : new(),
        Removal = new(request.ConeRemoval?.Method ?? RemovalMethod.Unknown, request.ConeRemoval?.MaximumTemperature?.Si),
        Inspection = request.Inspection is { } inspection ? Inspection(inspection) : new(),
        Intended = new()
        {
            Rope = request.Intended?.Rope?.ToEngine(),
            RatedLoadN = request.Intended?.RatedLoad?.Si,
            ProofLoadN = request.Intended?.ProofLoad?.Si,
        },
    };

    /// <param name="result">What was computed.</param>
    /// <param name="units">Units of the answer.</param>
    public static ReuseAssessmentResult ToContract(ReuseResult result, UnitSystem units) => new()
    {
        Disposition = result.Disposition,
        Checks = result.Checks.Select(check => CheckResult.From(check, units)).ToArray(),
        Wear = WearMapping.ToContract(result.Wear, units),
        Loads = new()
        {
            RatedLoad = Quantity.From(result.RatedLoadN, QuantityKind.Force, units),
            ProofLoad = Quantity.From(result.ProofLoadN, QuantityKind.Force, units),
            DesignFactor = Quantity.From(result.DesignFactor, QuantityKind.Count, units),
            RemainingStrength = Quantity.From(result.RemainingStrengthN, QuantityKind.Force, units),
        },
        Utilisation = new()
        {
            AsMade = WearMapping.ToContract(result.AsMade, units),
            AsMeasured = WearMapping.ToContract(result.AsMeasured, units),
        },
        Work = result.Work.Select(work => new ReuseWork { Code = work.Finding.Code, Pointer = work.Pointer, Task = work.Finding.Action })
        .ToArray(),
    };

    private static UsedSocket Socket(SocketToReuse socket) => new()
    {
        Id = socket.Id,
        Type = socket.Type ?? SocketType.Unknown,
        SteelKnown = (socket.Material?.Known).Known(),
        Metal = socket.Material?.Kind,
        YieldStrengthPa = socket.Material?.YieldStrength?.Si,
        TensileStrengthPa = socket.Material?.TensileStrength?.Si,
        PinYieldStrengthPa = socket.Pin?.YieldStrength?.Si,
        RatedLoadN = socket.RatedLoad?.Si,
        ProofRatingN = socket.ProofRating?.Si,
        BreakingForceN = socket.BreakingForce?.Si,
        Nominal = Drawing(socket.Nominal),
        Measured = socket.Measured is { } measured ? Measured(measured) : new(),
        History = new()
        {
            Pours = socket.History?.Pours,
            LastMedium = socket.History?.LastMedium ?? SocketMedium.Unknown,
            Overloaded = (socket.History?.Overloaded).Known(),
            Welded = (socket.History?.Welded).Known(),
            Straightened = (socket.History?.Straightened).Known(),
            ArcStruck = (socket.History?.ArcStruck).Known(),
        },
    };

    private static NominalSizes Drawing(SocketDrawing drawing) => new()
    {
        Basket = drawing.Basket.ToEngine(),
        OuterAtSmallEndM = (drawing.OuterDiameter ?? drawing.OuterAtSmallEnd)?.Si,
        OuterAtMouthM = (drawing.OuterDiameter ?? drawing.OuterAtMouth)?.Si,
        PinDiameterM = drawing.PinDiameter?.Si,
        PinHoleDiameterM = drawing.PinHoleDiameter?.Si,
        EarThicknessM = drawing.EarThickness?.Si,
        EarWidthM = drawing.EarWidth?.Si,
        EarEndDistanceM = drawing.EarEndDistance?.Si,
        EarGapM = drawing.EarGap?.Si,
        ToleranceM = drawing.Tolerance?.Si,
    };

    private static MeasuredSizes Measured(SocketMeasurement measured) => new()
    {
        Stations = (measured.Stations ?? [])
            .Select(station => new BoreStation(station.FromSmallEnd.Si, station.Diameters.Select(one => one.Si).ToArray())).ToArray(),
        OuterAtSmallEndM = (measured.OuterDiameter ?? measured.OuterAtSmallEnd)?.Si,
        OuterAtMouthM = (measured.OuterDiameter ?? measured.OuterAtMouth)?.Si,
        PinDiameterM = measured.PinDiameter?.Si,
        PinHoleDiametersM = (measured.PinHoleDiameters ?? []).Select(one => one.Si).ToArray(),
        EarThicknessM = measured.EarThickness?.Si,
        EarWidthM = measured.EarWidth?.Si,
        EarEndDistanceM = measured.EarEndDistance?.Si,
        EarGapM = measured.EarGap?.Si,
        PitDepthM = measured.PitDepth?.Si,
        UncertaintyM = measured.Uncertainty?.Si ?? 0,
    };

    private static WearLimits Limits(ReuseLimits limits) => new()
    {
        BoreGrowth = limits.BoreGrowth?.Si,
        Ovality = limits.Ovality?.Si,
        PinHoleGrowth = limits.PinHoleGrowth?.Si,
        EarSpread = limits.EarSpread?.Si,
        PitDepthM = limits.PitDepth?.Si,
        TaperLoss = limits.TaperLoss?.Si,
        PinWear = limits.PinWear?.Si,
        EarThicknessLoss = limits.EarThicknessLoss?.Si,
        EarWidthLoss = limits.EarWidthLoss?.Si,
        EarEndDistanceLoss = limits.EarEndDistanceLoss?.Si,
        OutsideLoss = limits.OutsideLoss?.Si,
        RemovalTemperatureK = limits.RemovalTemperature?.Si,
        DesignFactor = limits.DesignFactor?.Si,
        Source = limits.Source,
    };

    private static CrackInspection Inspection(ReuseInspection inspection) => new()
    {
        InspectedOn = inspection.InspectedOn,
        Method = inspection.SurfaceMethod ?? SurfaceMethod.Unknown,
        Places = inspection.Places,
        Indications = inspection.Indications?.Select(one =>
        new Indication(one.Place ?? SocketPlace.Unknown, one.Kind ?? IndicationKind.Unknown, one.Length?.Si)).ToArray(),
        VisibleCracks = (inspection.Visual?.Cracks).Known(),
        Corrosion = inspection.Visual?.Corrosion ?? CorrosionState.Unknown,
        Surface = inspection.Visual?.Surface ?? SurfaceState.Unknown,
    };
}
