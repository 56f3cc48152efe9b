using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Matching;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Matching;

/// <summary>A match from the contract to the engine and back.</summary>
public static class TerminationMatchMapping
{
    /// <summary>Every second station is told: enough to draw, little enough to read.</summary>
    private const int EveryStation = 2;

    /// <param name="request">A valid request.</param>
    /// <param name="sheet">The sheet of its compound.</param>
    public static MatchInput ToEngine(TerminationMatchRequest request, Engine.Compounds.CompoundSheet sheet) => new()
    {
        Compound = sheet,
        Rope = request.Rope.ToEngine(),
        Socket = Socket(request.Socket),
        Duty = new()
        {
            Use = request.Duty?.Use ?? Engine.Rules.DutyUse.Unknown,
            LoadN = request.Duty?.Load?.Si,
            DesignFactor = request.Duty?.DesignFactor?.Si,
            ProofLoadN = request.Duty?.ProofLoad?.Si,
            Efficiency = request.Duty?.Efficiency?.Si,
            TypeTested = Known(request.Duty?.TypeTested),
            ResinByDesign = Known(request.Duty?.ResinByDesign),
            RotationResistance = request.Duty?.RotationResistance,
            MakersApproval = Known(request.Duty?.MakersApproval),
            DutyCycle = Known(request.Duty?.DutyCycle),
            LiftsPersons = request.Duty?.LiftsPersons,
        },
        Service = new() { LowestK = request.Service?.Lowest?.Si, HighestK = request.Service?.Highest?.Si,
        Chemicals = request.Service?.Chemicals },
        Preparation = request.Preparation is { } planned
            ? new(planned.Core ?? CoreTreatment.Unknown, planned.Cleaner ?? BroomCleaner.Unknown, Known(planned.PlasticLeftIn))
            : null,
        Friction = request.Cone?.Friction?.Si,
        CoolingK = request.Cone?.Cooling?.Si,
    };

    /// <param name="result">What was computed.</param>
    /// <param name="units">Units of the answer.</param>
    public static TerminationMatchResult ToContract(MatchResult result, UnitSystem units)
    {
        var working = result.Working;
        return new()
        {
            Rope = RopeNumbers.From(result.Rope, units),
            IncludedAngle = Quantity.From(Measure.Angle(result.IncludedAngleRad), units),
            LengthInDiameters = Quantity.From(Measure.Count(result.LengthInDiameters), units),
            WireSpacing = result.Wires.Select(wires => WireSpace.From(wires, units)).ToArray(),
            StrengthRatio = Quantity.From(result.StrengthRatio, QuantityKind.Fraction, units),
            Loads = new()
            {
                DesignFactor = Quantity.From(working.DesignFactor, QuantityKind.Count, units),
                DesignFactorFrom = working.FactorFrom,
                Efficiency = Quantity.From(Measure.Fraction(working.Efficiency), units),
                WorkingLoadLimit = Quantity.From(working.LimitN, QuantityKind.Force, units),
                Utilisation = Quantity.From(working.LoadN / working.LimitN, QuantityKind.Fraction, units),
                ProofLoad = Quantity.From(working.ProofLoadN, QuantityKind.Force, units),
            },
            Core = result.Core,
            BondNeeded = Quantity.From(result.BondNeededPa, QuantityKind.Stress, units),
            LoadTransfer = result.Transfer is { } transfer ? Transfer(transfer, units) : null,
        };
    }

    private static MatchSocket Socket(SocketToMatch socket) => new()
    {
        Basket = socket.Basket.ToEngine(),
        ToleranceStated = socket.Basket.Tolerance is not null,
        SizesFrom = socket.Basket.SizesFrom ?? Engine.Sockets.SizesFrom.Unknown,
        OuterAtSmallEndM = (socket.OuterAtSmallEnd ?? socket.OuterDiameter)?.Si,
        OuterAtMouthM = (socket.OuterAtMouth ?? socket.OuterDiameter)?.Si,
        BreakingForceN = socket.BreakingForce?.Si,
        RatedLoadN = socket.RatedLoad?.Si,
        ProofRatingN = socket.ProofRating?.Si,
        RopeRange = socket.RopeRange?.ToEngine(),
        Metal = socket.Material?.Kind,
        Standard = socket.Standard,
    };

    private static bool? Known(Fact? fact) => fact switch { Fact.Yes => true, Fact.No => false, _ => null };

    private static LoadTransfer Transfer(ConeTransfer transfer, UnitSystem units) => new()
    {
        Friction = Quantity.From(Measure.Count(transfer.Cone.Friction), units),
        Shrinkage = Quantity.From(Measure.Fraction(transfer.Cone.Shrinkage), units),
        FullContactLoad = Quantity.From(Measure.Force(transfer.FullContactN), units),
        Cases = transfer.Cases.Select(one => Case(one, units)).ToArray(),
        Sensitivity = transfer.Sensitivity.Select(one => new TransferSensitivity
        {
            Of = one.What,
            Low = Run(one.Low, one.AtLow, units),
            High = Run(one.High, one.AtHigh, units),
        }).ToArray(),
    };

    private static LoadedCone Case(ConeCase one, UnitSystem units)
    {
        var state = one.State;
        Quantity Length(double metres) => Quantity.From(Measure.Length(metres), units);
        Quantity Stress(double pascals) => Quantity.From(Measure.Stress(pascals), units);
        Quantity Share(double share) => Quantity.From(Measure.Fraction(share), units);
        return new()
        {
            Case = one.Name,
            Load = Quantity.From(Measure.Force(state.LoadN), units),
            Shares = new() { Lower = Share(state.Shares!.Lower), Middle = Share(state.Shares.Middle), Upper = Share(state.Shares.Upper) },
            SeatingAtSmallEnd = Length(state.SeatAtSmallEndM),
            SeatingAtMouth = Length(state.SeatAtMouthM),
            ContactTo = Length(state.ContactToM),
            MeanPressure = Stress(state.MeanPressurePa),
            LipPressure = Stress(one.LipPressurePa),
            CompoundUtilisation = Quantity.From(one.Utilisation, QuantityKind.Fraction, units),
            HoopStress = Quantity.From(one.HoopPa, QuantityKind.Stress, units),
            Profile = [.. state.Stations.Where((_, i) => i % EveryStation == 0).Select(place => new ConePlace
            {
                FromSmallEnd = Length(place.XM),
                Pressure = Stress(place.PressurePa),
                ForceLeft = Quantity.From(Measure.Force(place.ForceN), units),
                Seating = Length(place.SeatM),
            })],
        };
    }

    private static SensitivityRun Run(double value, ConeState state, UnitSystem units) => new()
    {
        Value = Quantity.From(Measure.Count(value), units),
        LowerThird = Quantity.From(Measure.Fraction(state.Shares!.Lower), units),
        EdgePressure = Quantity.From(Measure.Stress(state.EdgePressurePa), units),
        SeatingAtMouth = Quantity.From(Measure.Length(state.SeatAtMouthM), units),
    };
}
