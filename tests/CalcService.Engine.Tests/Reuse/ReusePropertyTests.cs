using CalcService.Engine.Findings;
using CalcService.Engine.Reuse;
using CsCheck;
using static CalcService.Engine.Tests.Reuse.GoodSocket;

namespace CalcService.Engine.Tests.Reuse;

/// <summary>What holds for every socket.</summary>
public sealed class ReusePropertyTests
{
    /// <summary>Wear in each place, in shares of the size.</summary>
    private sealed record Worn(double Bore, double Oval, double Hole, double Pin, double Gap, double Ear, double PitMm, double Outer);

    private static readonly Gen<Worn> Some =
        Gen.Select(Gen.Double[0, .03], Gen.Double[0, .03], Gen.Double[0, .06], Gen.Double[0, .03], Gen.Double[0, .04], Gen.Double[0, .06],
        Gen.Double[0, 1], Gen.Double[0, .05],
            (bore, oval, hole, pin, gap, ear, pit, outer) => new Worn(bore, oval, hole, pin, gap, ear, pit, outer));

    [Fact]
    public void More_wear_never_makes_the_disposition_better_nor_a_part_stronger() =>
        Gen.Select(Some, Some, Gen.Double[30, 80]).Sample((some, more, loadKn) =>
        {
            var before = Assess(Of(some, loadKn)).Result;
            var after = Assess(Of(Sum(some, more), loadKn)).Result;
            Assert.True(after.Disposition >= before.Disposition, $"{before.Disposition} became {after.Disposition}");
            Assert.All(before.AsMeasured!.Parts.Zip(after.AsMeasured!.Parts),
                pair => Assert.True(pair.Second.Worst >= pair.First.Worst * (1 - 1e-12), pair.First.Id));
            Assert.All(after.AsMade!.Parts.Zip(after.AsMeasured.Parts),
                pair => Assert.True(pair.Second.Worst >= pair.First.Worst * (1 - 1e-12), pair.First.Id));
            Assert.True(after.RemainingStrengthN <= before.RemainingStrengthN * (1 + 1e-12));
        }, iter: 300);

    [Fact]
    public void More_load_never_makes_the_disposition_better() =>
        Gen.Select(Some, Gen.Double[10, 100], Gen.Double[1, 2]).Sample(
            (worn, load, factor) =>
            Assert.True(Assess(Of(worn, load * factor)).Result.Disposition >= Assess(Of(worn, load)).Result.Disposition), iter: 200);

    /// <summary>Two gaps, whatever they are, never pass either: all pairs.</summary>
    [Fact]
    public void Two_missing_facts_never_pass()
    {
        // A reading that is too coarse is one that is there: another size may settle it.
        foreach (var first in ReuseGaps.All.Where(gap => gap.Code != "reading-too-coarse"))
        {
            var once = first.Change(Input);
            foreach (var second in ReuseGaps.All)
            {
                // A rope that is gone with its use, or a station gone twice, still leaves a gap.
                var outcome = Assess(second.Change(once));
                Assert.True(outcome.Decision >= Decision.Undetermined, $"{first.Pointer} and {second.Pointer}");
            }
        }
    }

    private static Worn Sum(Worn a, Worn b) =>
        new(a.Bore + b.Bore, a.Oval + b.Oval, a.Hole + b.Hole, a.Pin + b.Pin, a.Gap + b.Gap, a.Ear + b.Ear, a.PitMm + b.PitMm,
        a.Outer + b.Outer);

    private static ReuseInput Of(Worn worn, double loadKn)
    {
        var (drawn, basket) = (Input.Socket.Nominal, Input.Socket.Nominal.Basket);
        return For(use =>
            use with { RatedLoadN = loadKn * 1e3,
            ProofLoadN = null })(Socket(socket =>
            socket with { RatedLoadN = 80e3, ProofRatingN = null, PinYieldStrengthPa = null })(Found(found => found with
        {
            Stations = [.. new[] { 0, .5, 1 }.Select(share =>
            {
                var bore = basket.DiameterAtM(share) * (1 + worn.Bore);
                return new BoreStation(share * basket.LengthM, [bore, bore + (basket.DiameterAtM(share) * worn.Oval)]);
            })],
            PinHoleDiametersM = [drawn.PinHoleDiameterM!.Value, drawn.PinHoleDiameterM.Value * (1 + worn.Hole)],
            PinDiameterM = drawn.PinDiameterM * (1 - worn.Pin),
            EarGapM = drawn.EarGapM * (1 + worn.Gap),
            EarThicknessM = drawn.EarThicknessM * (1 - worn.Ear),
            PitDepthM = worn.PitMm * 1e-3,
            OuterAtSmallEndM = drawn.OuterAtSmallEndM * (1 - worn.Outer),
            OuterAtMouthM = drawn.OuterAtMouthM * (1 - worn.Outer),
        })(Input)));
    }
}
