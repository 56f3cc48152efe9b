using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of proof loading in the edition of November 2026.</summary>
public static class ProofRules2026Dec
{
    private static readonly Source Energy = new("DOE-STD-1090-96",
        "11.3.4.2, 11.3.5.2, 15.4.7: test loads of slings, read for kinds other than wire rope", Basis.Published);

    public static ProofRules Rules { get; } = new()
    {
        Steps = [Step("first", .25), Step("second", .5), Step("third", .75), Step("last", 1)],
        Under = new("test load below what is asked for, at most", Measure.Fraction(.05), Energy),
        Over = new("test load above what is asked for, at most", Measure.Fraction(0), Energy),
        ShrinkageSpread = new("shrinkage of a compound off its sheet, either way", Measure.Fraction(.5), Source.CommonPractice),
    };

    private static RuleNumber Step(string which, double share) => new($"{which} step, share of the proof load", Measure.Fraction(share),
        Source.CommonPractice);
}
