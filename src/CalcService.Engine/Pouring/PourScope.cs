using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>What the steps of one plan share: the question, the rules, and where findings, assumptions and trace go.</summary>
internal sealed record PourScope(PourPlanInput Input, PouringRules Rules, Budget Budget, CancellationToken CancellationToken)
{
    /// <summary>All steel that was read.</summary>
    public SteelReadings Steel { get; } = new(Input);

    public FindingList Findings { get; } = new();

    public List<Assumption> Assumptions { get; } = [];

    public Trace Trace { get; } = new(Budget.Trace);

    public void Find(FindingDefinition definition, string pointer, Measure? measured = null, Measure? limit = null,
        IReadOnlyList<string>? related = null, Severity? severity = null, Source? source = null, params FindingWord[] words) =>
        Findings.Add(new Finding(definition, severity ?? definition.Severities[0], pointer)
        {
            Measured = measured,
            Limit = limit,
            Related = related ?? [],
            Source = source,
            Words = words,
        });

    /// <summary>Allowance on the resin, the rules' where none is given.</summary>
    public double Allowance => Input.Allowance ?? Rules.Allowance.Value!.Value.Si;

    /// <summary>What a mix needs besides the baskets: what stays in its vessel, and its witness sample where one is stated.</summary>
    public double VesselResidueM3 => (Input.VesselResidueM3 ?? 0) + (Input.WitnessSampleM3 ?? 0);

    /// <summary>Kits that are mixed side by side.</summary>
    public int Mixers => Input.Mixers ?? 1;

    /// <summary>Time to fill one basket of an end.</summary>
    public double? PourTimeS(int end) => Input.Ends[end].PourTimeS ?? Input.PourTimeS;

    /// <summary>The sheet doesn't state what a safety rule needs.</summary>
    public void SheetSilent(string pointer, string what) =>
        Find(PouringFindings.SheetSilent, pointer, words: new FindingWord("what", what));

    /// <summary>Only somebody who asks for a quote wants to know what it assumes: for the crew each line of the take-off says where it comes from.</summary>
    public void AssumeForQuote(string pointer, string text, Measure? value, AssumptionOrigin origin)
    {
        if (Input.Quote is not null)
        {
            Assume(pointer, text, value, origin);
        }
    }

    public void Assume(string pointer, string text, Measure? value, AssumptionOrigin origin) =>
        Assumptions.Add(new(pointer, text, value, origin));
}
