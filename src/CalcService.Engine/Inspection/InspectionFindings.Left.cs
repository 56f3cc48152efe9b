using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Inspection;

/// <content>Findings of the cut and of the rope that is left.</content>
public static partial class InspectionFindings
{
    public static FindingDefinition CutBeyond { get; } = Caution("cut-beyond-damage", "2026-12", Actor.Inspector,
        "How far beyond the damage a rope is cut comes from manuals of the US Army and Navy; elsewhere it is a guide.",
        "Cut off {measured up} of rope from the socket on, at least: {limit up} beyond the damage.",
        "Ask the rope's maker or the code of the machine whether more has to go.",
        limits: rules => [rules.Inspection.CutBeyond]);

    public static FindingDefinition DrumTurnsFew { get; } = Stop("drum-turns-few", "2026-12", Actor.Inspector,
        "Fewer turns stay on the drum than hold the rope.",
        "Turns that stay on the drum: {measured}; at least {limit} are asked for.",
        "Shorten the working length or fit a longer rope.",
        limits: rules => [rules.Inspection.DrumTurns]);

    public static FindingDefinition DrumTurnsMissing { get; } = Unknown("drum-turns-missing", "2026-12", Actor.Inspector,
        "How many turns stay on the drum, after the cut where one is needed, is not known.",
        "The turns that stay on the drum can't be told.",
        "Count them at the longest working length; where rope is cut off, give the drum's diameter too.",
        rules => [rules.Inspection.DrumTurns]);

    public static FindingDefinition RopeLeftShort { get; } = Stop("rope-left-short", "2026-12", Actor.Inspector,
        "The rope is too short for its work after the cut.",
        "{measured} can be cut off; {limit} has to go.",
        "Fit a new rope.",
        new("what the request states", "/docs/service-inspections", Basis.Derived));

    public static FindingDefinition RopeLeftUnknown { get; } = Caution("rope-left-unknown", "2026-12", Actor.Inspector,
        "A cut is needed, and nobody says whether the rope is then long enough.",
        "Nobody says how much rope can be cut off.",
        "Measure what can be spared before it is cut.",
        new("a cut that leaves too little is found out too late", "/docs/service-inspections", Basis.Derived));
}
