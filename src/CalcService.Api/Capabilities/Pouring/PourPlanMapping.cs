using CalcService.Api.Capabilities.Pouring.TakeOff;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;
using CalcService.Engine.Sockets;

namespace CalcService.Api.Capabilities.Pouring;

/// <summary>A pour plan from the contract to the engine and back.</summary>
public static class PourPlanMapping
{
    /// <param name="request">A valid request.</param>
    /// <param name="sheet">The sheet of its compound.</param>
    public static PourPlanInput ToEngine(PourPlanRequest request, Engine.Compounds.CompoundSheet sheet) => new()
    {
        Reference = request.Reference,
        Purpose = request.Purpose ?? Purpose.Pour,
        PourAt = request.PourAt,
        Compound = sheet,
        Conditions = new()
        {
            AirK = request.Conditions?.AirTemperature?.Si,
            SteelK = request.Conditions?.SteelTemperature?.Si,
            CompoundK = request.Conditions?.CompoundTemperature?.Si,
            RelativeHumidity = request.Conditions?.RelativeHumidity?.Si,
            UncertaintyK = request.Conditions?.Uncertainty?.Si,
            IgnitionSource = request.Conditions?.IgnitionSource,
            Place = request.Conditions?.Place,
            Workplace = request.Conditions?.Workplace ?? Workplace.Unknown,
            Jurisdiction = request.Conditions?.Jurisdiction,
            AirSpeedMPerS = request.Conditions?.AirSpeed?.Si,
            MixingFactor = request.Conditions?.MixingFactor?.Si,
            ReadAt = request.Conditions?.ReadAt,
            ValidForS = request.Conditions?.ValidFor?.Si,
            AirLimits = request.Conditions?.AirLimits is { } own ? new(own.ShortTerm?.Si, own.TimeWeighted?.Si, own.Source) : null,
            Room = request.Conditions?.Room is { } room ? new(room.Volume.Si, room.AirChanges.Si) : null,
        },
        Ends = request.Ends.Select(End).ToArray(),
        Stock = request.Stock is { } stock ? stock.Select(lot => lot.ToEngine()).ToArray() : null,
        Mixers = request.Crew?.Mixers,
        PourTimeS = request.Crew?.PourTime?.Si,
        Allowance = request.Allowance?.Si,
        VesselResidueM3 = request.VesselResidue?.Si,
        WitnessSampleM3 = request.WitnessSample?.Si,
        IntendedDose = request.Dose is { } dose ? new(dose.PerKit, dose.Added) : null,
        Objective = request.Objective,
        Quote = request.Quote?.ToEngine(),
    };

    private static Engine.Pouring.PourEnd End(PourEnd end) => new(
        end.Id, end.Quantity, end.Rope.ToEngine(), end.Socket.Basket.ToEngine(), end.Socket.Basket.Tolerance is not null,
        end.Socket.BreakingForce?.Si, end.PourTime?.Si)
    {
        SizesFrom = end.Socket.Basket.SizesFrom ?? SizesFrom.Unknown,
        Bore = end.Socket.Bore,
        Metal = end.Socket.Material?.Kind,
        RopeRange = end.Socket.RopeRange?.ToEngine(),
        SocketTemperatureK = end.Socket.Temperature?.Value.Si,
        SocketReadAt = end.Socket.Temperature?.ReadAt,
        SocketMassKg = end.Socket.Mass?.Si,
        SocketOuterDiameterM = end.Socket.OuterDiameter?.Si,
        ServingInBasketM = end.ServingInBasket?.Si,
        ServingDiameterM = end.ServingDiameter?.Si,
        WireEndsBelowMouthM = end.WireEndsBelowMouth?.Si,
        TiltRad = end.Tilt?.Si,
        StraightBelowM = end.StraightBelow?.Si,
        BroomAngleRad = end.BroomAngle?.Si,
        FibreCore = end.FibreCore,
        Plastic = end.Plastic,
        Cleaner = end.Cleaner,
        HasReleaseAgent = end.ReleaseAgent == Fact.Yes,
        DriedAt = end.DriedAt,
    };

    /// <param name="result">What was computed.</param>
    /// <param name="currency">Currency of the sheet's costs.</param>
    /// <param name="units">Units of the answer.</param>
    public static PourPlanResult ToContract(Engine.Pouring.PourPlanResult result, string? currency, UnitSystem units)
    {
        Quantity Duration(double si) => Quantity.From(Measure.Duration(si), units);
        GelTimeBand Band(GelBand band) =>
            new() { Earliest = Duration(band.EarliestS), Expected = Duration(band.ExpectedS), Latest = Duration(band.LatestS) };

        double? mixed = result.Mixes.Count > 0 ? result.Mixes.Sum(mix => mix.MixedM3) : null;
        return new()
        {
            Ends = result.Ends.Select(end => End(end, units)).ToArray(),
            Dose = result.Dose is { } dose
                ? new() { PerKit = dose.PerKit, Total = result.Mixes.Count > 0
                ? dose.PerKit * result.Mixes.Sum(mix => mix.Kits.Sum(kit => kit.Count)) : null }
                : null,
            DoseBasis = result.Dose is { } basis
                ? new() { Place = basis.Place, Temperature = Quantity.From(Measure.Temperature(basis.TemperatureK), units) }
                : null,
            GelInVessel = result.Gel is { } gel ? Band(gel.InVessel) : null,
            GelInCone = result.Gel is { } cone ? Band(cone.InCone) : null,
            PotLife = Quantity.From(result.Gel?.PotLifeS, QuantityKind.Duration, units),
            Mixes = result.Mixes.Select(mix => Mix(mix, result.WitnessSampleM3, units)).ToArray(),
            Kits = result.Kits.Select(kit => new PlannedKits { Kit = kit.Kit, FromStock = kit.FromStock, ToBuy = kit.ToBuy }).ToArray(),
            Totals = new()
            {
                Needed = Quantity.From(result.NeededM3, QuantityKind.Volume, units),
                Mixed = Quantity.From(mixed, QuantityKind.Volume, units),
                Leftover = Quantity.From(mixed - result.NeededM3, QuantityKind.Volume, units),
                Cost = result.Cost,
                StockValue = result.StockValue,
                Currency = currency,
            },
            Optimality = result.Optimality is { } optimality
                ? new() { Status = optimality.IsOptimal ? "optimal" : "feasible",
                Gap = Quantity.From(Measure.Fraction(optimality.Gap), units) }
                : null,
            DewPoint = Quantity.From(result.DewPointK, QuantityKind.Temperature, units),
            FrostPoint = Quantity.From(result.FrostPointK, QuantityKind.Temperature, units),
            ReadingsValidUntil = result.ReadingsValidUntil,
            GelledAt = result.GelledAt,
            Sequence = SequenceMapping.Steps(result.Sequence, units),
            HoldPoints = result.HoldPoints.Select(point => SequenceMapping.Point(point, units)).ToArray(),
            FlipsWhen = result.Flips.Select(flip => new FlipsWhen
            {
                Reading = flip.Reading,
                When = flip.When,
                Value = Quantity.From(new Measure(flip.Value, flip.Reading == "relativeHumidity" ? QuantityKind.Fraction
                : QuantityKind.Temperature), units),
                To = flip.To,
            }).ToArray(),
            Vapour = result.Vapour is { } vapour
                ? new()
                {
                    Peak = Quantity.From(Measure.AirFraction(vapour.Peak), units),
                    TimeWeighted = Quantity.From(Measure.AirFraction(vapour.TimeWeighted), units),
                }
                : null,
            TakeOff = TakeOffMapping.ToContract(result.TakeOff, units),
        };
    }

    private static PlannedEnd End(Engine.Pouring.PlannedEnd end, UnitSystem units)
    {
        var (rope, fill) = (end.Rope, end.Fill);
        return new()
        {
            Id = end.Id,
            Quantity = end.Quantity,
            Rope = RopeNumbers.From(rope, units),
            BasketVolume = Quantity.From(Measure.Volume(fill.BasketM3), units),
            SteelVolume = Quantity.From(fill.SteelM3, QuantityKind.Volume, units),
            ResinVolume = new()
            {
                Low = Quantity.From(fill.LowM3, QuantityKind.Volume, units),
                Nominal = Quantity.From(fill.NominalM3, QuantityKind.Volume, units),
                High = Quantity.From(fill.HighM3, QuantityKind.Volume, units),
            },
            Preparation = SequenceMapping.Numbers(end.Preparation, units),
            EvenedTemperature = Quantity.From(end.EvenedTemperatureK, QuantityKind.Temperature, units),
            IncludedAngle = Quantity.From(Measure.Angle(end.IncludedAngleRad), units),
            WireSpacing = end.Wires.Select(wires => WireSpace.From(wires, units)).ToArray(),
        };
    }

    private static PlannedMix Mix(Mix mix, double? witnessM3, UnitSystem units) => new()
    {
        Number = mix.Number,
        Kits = mix.Kits.Select(kit => new MixKit { Kit = kit.Kit, Lot = kit.Lot, Count = kit.Count }).ToArray(),
        Fills = mix.Fills.Select(fill => new MixFill { End = fill.End, Count = fill.Count }).ToArray(),
        Needed = Quantity.From(Measure.Volume(mix.NeededM3), units),
        Mixed = Quantity.From(Measure.Volume(mix.MixedM3), units),
        Leftover = Quantity.From(Measure.Volume(mix.MixedM3 - mix.NeededM3), units),
        StartsAt = mix.StartsAt,
        UsedIn = Quantity.From(mix.UsedInS, QuantityKind.Duration, units),
        StopPouringAt = mix.StopPouringAt,
        WitnessSample = new() { Label = mix.WitnessLabel, Volume = Quantity.From(witnessM3, QuantityKind.Volume, units) },
    };
}
