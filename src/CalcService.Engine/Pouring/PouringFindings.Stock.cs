using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of kits and lots.</content>
public static partial class PouringFindings
{
    public static FindingDefinition LotExpired { get; } = Define("lot-expired", "2026-12", Actor.Office, [Severity.Stop, Severity.Note],
        "A lot, or a part of its kits that goes into the mix, is past its last good day. It is never used; a stop where only this lot "
            + "would make the stock enough.",
        "Lot {lot} ({part}) was good until {expiresOn}, {days} day(s) before the pour.",
        "Take the lot off the shelf; do not mix it.",
        new("the dates on the packs, or the sheet's shelf life", "", Basis.DataSheet));

    public static FindingDefinition LotNotSealed { get; } = Define("lot-not-sealed", "2026-12", Actor.Office,
        [Severity.Stop, Severity.Note],
        "Packs of a lot are opened, part-used, damaged or leaking: what they hold may have changed or be less than a whole kit. The lot "
            + "is never used; a stop where the stock would be enough with it.",
        "Lot {lot} is {state}.",
        "Take the lot off the shelf; do not mix it. Where only some of its packs are affected, send the sealed ones as an entry of their "
            + "own.",
        new("a kit is mixed whole or not at all", "/docs/pour-plans", Basis.Derived));

    public static FindingDefinition LotQuarantined { get; } = Define("lot-quarantined", "2026-12", Actor.Office,
        [Severity.Stop, Severity.Note],
        "A lot is held in quarantine. It is never used; a stop where the stock would be enough with it.",
        "Lot {lot} is quarantined.",
        "Leave the lot alone until whoever holds it has released it.",
        new("the request says so", "stock", Basis.Derived));

    public static FindingDefinition StorageOutsideRange { get; } = Define("storage-outside-range", "2026-12", Actor.Office,
        [Severity.Stop, Severity.Note],
        "A lot was stored colder or warmer than the sheet allows. It is never used; a stop where the stock would be enough with it.",
        "Lot {lot} was stored at {measured}; the sheet allows {minimum} to {maximum}.",
        "Do not mix the lot; ask the compound's maker whether it can be kept.",
        Source.DataSheet("storage"));

    public static FindingDefinition LotReserved { get; } = Note("lot-reserved", "2026-12", Actor.Office,
        "A lot is kept for another job. It is not used.",
        "Lot {lot} is kept for {job}.",
        "Plan without it, or have it released for this job.",
        new("the request says so", "stock", Basis.Derived));

    public static FindingDefinition LotExpiryMissing { get; } = Define("lot-expiry-missing", "2026-12", Actor.Office,
        [Severity.Unknown, Severity.Note],
        "A lot has no last good day, or a part that goes into the mix has none. It is not used; a missing fact where the plan would have "
            + "needed it.",
        "Lot {lot} has no expiry date ({part}).",
        "Read the date off the packs and send it.",
        Prudence);

    public static FindingDefinition ExpiryBeyondShelfLife { get; } = Caution("expiry-beyond-shelf-life", "2026-12", Actor.Office,
        "A lot's expiry lies later than its date of manufacture and the sheet's shelf life allow.",
        "Lot {lot} is marked good until {expiresOn}; made on {madeOn} with a shelf life of {limit} it is good until {lastDay}.",
        "Ask the compound's maker which date holds.",
        Source.DataSheet("shelfLife"));

    public static FindingDefinition StockShort { get; } = Caution("stock-short", "2026-12", Actor.Office,
        "The usable stock does not cover the job.",
        "Usable stock holds {measured}; {limit} is needed.",
        "Buy what the plan lists before anything is mixed.",
        new("whole kits against the stock of the request", "", Basis.Derived));

    public static FindingDefinition StockDoesNotDivide { get; } = Caution("stock-does-not-divide", "2026-12", Actor.Lead,
        "The stock is enough in all, but not in whole kits for each mix inside the pot life.",
        "The usable stock can't be divided into whole kits for mixes that are used up in time.",
        "Buy what the plan lists, or use more mixers or a cooler compound.",
        new("whole kits against the stock of the request", "", Basis.Derived));

    public static FindingDefinition BudgetSpent { get; } = Define("budget-spent", "2026-12", Actor.Integrator, [Severity.Unknown],
        "No kits were found within the steps that a request may take.",
        "The job is too large for a plan of its kits.",
        "Plan fewer ends at a time.",
        new("the steps of a calculation are counted and limited", "/docs/decisions", Basis.Derived));
}
