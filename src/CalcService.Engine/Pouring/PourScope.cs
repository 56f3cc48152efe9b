using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>What the steps of one plan share: the question and the rules.</summary>
internal record PourScope(PourPlanInput Input, RuleBook Book, Budget Budget, CancellationToken CancellationToken)
    : CalculationScope(Book, Budget)
{
    private readonly Dictionary<int, GelModel?> _gels = [];

    public PouringRules Rules => Book.Pouring;

    /// <summary>The readings: those of the question, in a probe others.</summary>
    public PourConditions Conditions { get; protected init; } = Input.Conditions;

    /// <summary>All steel that was read.</summary>
    public SteelReadings Steel { get; protected init; } = new(Input.Ends, Input.Conditions.SteelK);

    /// <summary>Allowance on the resin, the rules' where none is given.</summary>
    public double Allowance => Input.Allowance ?? Rules.Allowance.Si;

    /// <summary>What a mix needs besides the baskets: what stays in its vessel, and its witness sample where one is stated.</summary>
    public double VesselResidueM3 => (Input.VesselResidueM3 ?? 0) + (Input.WitnessSampleM3 ?? 0);

    /// <summary>Kits that are mixed side by side.</summary>
    public int Mixers => Input.Mixers ?? 1;

    /// <summary>Gel time against temperature with a dose, or null where the sheet has none for it.</summary>
    public GelModel? GelWith(int doses)
    {
        if (!_gels.TryGetValue(doses, out var model))
        {
            var assumed = Rules.AssumedActivationEnergy;
            _gels[doses] = model = GelModel.For(Input.Compound, doses, new(assumed.Low.Si, assumed.Expected.Si, assumed.High.Si));
        }

        return model;
    }

    /// <summary>Time to fill one basket of an end.</summary>
    public double? PourTimeS(int end) => Input.Ends[end].PourTimeS ?? Input.PourTimeS;

    /// <summary>The rope against the thinnest of which the basket is so small that air stays caught at its small end.</summary>
    public Judged VentOf(PourEnd end) => Rules.VentUpTo.Judge(Measure.Length(end.Rope.DiameterM));

    /// <summary>
    /// Only somebody who asks for money wants to know what it assumes: for the crew each line of the take-off says where it comes from.
    /// </summary>
    public bool HasPrices => Input.Quote is not null;

    /// <summary>A quote asks for no facts and no readings.</summary>
    public bool IsQuote => Input.Purpose == Purpose.Quote;

    /// <summary>Whether anybody says which lots there are to mix.</summary>
    public bool HasLots => Input.Stock?.Any(lot => lot.Count > 0) == true;

    /// <summary>The air, where it was read.</summary>
    public Reading? Air => Reading.Of(Reading.Air, PourPointers.Air, Conditions.AirK);

    /// <summary>The compound before it is mixed, where it was read.</summary>
    public Reading? Compound => Reading.Of(Reading.Compound, PourPointers.Compound, Conditions.CompoundK);

    /// <summary>Facts of work that lies ahead: all of them are one finding, since each is asked for again at its hold point.</summary>
    private List<StatedFact> Ahead { get; } = [];

    /// <summary>Asks for the facts of one place.</summary>
    public void Ask(IEnumerable<StatedFact> facts)
    {
        if (Input.Purpose == Purpose.Plan)
        {
            Ahead.AddRange(facts);
        }
        else
        {
            this.CheckStated(Input.Purpose, facts);
        }
    }

    /// <summary>Says what of the work that lies ahead isn't stated yet.</summary>
    public void CheckAhead() => this.CheckStated(Purpose.Plan, Ahead);

    /// <summary>The sheet doesn't state what a safety rule needs; a quote does without.</summary>
    public void SheetSilent(string pointer, string what)
    {
        if (!IsQuote)
        {
            SheetSilence.SheetSilent(this, pointer, what);
        }
    }
}
