using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Audits;

/// <content>Findings of lots, volumes and pot life.</content>
public static partial class AuditFindings
{
    public static FindingDefinition LotExpiredWhenMixed { get; } = Stop("lot-expired-when-mixed", "2026-12", Actor.Inspector,
        "A lot, or a part of its kits, was mixed after its last good day.",
        "Lot {lot} ({part}) was good until {expiresOn}, {days} day(s) before it was mixed.",
        "Take the end out of use and make it again; look for other ends from this lot.",
        new("the dates on the packs, or the sheet's shelf life", "", Basis.DataSheet));

    public static FindingDefinition LotUnfit { get; } = Stop("lot-unfit-when-mixed", "2026-12", Actor.Inspector,
        "A lot was mixed that should not have been: opened, damaged, quarantined, or stored outside the sheet's range.",
        "Lot {lot} was {why} when it was mixed.",
        "Take the end out of use until a competent person has decided; look for other ends from this lot.",
        Record("lots"));

    public static FindingDefinition VolumeOff { get; } = Define("recorded-volume-off", "2026-12", Actor.Inspector,
        [Severity.Caution, Severity.Unknown],
        "The volume that went into the basket doesn't go with basket and rope: too little leaves a void, too much has run out below. "
            + "Unknown where it is no matter of measuring: by that record it is no cone.",
        "{measured} went into the basket; {low} to {high} go with basket and rope.",
        "Check sizes and volume of the record; look at mouth and seal of the end.",
        limits: rules => [rules.Audits.VolumeSpread, rules.Audits.VolumeFar]);

    public static FindingDefinition KitsShort { get; } = Define("kits-short", "2026-12", Actor.Inspector, [Severity.Stop, Severity.Caution],
        "The kits of the mix gave less than the baskets needed. A stop where they can't have been full.",
        "The kits gave {measured}; the baskets of the mix take {limit}.",
        "Count the kits and baskets of the record again; look for a void below the mouth.",
        Record("volumes"));

    public static FindingDefinition PouredNearIgnition { get; } = Caution("poured-near-ignition", "2026-12", Actor.Lead,
        "Something near the pour could have lit the vapour. Nobody was hurt and the end is none the weaker; the next pour is not to be "
            + "the same.",
        "There was an ignition source near the pour.",
        "Report it, and take every flame, spark, hot surface and running engine away before the next kit is opened.",
        Prudence);

    public static FindingDefinition IgnitionNotRecorded { get; } = Note("ignition-source-not-recorded", "2026-12", Actor.Office,
        "The record doesn't say whether something near the pour could have lit the vapour. It says nothing about the end.",
        "The record doesn't say whether an ignition source was near the pour.",
        "Enter it from the notes of the day, and have the next record ask for it.",
        Prudence);
}
