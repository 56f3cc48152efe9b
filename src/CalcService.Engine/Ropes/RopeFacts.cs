using CalcService.Engine.Provenance;

namespace CalcService.Engine.Ropes;

/// <summary>The numbers of a rope, each from its certificate where there is one, else estimated from its class.</summary>
public sealed record RopeFacts
{
    public double? BreakingForceN { get; private init; }

    public bool BreakingForceCertified { get; private init; }

    /// <summary>What class, grade and diameter give, whatever the certificate says.</summary>
    public double? EstimatedBreakingForceN { get; private init; }

    public double? MetallicAreaM2 { get; private init; }

    public double? MassKgPerM { get; private init; }

    public int? WireCount { get; private init; }

    public double? WireDiameterM { get; private init; }

    /// <summary>Gathers the facts; what neither certificate nor class gives stays null.</summary>
    /// <param name="rope">The rope.</param>
    /// <param name="pointer">Where the rope stands in the request.</param>
    /// <param name="assumptions">Takes an entry for each estimate.</param>
    /// <param name="trace">Takes the formulas.</param>
    public static RopeFacts Of(Rope rope, string pointer, ICollection<Assumption> assumptions, Trace trace)
    {
        var factors = RopeClassTable.Find(rope.Construction)?.FactorsFor(rope.Core);
        var area = rope.MetallicAreaM2;
        if (area is null && factors is not null)
        {
            area = RopeFormulas.MetallicAreaM2(rope.DiameterM, factors.MetallicArea, trace);
            assumptions.Add(new(pointer + "/metallicArea", "metallic area estimated from the rope class and the nominal diameter",
                Measure.Area(area.Value), AssumptionOrigin.Estimate));
        }

        var wires = rope.WireCount;
        if (wires is null && factors is not null)
        {
            wires = factors.Wires;
            assumptions.Add(new(pointer + "/wireCount", "number of wires taken from the designation of the rope class",
                Measure.Count(wires.Value), AssumptionOrigin.Estimate));
        }

        var wire = rope.OuterWireDiameterM;
        if (wire is null && area is { } metal && wires is { } count)
        {
            wire = RopeFormulas.MeanWireDiameterM(metal, count, trace);
            assumptions.Add(new(pointer + "/outerWireDiameter", "wire diameter taken as the mean over the metallic area",
                Measure.Length(wire.Value), AssumptionOrigin.Estimate));
        }

        var estimate = EstimateN(rope, factors, rope.CertifiedBreakingForceN is null ? trace : Trace.None);
        if (rope.CertifiedBreakingForceN is null && estimate is { } force)
        {
            assumptions.Add(new(pointer + "/certificate/breakingForce",
                "minimum breaking force estimated from the rope class and grade; a certificate beats it",
                Measure.Force(force), AssumptionOrigin.Estimate));
        }

        return new RopeFacts
        {
            BreakingForceN = rope.CertifiedBreakingForceN ?? estimate,
            BreakingForceCertified = rope.CertifiedBreakingForceN is not null,
            EstimatedBreakingForceN = estimate,
            MetallicAreaM2 = area,
            MassKgPerM = factors is null ? null : RopeFormulas.MassKgPerM(rope.DiameterM, factors.Mass, trace),
            WireCount = wires,
            WireDiameterM = wire,
        };
    }

    private static double? EstimateN(Rope rope, RopeFactors? factors, Trace trace) =>
        factors is not null && rope.Grade is { } grade
        ? RopeFormulas.BreakingForceN(rope.DiameterM, grade * 1e6, factors.BreakingForce, trace) : null;
}
