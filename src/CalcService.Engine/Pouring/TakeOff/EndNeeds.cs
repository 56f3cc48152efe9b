using CalcService.Engine.Ropes;

namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>What one end takes besides the compound: as the caller says, else as the rule set and common practice have it.</summary>
internal sealed record EndNeeds(int Seizings, double WireDiameterM, double WireM, double SealM3, double CleanerM3)
{
    public static EndNeeds Of(PourScope scope, Quote quote, PourEnd end, PlannedEnd planned)
    {
        scope.Trace.Of = end.Id;
        var diameter = end.Rope.DiameterM;
        var seizings = quote.SeizingCount ?? planned.Preparation.Seizings;
        var wire = quote.SeizingWireDiameterM ?? (diameter / EndMaterials.RopePerSeizingWire);
        var needs = new EndNeeds(
            seizings,
            wire,
            // The widest that the rule allows: a quote that runs short of wire is no use.
            Seizing.WireM(seizings, planned.Preparation.SeizingWidthMostM, diameter, wire, scope.Trace),
            quote.SealPerEndM3
                ?? EndMaterials.SealCollarM3(diameter, EndMaterials.CollarThickness * diameter, EndMaterials.CollarHeight * diameter,
                scope.Trace),
            quote.CleanerPerEndM3 ?? EndMaterials.CleanerM3(EndMaterials.CleanerBaths, planned.Fill.BasketM3, scope.Trace));
        scope.Trace.Of = "";
        return needs;
    }
}
