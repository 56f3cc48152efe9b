using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;
using CsCheck;

namespace CalcService.Engine.Tests.Inspection;

/// <summary>
/// What has to hold between the answers to two ends that differ in one thing. The numbers are those of the list of relations.
/// </summary>
public sealed class InspectionRelationTests
{
    /// <summary>Facts, each with what takes it away and the members that a finding would name where it did not satisfy its rule.</summary>
    private static readonly (string[] Pointers, Func<InspectionInput, InspectionInput> Remove)[] Facts =
    [
        (["/ruleSet"], end => end with { RuleSet = null }),
        (["/compound"], end => end with { Compound = null }),
        (["/rope/measuredDiameter"], end => end with { Rope = end.Rope with { MeasuredDiameterM = null } }),
        (["/rope/function", "/inspection/brokenWires"], end => end with { Rope = end.Rope with { Function = RopeFunction.Unknown } }),
        (["/rope/layLength", "/inspection/brokenWires"], end => end with { Rope = end.Rope with { LayLengthM = null } }),
        (["/inspection/brokenWires"], end => end with { BrokenWires = null }),
        (["/inspection/brokenWires"],
        end => end with { BrokenWires = end.BrokenWires?.Select(one => one with { FromMouthM = null }).ToArray() }),
        (["/inspection/brokenWires"],
        end => end with { BrokenWires = end.BrokenWires?.Select(one => one with { InOneStrand = null }).ToArray() }),
        (["/inspection/brokenWires"],
        end => end with { BrokenWires = end.BrokenWires?.Select(one => one with { Place = WirePlace.Unknown }).ToArray() }),
        (["/inspection/cracks"], end => end with { Cracks = null }),
        (["/inspection/corrosion"], end => end with { Corrosion = Degree.Unknown }),
        (["/inspection/wear"], end => end with { Wear = Degree.Unknown }),
        (["/inspection/bendAtMouth"], end => end with { BendAtMouth = null }),
        (["/inspection/improperlyApplied"], end => end with { ImproperlyApplied = null }),
        (["/inspection/coneMovement"], end => end with { ConeMovement = null }),
        (["/inspection/rustBleed"], end => end with { RustBleed = null }),
        (["/inspection/lubricant"], end => end with { Lubricant = LubricantState.Unknown }),
        (["/inspection/highestTemperature"], end => end with { HighestTemperatureK = null }),
        (["/inspection/chemicals"], end => end with { Chemicals = null }),
        (["/inspection/socketedOn"], end => end with { SocketedOn = null }),
        (["/inspection/baselineDiameter", "/rope/measuredDiameter"], end => end with { BaselineDiameterM = null }),
        (["/inspection/drumTurnsLeft"], end => end with { DrumTurnsLeft = null }),
        (["/inspection/drumDiameter", "/inspection/drumTurnsLeft"], end => end with { DrumDiameterM = null }),
        (["/inspection/lengthLeft"], end => end with { LengthLeftM = null }),
        (["/inspection/strengthLoss"], end => end with { StrengthLoss = null }),
        (["/attachment/efficiency"], end => end with { Attachment = end.Attachment with { Efficiency = null } }),
        (["/attachment/resinByDesign"], end => end with { Attachment = end.Attachment with { ResinByDesign = null } }),
    ];

    private static readonly Gen<BrokenWires> AnyWires = Gen.Select(Gen.Int[1, 4], Gen.Enum<WirePlace>(), Gen.Double[0, 1], Gen.Bool,
        Gen.Int[1, 4], Gen.Bool)
        .Select((count, place, from, placed, strand, told) =>
        new BrokenWires(count, place, placed ? from : null, told ? Math.Min(strand, count) : null));

    private static readonly Gen<bool?> AnyFact = Gen.Int[0, 5].Select(choice => choice switch { 0 => (bool?)null, 1 => true, _ => false });

    private static readonly Gen<Degree> AnyDegree = Gen.Int[0,
        5].Select(choice => choice switch { 0 => Degree.Unknown, 1 => Degree.Light, 2 => Degree.Heavy, _ => Degree.None });

    private static readonly Gen<InspectionInput> AnyFound = Gen.Select(
        Gen.Select(Gen.Int[0, 5].Select(set => set < 5 ? InspectionRules.RuleSets[set] : null), Gen.Enum<RopeFunction>(), Gen.Bool,
        AnyWires.Array[0, 3]),
        Gen.Select(AnyFact, AnyDegree, AnyDegree, AnyFact),
        Gen.Select(Gen.Double[.0186, .0204], Gen.Double[0, .13], Gen.Double[1, 8], Gen.Double[0, 8], Gen.Double[-20, 80]))
        .Select((end, seen, sizes) => GoodInspection.Under(end.Item1) with
        {
            Rope = GoodInspection.Input.Rope with { Function = end.Item2, LayLengthM = end.Item3 ? .13 : null,
                MeasuredDiameterM = sizes.Item1 },
            BrokenWires = end.Item4,
            Cracks = seen.Item1,
            Corrosion = seen.Item2,
            Wear = seen.Item3,
            BendAtMouth = seen.Item4,
            StrengthLoss = sizes.Item2,
            DrumTurnsLeft = sizes.Item3,
            LengthLeftM = sizes.Item4,
            HighestTemperatureK = sizes.Item5 + GoodInspection.Zero,
        });

    /// <summary>2,000 random ends, each made worse in one of nine ways.</summary>
    [Fact]
    public void Relation_26_more_wear_more_broken_wires_or_less_rope_left_never_betters_the_end() =>
        Gen.Select(AnyFound, AnyWires, Gen.Int[0, 8], Gen.Double[0, .004]).Sample((end, wires, way, more) =>
    {
        var worse = way switch
        {
            0 => end with { BrokenWires = [.. end.BrokenWires!, wires] },
            1 when end.BrokenWires!.Count > 0 =>
            end with { BrokenWires = [end.BrokenWires[0] with { Count = end.BrokenWires[0].Count + 1 }, .. end.BrokenWires.Skip(1)] },
            2 => end with { Wear = end.Wear == Degree.Unknown ? Degree.Unknown : (Degree)Math.Min((int)end.Wear + 1, (int)Degree.Heavy) },
            3 => end with { Corrosion = end.Corrosion == Degree.Unknown ? Degree.Unknown
            : (Degree)Math.Min((int)end.Corrosion + 1, (int)Degree.Heavy) },
            4 => end with { Rope = end.Rope with { MeasuredDiameterM = end.Rope.MeasuredDiameterM - more } },
            5 => end with { StrengthLoss = end.StrengthLoss + (10 * more) },
            6 => end with { LengthLeftM = Math.Max(0, end.LengthLeftM!.Value - (1000 * more)) },
            7 => end with { DrumTurnsLeft = Math.Max(0, end.DrumTurnsLeft!.Value - (1000 * more)) },
            _ => end with { HighestTemperatureK = end.HighestTemperatureK + (1e4 * more) },
        };
        var (before, after) = (GoodInspection.Inspect(end), GoodInspection.Inspect(worse));
        Assert.True(before.Result.Disposition <= after.Result.Disposition, $"way {way}");
        Assert.True(before.Decision <= after.Decision, $"way {way}");
    }, iter: 2000);

    /// <summary>2,000 random ends, each with one of its facts taken away that no finding names.</summary>
    [Fact]
    public void Relation_27_fact_that_satisfied_its_rule_absent_or_unknown_never_betters_the_answer() =>
        Gen.Select(AnyFound, Gen.Int[0, Facts.Length - 1]).Sample((end, fact) =>
    {
        var before = GoodInspection.Inspect(end);
        var (pointers, remove) = Facts[fact];
        if (IsNamed(before, pointers))
        {
            return;
        }

        var after = GoodInspection.Inspect(remove(end));
        Assert.True(before.Decision <= after.Decision, pointers[0]);
        Assert.True(before.Result.Disposition <= after.Result.Disposition, pointers[0]);
    }, iter: 2000);

    /// <summary>1,000 random ends under a random limit made stricter.</summary>
    [Fact]
    public void Relation_27_stricter_limit_never_betters_the_answer() =>
        Gen.Select(AnyFound, Gen.Int[0, Editions.Known.Current.Inspection.BrokenWires.Count + 5]).Sample((end, which) =>
    {
        var book = Editions.Known.Current;
        var rules = book.Inspection;
        var wires = rules.BrokenWires.ToArray();
        if (which < wires.Length)
        {
            wires[which] = wires[which] with { Limit = Scaled(wires[which].Limit, .5) };
        }

        var stricter = (which - wires.Length) switch
        {
            0 => rules with { NominalDiameterLoss = Scaled(rules.NominalDiameterLoss, .5) },
            1 => rules with { BaselineDiameterLoss = Scaled(rules.BaselineDiameterLoss, .5) },
            2 => rules with { StrengthLoss = Scaled(rules.StrengthLoss, .5) },
            3 => rules with { DrumTurns = Scaled(rules.DrumTurns, 2) },
            4 => rules with { ResocketAfter = Scaled(rules.ResocketAfter, .5) },
            5 => rules with { CutBeyond = rules.CutBeyond with { Value = Measure.Length(2 * rules.CutBeyond.Si) } },
            _ => rules with { BrokenWires = wires },
        };
        Outcome<InspectionResult> Inspect(InspectionRules by) =>
            ServiceInspection.Calculate(end, book with { Inspection = by }, new Budget(Budget.DefaultSteps),
            TestContext.Current.CancellationToken);
        Assert.True(Inspect(rules).Decision <= Inspect(stricter).Decision);
    }, iter: 1000);

    /// <summary>
    /// 2,000 random ends with up to 200 wires broken, under every rule set: a row that is reached, by whatever set, never passes.
    /// </summary>
    [Fact]
    public void Limit_that_is_reached_by_any_rule_set_that_is_asked_never_passes() =>
        Gen.Select(AnyFound, AnyWires, Gen.Int[1, 200]).Sample((end, wires, count) =>
    {
        var inspection = GoodInspection.Inspect(end with { BrokenWires = [.. end.BrokenWires!, wires with { Count = count }] });
        var reached = inspection.Result.Checks.Where(check => check.Id.StartsWith("broken-wires", StringComparison.Ordinal)
            && check.Measured!.Value.Si >= ((Measure?)check.Limit)!.Value.Si).ToArray();
        Assert.All(reached, check => Assert.NotEqual(CheckOutcome.Pass, check.Outcome));
        if (reached.Length > 0 || count >= 6)
        {
            Assert.True(inspection.Decision >= Decision.Undetermined && inspection.Result.Disposition >= ServiceDisposition.Hold);
        }
    }, iter: 2000);

    private static bool IsNamed(Outcome<InspectionResult> inspection, string[] pointers) => inspection.Findings.Any(finding =>
        finding.Related.Append(finding.Pointer)
        .Any(named => pointers.Any(pointer => named == pointer || named.StartsWith(pointer + "/", StringComparison.Ordinal))));

    private static RuleLimit Scaled(RuleLimit limit, double by) => (Measure?)limit is { } number
        ? new(limit.RuleSet, limit.Text, number with { Si = number.Si * by }, limit.Source) : limit;
}
