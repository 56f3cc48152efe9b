using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Audits;
using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Releases;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>A record from the contract to the engine and back.</summary>
public static class RecordAuditMapping
{
    /// <param name="request">A valid request.</param>
    /// <param name="sheet">The sheet of its compound.</param>
    public static AuditInput ToEngine(RecordAuditRequest request, Engine.Compounds.CompoundSheet sheet) => new()
    {
        AuditedOn = request.AuditedOn,
        Purpose = request.Purpose ?? Purpose.Pour,
        ThermalModel = request.ThermalModel ?? ThermalModel.Uniform,
        Compound = sheet,
        Number = request.Record?.Number,
        End = request.Record?.End,
        Rope = request.Rope?.ToEngine(),
        RopeCertificate = request.Rope?.Certificate?.Number,
        Socket = request.Socket is { } socket ? Socket(socket) : new(),
        Readings = new()
        {
            ConstantAirK = request.Conditions?.Air?.Constant?.Si,
            AirSeries = request.Conditions?.Air?.ToEngine() ?? [],
            // The coldest of all steel that was read: it cures last.
            SteelK = request.Conditions?.SteelTemperature?.Si is { } steel ? Math.Min(steel, request.Rope?.Temperature?.Si ?? steel) : null,
            SteelSeries =
            [.. (request.Conditions?.SteelSeries ?? []).Select(point => new Engine.Compounds.AirPoint(point.At, point.Temperature.Si))],
            CompoundK = request.Conditions?.CompoundTemperature?.Si,
            RelativeHumidity = request.Conditions?.RelativeHumidity?.Si,
            IgnitionSource = request.Conditions?.IgnitionSource,
        },
        Mix = new()
        {
            Kits = request.Mix?.Kits?.Select(kit => kit.ToEngine()).ToArray(),
            DosesPerKit = request.Mix?.DosesPerKit,
            DoseAdded = request.Mix?.DoseAdded,
            Baskets = request.Mix?.Baskets,
            VolumeM3 = request.Mix?.Volume?.Si,
        },
        Times = request.Times is { } times ? Times(times) : new(),
        GelSeenIn = request.GelSeenIn ?? GelPlace.Unknown,
        Hardness = new(request.Hardness?.Method, request.Hardness?.Value?.Si, request.Hardness?.ReadAt ?? HardnessPlace.Unknown),
        Proof = request.Proof is { } proof ? Proof(proof) : new(),
        People = [.. (request.People ?? [])
        .Select(person => new Engine.Audits.RecordedPerson(person.Role ?? WorkRole.Unknown, person.Name, person.QualifiedUntil))],
        Looks = request.Looks is { } looks ? Looks(looks) : new(),
    };

    /// <param name="result">What was computed.</param>
    /// <param name="units">Units of the answer.</param>
    public static RecordAuditResult ToContract(AuditResult result, UnitSystem units)
    {
        var plan = result.Recomputed;
        Quantity? Of(double? si, QuantityKind kind) => Quantity.From(si, kind, units);
        return new()
        {
            Standing = result.Standing,
            Items = new() { Asked = result.ItemsAsked, Missing = result.Missing },
            Checks = result.Checks.Select(check => CheckResult.From(check, units)).ToArray(),
            Recomputed = new()
            {
                ResinVolume = new()
                {
                    Low = Of(plan.Fill?.LowM3, QuantityKind.Volume),
                    Nominal = Of(plan.Fill?.NominalM3, QuantityKind.Volume),
                    High = Of(plan.Fill?.HighM3, QuantityKind.Volume),
                },
                Mixed = Of(plan.MixedM3, QuantityKind.Volume),
                Needed = Of(plan.NeededM3, QuantityKind.Volume),
                DosesPerKit = plan.DosesPerKit,
                PotLife = Of(plan.PotLifeS, QuantityKind.Duration),
                DewPoint = Of(plan.DewPointK, QuantityKind.Temperature),
                FrostPoint = Of(plan.FrostPointK, QuantityKind.Temperature),
                Gel = new()
                {
                    Earliest = Of(plan.Gel.Expected?.EarliestS, QuantityKind.Duration),
                    Expected = Of(plan.Gel.Expected?.ExpectedS, QuantityKind.Duration),
                    Latest = Of(plan.Gel.Expected?.LatestS, QuantityKind.Duration),
                    Observed = Of(plan.Gel.ObservedS, QuantityKind.Duration),
                    Ratio = Of(plan.Gel.Ratio, QuantityKind.Count),
                },
                UndisturbedUntil = plan.UndisturbedUntil,
                LoadFrom = plan.LoadFrom,
                LeastTestLoad = Of(plan.LeastTestLoadN, QuantityKind.Force),
                MostTestLoad = Of(plan.MostTestLoadN, QuantityKind.Force),
                LeastSeating = Of(plan.SeatingLowM, QuantityKind.Length),
                MostSeating = Of(plan.SeatingHighM, QuantityKind.Length),
            },
        };
    }

    private static Engine.Audits.RecordedSocket Socket(RecordedSocket socket) => new()
    {
        Id = socket.Id,
        Certificate = socket.Certificate,
        Basket = socket.Basket?.ToEngine(),
        SizesFrom = socket.Basket?.SizesFrom ?? Engine.Sockets.SizesFrom.Unknown,
        OuterAtSmallEndM = socket.OuterAtSmallEnd?.Si,
        OuterAtMouthM = socket.OuterAtMouth?.Si,
        Metal = socket.Material?.Kind,
        BreakingForceN = socket.BreakingForce?.Si,
        ProofRatingN = socket.ProofRating?.Si,
    };

    private static Engine.Audits.RecordedTimes Times(RecordedTimes times) => new()
    {
        PreparedAt = times.PreparedAt,
        ReadAt = times.ReadAt,
        MixedAt = times.MixedAt,
        PouredAt = times.PouredAt,
        GelAt = times.GelAt,
        StillSoftAt = times.StillSoftAt,
        MovedAt = times.MovedAt,
        ReleasedAt = times.ReleasedAt,
        ProofAt = times.ProofAt,
        InServiceAt = times.InServiceAt,
    };

    private static Engine.Audits.RecordedProof Proof(RecordedProof proof) => new()
    {
        IsAsked = proof.Asked.Known(),
        AskedN = proof.AskedLoad?.Si,
        RatedN = proof.RatedLoad?.Si,
        LoadN = proof.Load?.Si,
        SeatingM = proof.Seating?.Si,
        SeatingReadAt = proof.SeatingReadAt ?? SeatingPlace.Unknown,
        ReadUnderLoad = proof.ReadUnderLoad.Known(),
        WireSlip = proof.WireSlip.Known(),
        Creep = proof.CreepUnderHold.Known(),
        Cracks = proof.Cracks.Known(),
        Asymmetry = proof.Asymmetry.Known(),
    };

    private static Engine.Audits.RecordedLooks Looks(RecordedLooks looks) => new()
    {
        Bore = looks.Bore ?? LookResult.Unknown,
        Broom = looks.Broom ?? LookResult.Unknown,
        Core = looks.Core ?? LookResult.Unknown,
        Alignment = looks.Alignment ?? LookResult.Unknown,
        Seal = looks.Seal ?? LookResult.Unknown,
        Fill = looks.Fill ?? LookResult.Unknown,
        Surface = looks.Surface ?? LookResult.Unknown,
        AfterLoad = looks.AfterLoad ?? LookResult.Unknown,
    };
}
