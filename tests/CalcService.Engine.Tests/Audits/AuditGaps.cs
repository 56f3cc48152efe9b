using CalcService.Engine.Audits;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Sockets;
using static CalcService.Engine.Tests.Audits.GoodRecord;

namespace CalcService.Engine.Tests.Audits;

/// <summary>The whole record with one item missing: a fact leaves it undetermined, a trail gets its caution, and none passes.</summary>
public static class AuditGaps
{
    private const string Fact = "record-fact-missing", Trail = "record-trail-missing";

    public static IReadOnlyList<AuditCase> All { get; } = [.. Facts, .. Times, .. Looks, .. Trails];

    private static IEnumerable<AuditCase> Facts =>
    [
        Missing("/rope", "rope-papers", input => input with { Rope = null }),
        Missing("/rope/certificate/breakingForce", "rope-papers",
        input => input with { Rope = input.Rope! with { CertifiedBreakingForceN = null } }),
        Missing("/socket/basket", "socket-papers", Socketed(socket => socket with { Basket = null })),
        Missing("/socket/breakingForce", "socket-papers", Socketed(socket => socket with { BreakingForceN = null })),
        Missing("/mix/kits", "lot-dates", Mixed(mix => mix with { Kits = null })),
        Missing("/mix/kits", "kits", Mixed(mix => mix with { Kits = [] })),
        Missing("/mix/kits/0/expiresOn", "lot-dates", Kit(lot => lot with { ExpiresOn = null })),
        Missing("/mix/kits/0/hardenerExpiresOn", "lot-dates", Kit(lot => lot with { ExpiresOn = null, ResinExpiresOn = new(2027, 1, 1) })),
        Missing("/mix/dosesPerKit", "dose", Mixed(mix => mix with { DosesPerKit = null })),
        Missing("/socket/material/kind", "socket-metal", Socketed(socket => socket with { Metal = SocketMetal.Unknown })),
        new(Fact, Severity.Unknown, "/mix/doseAdded", "dose-moment",
        Mixed(mix => mix with { DoseAdded = DoseMoment.Unknown, DosesPerKit = 2 }),
            "dose-contradicts-sheet", "loaded-before-cured", "poured-beyond-pot-life"),
        Missing("/conditions/air", "readings", Read(read => read with { AirSeries = [] })),
        Missing("/conditions/air", "dew-point", Read(read => read with { AirSeries = [] })),
        Missing("/conditions/steelTemperature", "pouring-range", Read(read => read with { SteelK = null })),
        Missing("/conditions/steelTemperature", "moved", Read(read => read with { SteelK = null })),
        Missing("/conditions/compoundTemperature", "pot-life", Read(read => read with { CompoundK = null })),
        Missing("/conditions/relativeHumidity", "dew-point", Read(read => read with { RelativeHumidity = null })),
        Missing("/hardness/value", "hardness", input => input with { Hardness = new() }),
        Missing("/hardness/method", "hardness", input => input with { Hardness = input.Hardness with { Method = "thumb nail" } }),
        Missing("/proof/asked", "proof-asked", Loaded(proof => proof with { IsAsked = null })),
        Missing("/proof/askedLoad", "proof-load", Loaded(proof => proof with { AskedN = null })),
        Missing("/proof/load", "proof-load", Loaded(proof => proof with { LoadN = null })),
        Missing("/socket/proofRating", "proof-rating", Socketed(socket => socket with { ProofRatingN = null })),
        Missing("/proof/wireSlip", "wire-slip", Loaded(proof => proof with { WireSlip = null })),
        Missing("/proof/creepUnderHold", "creep", Loaded(proof => proof with { Creep = null })),
        Missing("/proof/asymmetry", "asymmetry", Loaded(proof => proof with { Asymmetry = null })),
        Missing("/proof/cracks", "cracks", Loaded(proof => proof with { Cracks = null })),
    ];

    private static IEnumerable<AuditCase> Times =>
    [
        Missing("/times/mixedAt", "times", At(times => times with { MixedAt = null })),
        Missing("/times/mixedAt", "released-cured", At(times => times with { MixedAt = null })),
        Missing("/times/pouredAt", "pot-life", At(times => times with { PouredAt = null })),
        Missing("/times/gelAt", "gel", At(times => times with { GelAt = null })),
        Missing("/times/movedAt", "moved", At(times => times with { MovedAt = null })),
        Missing("/times/releasedAt", "released-cured", At(times => times with { ReleasedAt = null })),
        Missing("/times/proofAt", "proof-cured", At(times => times with { ProofAt = null })),
    ];

    private static IEnumerable<AuditCase> Looks =>
    [
        Missing("/looks/bore", "look-bore", Looked(looks => looks with { Bore = LookResult.Unknown })),
        Missing("/looks/broom", "look-broom", Looked(looks => looks with { Broom = LookResult.Unknown })),
        Missing("/looks/core", "look-core", Looked(looks => looks with { Core = LookResult.Unknown })),
        Missing("/looks/alignment", "look-alignment", Looked(looks => looks with { Alignment = LookResult.Unknown })),
        Missing("/looks/seal", "look-seal", Looked(looks => looks with { Seal = LookResult.Unknown })),
        Missing("/looks/fill", "look-fill", Looked(looks => looks with { Fill = LookResult.Unknown })),
        Missing("/looks/surface", "look-surface", Looked(looks => looks with { Surface = LookResult.Unknown })),
        Missing("/looks/afterLoad", "look-after-load", Looked(looks => looks with { AfterLoad = LookResult.Unknown })),
    ];

    private static IEnumerable<AuditCase> Trails =>
    [
        Untraced("/record/number", "identity", input => input with { Number = null }),
        Untraced("/record/end", "identity", input => input with { End = " " }),
        Untraced("/rope/certificate/number", "rope-papers", input => input with { RopeCertificate = null }),
        Untraced("/socket/id", "socket-papers", Socketed(socket => socket with { Id = null })),
        Untraced("/socket/certificate", "socket-papers", Socketed(socket => socket with { Certificate = null })),
        Untraced("/times/preparedAt", "times", At(times => times with { PreparedAt = null })),
        Untraced("/times/readAt", "readings", At(times => times with { ReadAt = null })),
        Missing("/mix/kits/0/state", "lot-state", Kit(lot => lot with { State = LotState.Unknown })),
        Missing("/mix/kits/0/state", "lot-state", Kit(lot => lot with { State = null })),
        Missing("/mix/kits/0/quarantined", "lot-state", Kit(lot => lot with { Quarantined = Engine.Findings.Fact.Unknown })),
        Missing("/mix/kits/0/quarantined", "lot-state", Kit(lot => lot with { Quarantined = null })),
        Untraced("/mix/kits/0/storage", "lot-state", input => Stored(Kit(lot => lot with { Storage = null })(input))),
        Missing("/mix/kits/0/storage", "lot-state",
        input => Stored(Kit(lot => lot with { Storage = new(null, null, Engine.Findings.Fact.Unknown) })(input))),
        Untraced("/proof/ratedLoad", "proof-load", Loaded(proof => proof with { RatedN = null })),
        Untraced("/mix/baskets", "kits", Mixed(mix => mix with { Baskets = null })),
        Untraced("/mix/volume", "volume", Mixed(mix => mix with { VolumeM3 = null })),
        Untraced("/hardness/value", "hardness", input => Sheeted(sheet => sheet with { Hardness = null })(input with { Hardness = new() })),
        Untraced("/people", "people", input => input with { People = [] }),
        Untraced("/people", "people", input => input with { People = [.. input.People.Where(person => person.Role != WorkRole.Mixer)] }),
        Untraced("/people/2/name", "people", Person(2, person => person with { Name = null })),
        Untraced("/people/3/qualifiedUntil", "qualifications", Person(3, person => person with { QualifiedUntil = null })),
        Untraced("/people/0/role", "people",
        input => input with { People = [new(WorkRole.Unknown, "R. Vos", new(2026, 12, 31)), .. input.People] }),
    ];

    /// <summary>The sheet has a range of storage, so that a rule reads it.</summary>
    private static AuditInput Stored(AuditInput input) => Sheeted(sheet => sheet with { Storage = new(278, 298) })(input);

    private static AuditCase Missing(string pointer, string check, Func<AuditInput, AuditInput> change) =>
        new(Fact, Severity.Unknown, pointer, check, change);

    private static AuditCase Untraced(string pointer, string check, Func<AuditInput, AuditInput> change) =>
        new(Trail, Severity.Caution, pointer, check, change);
}
