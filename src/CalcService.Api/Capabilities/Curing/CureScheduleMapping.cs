using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Curing;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>A cure schedule from the contract to the engine and back.</summary>
public static class CureScheduleMapping
{
    /// <param name="request">A valid request.</param>
    /// <param name="sheet">The sheet of its compound.</param>
    public static CureScheduleInput ToEngine(CureScheduleRequest request, Engine.Compounds.CompoundSheet sheet) => new()
    {
        Compound = sheet,
        Purpose = request.Purpose ?? Purpose.Pour,
        Doses = request.Doses,
        MixedAt = request.MixedAt,
        ThermalModel = request.ThermalModel ?? ThermalModel.Coupled,
        Conditions = new()
        {
            ConstantAirK = request.Conditions.Air.Constant?.Si,
            AirSeries = request.Conditions.Air.ToEngine(),
            SteelK = ColdestSteel(request),
            SteelSeries =
            [.. (request.Conditions.SteelSeries ?? []).Select(point => new Engine.Compounds.AirPoint(point.At, point.Temperature.Si))],
            CompoundK = request.Conditions.CompoundTemperature?.Si,
        },
        Ends = request.Ends.Select(end => new Engine.Curing.CureEnd(end.Id, end.Quantity, end.Rope.ToEngine(), end.Socket.Basket.ToEngine())
        {
            SocketBreakingForceN = end.Socket.BreakingForce?.Si,
            Metal = end.Socket.Material?.Kind,
            RopeRange = end.Socket.RopeRange?.ToEngine(),
            SocketK = end.Socket.Temperature?.Value.Si,
            Bore = end.Socket.Bore,
            OuterAtSmallEndM = (end.Socket.OuterAtSmallEnd ?? end.Socket.OuterDiameter)?.Si,
            OuterAtMouthM = (end.Socket.OuterAtMouth ?? end.Socket.OuterDiameter)?.Si,
        }).ToArray(),
        Observations =
        [.. (request.Observations ?? [])
        .Select(seen => new Engine.Curing.GelObservation(seen.End, seen.GelAt, seen.SeenIn ?? GelPlace.Unknown, seen.StillSoftAt))],
        PourTimeS = request.PourTime?.Si,
        Shop = request.Shop is { } shop
            ? new()
            {
                Crew = shop.Crew,
                Stands = shop.Stands,
                Mixers = shop.Mixers,
                TestBeds = shop.TestBeds,
                Shifts = shop.Shifts.Select(shift => new Engine.Curing.Shift(shift.From, shift.To)).ToArray(),
                TaskTimes = new(shop.TaskTimes.Prepare.Si, shop.TaskTimes.Position.Si, shop.TaskTimes.Proof.Si, shop.TaskTimes.Record.Si),
            }
            : null,
    };

    /// <summary>The coldest of all steel that was read: it cures last. Null unless the steel was read, or every socket by itself.</summary>
    private static double? ColdestSteel(CureScheduleRequest request)
    {
        var sockets = request.Ends.Select(end => end.Socket.Temperature?.Value.Si);
        var known = request.Conditions.SteelTemperature is not null || sockets.All(kelvins => kelvins is not null);
        return known
            ? sockets.Append(request.Conditions.SteelTemperature?.Si).Concat(request.Ends.Select(end => end.Rope.Temperature?.Si)).Min()
            : null;
    }

    /// <param name="result">What was computed.</param>
    /// <param name="units">Units of the answer.</param>
    public static CureScheduleResult ToContract(Engine.Curing.CureScheduleResult result, UnitSystem units) => new()
    {
        Doses = result.Doses,
        Ends = result.Ends.Select(end => End(end, units)).ToArray(),
        Tasks = [.. (result.Shop?.Tasks ?? []).Select(task => new ScheduledTask
        {
            End = task.End, Unit = task.Unit, Task = task.Task, From = task.From, To = task.To, On = task.On.Length == 0 ? null : task.On,
        })],
        FinishedAt = result.Shop?.FinishedAt,
        Optimality = result.Shop is { } shop
            ? new() { Status = shop.IsOptimal ? "optimal" : "feasible", Gap = Quantity.From(Measure.Fraction(shop.Gap), units) }
            : null,
    };

    private static CuredEnd End(Engine.Curing.CuredEnd end, UnitSystem units) => new()
    {
        Id = end.Id,
        Quantity = end.Quantity,
        GelAt = new() { Earliest = end.GelAt.Earliest, Expected = end.GelAt.Expected, Latest = end.GelAt.Latest },
        UndisturbedUntil = end.UndisturbedUntil,
        ProofLoadFrom = end.ProofLoadFrom,
        ServiceFrom = end.ServiceFrom,
        GovernedBy = new()
        {
            GelAt = end.GovernedBy.GelAt,
            UndisturbedUntil = end.GovernedBy.UndisturbedUntil,
            ProofLoadFrom = end.GovernedBy.ProofLoadFrom,
            ServiceFrom = end.GovernedBy.ServiceFrom,
        },
        Release = end.Release is { } release
            ? new()
            {
                GelledBy = release.GelledBy,
                SheetFrom = release.SheetFrom,
                ModelFrom = release.ModelFrom,
                HoldFrom = release.HoldFrom,
                CooledFrom = release.CooledFrom,
                Slower = Quantity.From(Measure.Count(release.Slower), units),
                ByOwnHeat = release.IsByOwnHeat,
            }
            : null,
        Peak = end.Peak is { } peak ? new() { Temperature = Quantity.From(Measure.Temperature(peak.Kelvins), units), At = peak.At } : null,
        LeastCured = end.LeastCured is { } least
        ? new() { Where = least.Where, DegreeOfCure = Quantity.From(Measure.Fraction(least.DegreeOfCure), units) } : null,
        Curve = end.Curve.Select(point => Point(point, units)).ToArray(),
        EnergyBalanceError = Quantity.From(end.EnergyBalanceError is { } error ? Math.Round(error, 9) : null, QuantityKind.Fraction, units),
    };

    private static CureCurvePoint Point(CurvePoint point, UnitSystem units) => new()
    {
        At = point.At,
        Air = Quantity.From(Measure.Temperature(point.AirK), units),
        Centre = Quantity.From(Measure.Temperature(point.CentreK), units),
        Skin = Quantity.From(Measure.Temperature(point.SkinK), units),
        CureCentre = Quantity.From(Measure.Fraction(point.CureCentre), units),
        CureSkin = Quantity.From(Measure.Fraction(point.CureSkin), units),
        CureEarliest = Quantity.From(point.CureEarliest, QuantityKind.Fraction, units),
        CureLatest = Quantity.From(point.CureLatest, QuantityKind.Fraction, units),
        SheetShare = Quantity.From(point.SheetShare, QuantityKind.Fraction, units),
    };
}
