using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Pouring;
using CalcService.Engine.Ropes;
using CalcService.Engine.Tests.Audits;
using CsCheck;

namespace CalcService.Engine.Tests.Pouring;

/// <summary>What has to hold between the answers to related pours, by the number of the relation.</summary>
public sealed class PourRelationTests
{
    private const double Zero = GoodPour.Zero;

    private static readonly Gen<PourPlanInput> AnyPour =
        from air in Gen.Double[3, 33]
        from steel in Gen.Double[3, 33]
        from compound in Gen.Double[6, 33]
        from humidity in Gen.Double[.05, .95]
        from diameter in Gen.Double[.010, .040]
        from quantity in Gen.Int[2, 6]
        from isFibre in Gen.Bool
        select GoodPour.Input with
        {
            Conditions = GoodPour.Input.Conditions with { AirK = air + Zero, SteelK = steel + Zero, CompoundK = compound + Zero,
                RelativeHumidity = humidity },
            Ends = [Scaled(GoodPour.End("A", quantity), diameter, isFibre)],
            Stock = [GoodPour.Lot("L", "large", 9, "2026-12-31"), GoodPour.Lot("S", "small", 9, "2026-09-30")],
            PourTimeS = 10,
        };

    /// <summary>Facts that satisfy their rule, taken away, said to be unknown, or held against more.</summary>
    private static readonly (string What, Func<PourPlanInput, PourPlanInput> Change)[] Worse =
    [
        ("no bore", End(end => end with { Bore = null })),
            ("bore unknown", End(end => end with { Bore = Engine.Sockets.BoreState.Unknown })),
        ("no cleaner", End(end => end with { Cleaner = null })), ("cleaner unknown", End(end => end with { Cleaner = Cleaner.Unknown })),
        ("no fate of the core", End(end => end with { FibreCore = null })),
        ("fate of the core unknown", End(end => end with { FibreCore = BroomPart.Unknown })),
        ("no word of plastic", End(end => end with { Rope = end.Rope with { PlasticFilled = null } })),
        ("plastic unknown", End(end => end with { Rope = end.Rope with { PlasticFilled = Fact.Unknown } })),
        ("not dated dry", End(end => end with { DriedAt = null })), ("no tilt", End(end => end with { TiltRad = null })),
        ("no straight length", End(end => end with { StraightBelowM = null })),
        ("no metal", End(end => end with { Metal = null })),
        ("metal unknown", End(end => end with { Metal = Engine.Sockets.SocketMetal.Unknown })),
        ("no strength of the socket", End(end => end with { SocketBreakingForceN = null })),
        ("no core", End(end => end with { Rope = end.Rope with { Core = RopeCore.Unknown } })),
        ("no construction", End(end => end with { Rope = end.Rope with { Construction = null } })),
        ("no grade", End(end => end with { Rope = end.Rope with { Grade = null } })),
        ("no finish", End(end => end with { Rope = end.Rope with { Finish = WireFinish.Unknown } })),
        ("no word of ignition", At(c => c with { IgnitionSource = null })),
        ("ignition unknown", At(c => c with { IgnitionSource = Fact.Unknown })),
        ("no air", At(c => c with { AirK = null })), ("no steel", At(c => c with { SteelK = null })),
        ("no compound", At(c => c with { CompoundK = null })),
        ("no humidity", At(c => c with { RelativeHumidity = null })), ("no room", At(c => c with { Room = null })),
        ("no workplace", At(c => c with { Workplace = Engine.Rules.Workplace.Unknown })),
        ("no jurisdiction", At(c => c with { Jurisdiction = null })),
        ("packs unknown", Lots(lot => lot with { State = LotState.Unknown })),
        ("no word of quarantine", Lots(lot => lot with { Quarantined = null })),
        ("no storage", Lots(lot => lot with { Storage = null })), ("expired", Lots(lot => lot with { ExpiresOn = new(2026, 3, 11) })),
        ("expires sooner", Lots(lot => lot with { ExpiresOn = lot.ExpiresOn!.Value.AddDays(-300) })),
        ("no pour time", pour => pour with { PourTimeS = null }),
        ("shorter pot life", pour => pour with { Compound = pour.Compound with { PotLife = .27 * pour.Compound.PotLife } }),
        ("no pot life", pour => pour with { Compound = pour.Compound with { PotLife = null } }),
        ("narrower range",
        pour => pour with { Compound = pour.Compound with { Pouring = pour.Compound.Pouring is null ? null : new(8 + Zero, 26 + Zero) } }),
        ("no range", pour => pour with { Compound = pour.Compound with { Pouring = null } }),
        ("fewer doses", pour => pour with { Compound = pour.Compound with { MaximumDoses = 0 } }),
        ("own limit", At(c => c with { AirLimits = new(.1e-6, .1e-6, "the yard") })),
    ];

    /// <summary>Relation 10, for the pour itself: what a schedule stops as gelled before it was poured, no plan has poured.</summary>
    [Fact]
    public void Relation_10_mix_is_used_up_before_the_first_gel_in_a_cone() =>
        Gen.Select(AnyPour, Gen.Double[60, 1200]).Sample((pour, pourTime) =>
    {
        var plan = GoodPour.Plan(pour with { PourTimeS = pourTime });
        Assert.True(plan.Decision == Decision.DoNotProceed
            || plan.Result.Mixes.All(mix => !(mix.UsedInS > plan.Result.Gel?.InCone.EarliestS + 1e-6)),
            $"{plan.Result.Mixes.Max(mix => mix.UsedInS)} {plan.Result.Gel?.InCone.EarliestS}");
    }, iter: 300);

    [Fact]
    public void Relation_17_quantity_of_six_is_one_and_five() =>
        AnyPour.Sample(
            pour =>
            {
                var whole = GoodPour.Plan(pour);
                var (first, rest) = (pour.Ends[0] with { Quantity = 1 },
                    pour.Ends[0] with { Id = "B", Quantity = pour.Ends[0].Quantity - 1 });
                var split = GoodPour.Plan(pour with { Ends = [first, rest] });

                Assert.Equal(whole.Decision, split.Decision);
                Assert.Equal(whole.Result.Kits, split.Result.Kits);
                Assert.Equal((whole.Result.Cost, whole.Result.StockValue), (split.Result.Cost, split.Result.StockValue));
                Assert.Equal(whole.Result.Ends[0].Fill, split.Result.Ends[1].Fill);
                // One fact is one finding, however many entries tell it.
                Assert.Equal(whole.Findings.Select(finding => (finding.Definition.Code, finding.Severity)),
                    split.Findings.Select(finding => (finding.Definition.Code, finding.Severity)));
            },
            iter: 500);

    [Fact]
    public void Relation_18_flip_gives_the_decision_that_it_tells() =>
        AnyPour.Sample(
            pour =>
            {
                foreach (var flip in GoodPour.Plan(pour).Result.Flips)
                {
                    var value = flip.Value + ((flip.When == "above" ? 1 : -1) * 1e-5);
                    if (flip.Reading == "relativeHumidity" && value is > 1 or < .01)
                    {
                        continue;
                    }

                    var there = GoodPour.Plan(pour with { Conditions = With(pour.Conditions, flip.Reading, value) });
                    Assert.True(flip.To == there.Decision, $"{flip}: {there.Decision}");
                }
            },
            iter: 300);

    [Fact]
    public void Relation_27_less_known_or_more_asked_is_never_better() =>
        Gen.Select(AnyPour, Gen.Int[0, Worse.Length - 1].Array[0, 2], Gen.Int[0, Worse.Length - 1]).Sample(
            (pour, before, more) =>
            {
                var known = before.Where(index => !Worse[index].What.Contains("expire", StringComparison.Ordinal))
                    .Aggregate(pour, (known, index) => Worse[index].Change(known));
                var decision = GoodPour.Plan(known).Decision;
                // A reading that stops the pour doesn't satisfy its rule, and what is said to be unknown or not said at all doesn't either.
                if (decision != Decision.DoNotProceed && !before.Any(index => FactOf(index) == FactOf(more)))
                {
                    var less = GoodPour.Plan(Worse[more].Change(known)).Decision;
                    Assert.True(less >= decision, $"{string.Join(", ", before.Select(index => Worse[index].What))}, then {Worse[more].What}: {decision} becomes {less}");
                }
            },
            iter: 3000);

    [Fact]
    public void Relation_28_order_of_ends_and_lots_decides_nothing() =>
        Gen.Select(AnyPour, Gen.Double[.010, .040]).Sample(
            (pour, diameter) =>
            {
                var two = pour with { Ends = [pour.Ends[0], Scaled(GoodPour.End("B", 1), diameter, false) with { Bore = null }] };
                var (one, other) = (GoodPour.Plan(two),
                    GoodPour.Plan(two with { Ends = [.. two.Ends.Reverse()], Stock = [.. two.Stock!.Reverse()] }));
                Assert.Equal(one.Decision, other.Decision);
                Assert.Equal(one.Findings.Select(finding => finding.Definition.Code).Order(StringComparer.Ordinal),
                    other.Findings.Select(finding => finding.Definition.Code).Order(StringComparer.Ordinal));
                Assert.Equal(one.Result.Cost, other.Result.Cost);
            },
            iter: 300);

    [Fact]
    public void Relations_13_and_14_plan_and_audit_have_one_pot_life_and_one_dew_point() =>
        Gen.Select(Gen.Double[8, 33], Gen.Double[8, 33], Gen.Double[.05, .95]).Sample(
            (air, compound, humidity) =>
            {
                var plan = GoodPour.Plan(GoodPour.Input with
                {
                    Compound = GoodRecord.Sheet,
                    Conditions = GoodPour.Input.Conditions with { AirK = air + Zero, SteelK = 20 + Zero, CompoundK = compound + Zero,
                    RelativeHumidity = humidity },
                });
                var audit = GoodRecord.Audit(GoodRecord.Input with
                {
                    Readings = GoodRecord.Air((-.5, air), (30, air)) with { CompoundK = compound + Zero, RelativeHumidity = humidity },
                }).Result;
                Assert.Equal(plan.Result.Gel!.PotLifeS!.Value, audit.Recomputed.PotLifeS!.Value, 1e-9);
                Assert.Equal((plan.Result.DewPointK, plan.Result.FrostPointK), (audit.Recomputed.DewPointK, audit.Recomputed.FrostPointK));
                bool IsWet(IReadOnlyList<Finding> findings) => findings.Any(finding => finding.Definition == SteelFindings.SteelAtDewPoint);
                Assert.Equal(IsWet(plan.Findings),
                    audit.Checks.Any(check => check.Id == "dew-point" && check.Outcome == CheckOutcome.Fail
                    && check.Measured!.Value.Si <= check.Limit!.Value.Si));
            },
            iter: 300);

    /// <summary>The fact that is taken away, whichever way.</summary>
    private static string FactOf(int index) =>
        Worse[index].What.Replace("no ", "", StringComparison.Ordinal).Replace("word of ", "", StringComparison.Ordinal)
        .Replace(" unknown", "", StringComparison.Ordinal);

    private static PourConditions With(PourConditions conditions, string reading, double value) => reading switch
    {
        "airTemperature" => conditions with { AirK = value },
        "steelTemperature" => conditions with { SteelK = value },
        "compoundTemperature" => conditions with { CompoundK = value },
        _ => conditions with { RelativeHumidity = value },
    };

    private static PourEnd Scaled(PourEnd end, double diameter, bool isFibre) => end with
    {
        Rope = end.Rope with { DiameterM = diameter, Core = isFibre ? RopeCore.Fibre : RopeCore.Iwrc },
        FibreCore = isFibre ? BroomPart.Removed : null,
        Basket = end.Basket with { SmallEndDiameterM = diameter * 1.15, LargeEndDiameterM = diameter * 2.25, LengthM = diameter * 5.2 },
        SocketBreakingForceN = 1770e6 * .4 * diameter * diameter,
    };

    private static Func<PourPlanInput, PourPlanInput> End(Func<PourEnd, PourEnd> change) => pour =>
        pour with { Ends = [.. pour.Ends.Select(change)] };

    private static Func<PourPlanInput, PourPlanInput> At(Func<PourConditions, PourConditions> change) => pour =>
        pour with { Conditions = change(pour.Conditions) };

    private static Func<PourPlanInput, PourPlanInput> Lots(Func<StockLot, StockLot> change) => pour =>
        pour with { Stock = [.. pour.Stock!.Select(change)] };
}
