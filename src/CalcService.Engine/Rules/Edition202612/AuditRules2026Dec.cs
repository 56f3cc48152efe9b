using CalcService.Engine.Provenance;

namespace CalcService.Engine.Rules.Edition202612;

/// <summary>The limits of an audit in the edition of November 2026.</summary>
public static class AuditRules2026Dec
{
    private const string Handbook = "NIST/SEMATECH e-Handbook of Statistical Methods";

    public static AuditRules Rules { get; } = new()
    {
        VolumeSpread = new("recorded volume outside what basket and rope give, at most", Measure.Fraction(.10), Source.CommonPractice),
        VolumeFar = new("recorded volume outside what basket and rope give, from which on it tells of no whole cone", Measure.Fraction(.5),
            new("half a basket grips half its wires", "/docs/record-audits", Basis.Derived)),
        ControlLimit = new("standard deviations of the control limits", Measure.Count(3), new(Handbook, "6.3.2.2", Basis.Published)),
        EwmaWeight = new("weight of the newest value in a moving average", Measure.Fraction(.3), new(Handbook, "6.3.2.4", Basis.Published)),
        Coverage = new("share of all ends inside a tolerance limit", Measure.Fraction(.95), Source.CommonPractice),
        Confidence = new("confidence of a tolerance limit", Measure.Fraction(.95), Source.CommonPractice),
        FirmFrom = new("records from which on a chart is more than a beginning", Measure.Count(20), Source.CommonPractice),
    };
}
