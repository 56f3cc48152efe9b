using CalcService.Engine.Findings;

namespace CalcService.Engine.Compounds;

/// <summary>The order in which a sheet has its parts mixed.</summary>
internal static class MixingOrder
{
    /// <summary>A sheet whose order puts the dose after the hardener.</summary>
    internal static void CheckMixingOrder(this CalculationScope scope, CompoundSheet sheet)
    {
        var order = sheet.MixingOrder.ToList();
        var (dose, hardener) = (order.IndexOf(MixPart.Dose), order.IndexOf(MixPart.Hardener));
        if (dose >= 0 && hardener >= 0 && dose > hardener)
        {
            scope.Find(DoseFindings.DoseAfterHardener, "/compound/sheet/mixingOrder");
        }
    }
}
