using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using static CalcService.Engine.Findings.FindingKinds;

namespace CalcService.Engine.Pouring;

/// <content>Findings of dose, gel time and pot life.</content>
public static partial class PouringFindings
{
    public static FindingDefinition DoseUncertain { get; } = Caution("dose-uncertain", "2026-12", Actor.Lead,
        "The uncertainty of the reading reaches over the edge of a dose band.",
        "Read as {measured}, give or take {uncertainty}: the dose is {lowDoses} for each kit at the cold end and {highDoses} at the warm "
            + "end.",
        "Read again with a better instrument, or bring air and steel away from the edge.",
        Source.DataSheet("doses"));

    public static FindingDefinition DoseEdge { get; } = Caution("dose-edge", "2026-12", Actor.Lead,
        "Air and steel lie in different dose bands of the sheet.",
        "By the steel the dose is {steelDoses} for each kit, by the air {airDoses}; the colder one decided.",
        "Bring air and steel closer together, and read both again right before mixing.",
        Source.DataSheet("doses"));

    public static FindingDefinition PourTimeMissing { get; } = Unknown("pour-time-missing", "2026-12", Actor.Lead,
        "Without the time to fill a basket nobody knows whether the pot life is enough.",
        "The time to fill one basket is not given.",
        "Give crew.pourTime.");

    public static FindingDefinition PotLifeTooShort { get; } = Stop("pot-life-too-short", "2026-12", Actor.Lead,
        "Mixing the kits for one basket and filling it takes longer than the compound can be used.",
        "Mixing {kits} kit(s) and filling one basket of {end} takes {measured}; the pot life is {limit}.",
        "Use cooler compound, larger kits or more mixers side by side, or shorten the fill. Do not pour compound that thickens.",
        Source.DataSheet("potLife"));

    public static FindingDefinition MixLargerThanMeasured { get; } = Caution("mix-larger-than-measured", "2026-12", Actor.Lead,
        "A mix is larger than the volume for which the sheet states its pot life: it warms itself more and gels sooner.",
        "Mix {mix} holds {measured}; the sheet's pot life is for {limit}.",
        "Make smaller mixes, or pour a large one out of the vessel at once.",
        Source.DataSheet("potLifeVolume"));
}
