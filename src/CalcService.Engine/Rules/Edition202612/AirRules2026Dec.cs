using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>Limits for vapours in the air of workplaces in the edition of December 2026, each with the date at which it was read.</summary>
public static class AirRules2026Dec
{
    private const string Chemical = "OSHA, chemical sampling information CH_268200, styrene";

    private static readonly Source General = new("29 CFR 1910.1000", "Table Z-2, styrene", Basis.Law);
    private static readonly Source Construction = new("29 CFR 1926.55", $"Appendix A, styrene; as listed in {Chemical}", Basis.Law);
    private static readonly Source Shipyard = new("29 CFR 1915.1000", $"Table Z, styrene; as listed in {Chemical}", Basis.Law);
    private static readonly Source California = new("Cal/OSHA permissible exposure limits", $"styrene, of 2012; as listed in {Chemical}",
        Basis.Law);
    private static readonly Source Niosh = new("NIOSH Pocket Guide to Chemical Hazards", "styrene", Basis.Published);

    public static IReadOnlyList<AirLimits> All { get; } =
    [
        new("styrene", 104.15,
            [
                new("US", Workplace.GeneralIndustry,
                    Ceiling: new("styrene in air, US general industry, ceiling (up to 600 ppm for 5 min in any 3 h)",
                        Measure.AirFraction(200e-6), General),
                    ShortTerm: null,
                    TimeWeighted: new("styrene in air, US general industry, eight-hour mean", Measure.AirFraction(100e-6),
                        General)) { Name = "US general industry" },
                new("US", Workplace.Construction,
                    Ceiling: new("styrene in air, US construction, ceiling", Measure.AirFraction(100e-6), Construction),
                    ShortTerm: null, TimeWeighted: null) { Name = "US construction" },
                new("US", Workplace.Shipyard, Ceiling: null, ShortTerm: null,
                    TimeWeighted: new("styrene in air, US shipyards, eight-hour mean", Measure.AirFraction(100e-6), Shipyard)) { Name =
                        "US shipyards" },
                new("US-CA", Workplace: null,
                    Ceiling: new("styrene in air, California, ceiling", Measure.AirFraction(500e-6), California),
                    ShortTerm: new("styrene in air, California, short term", Measure.AirFraction(100e-6), California),
                    TimeWeighted: new("styrene in air, California, eight-hour mean", Measure.AirFraction(50e-6), California)) { Name =
                        "California" },
            ],
            RecommendedShortTerm: new("styrene in air, short term", Measure.AirFraction(100e-6), Niosh),
            RecommendedTimeWeighted: new("styrene in air, working-day mean", Measure.AirFraction(50e-6), Niosh),
            FlashPoint: new("styrene, flash point", Measure.Temperature(31 + 273.15), Niosh)),
    ];
}
