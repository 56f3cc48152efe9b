using CalcService.Api.Units;
using CalcService.Engine.Provenance;
using CalcService.Engine.Reuse;

namespace CalcService.Api.Capabilities.Reuse;

/// <summary>Wear and utilisation from the engine to the contract.</summary>
internal static class WearMapping
{
    public static WearNumbers ToContract(WearFacts wear, UnitSystem units)
    {
        Quantity? Share(double? fraction) => Quantity.From(fraction, QuantityKind.Fraction, units);
        Quantity Length(double metres) => Quantity.From(Measure.Length(metres), units);
        return new()
        {
            BoreGrowth = Share(wear.BoreGrowth),
            Ovality = Share(wear.Ovality),
            TaperLoss = Share(wear.TaperLoss),
            PinHoleGrowth = Share(wear.PinHoleGrowth),
            PinHoleOvality = Share(wear.PinHoleOvality),
            PinWear = Share(wear.PinWear),
            EarSpread = Share(wear.EarSpread),
            EarThicknessLoss = Share(wear.EarThicknessLoss),
            EarWidthLoss = Share(wear.EarWidthLoss),
            EarEndDistanceLoss = Share(wear.EarEndDistanceLoss),
            OutsideLoss = Share(wear.OutsideLoss),
            PitDepth = Quantity.From(wear.PitDepthM, QuantityKind.Length, units),
            Stations = wear.Stations.Select(station => new StationNumbers
            {
                FromSmallEnd = Length(station.FromSmallEndM),
                Nominal = Length(station.NominalM),
                Smallest = Length(station.SmallestM),
                Largest = Length(station.LargestM),
                Growth = Quantity.From(Measure.Fraction(station.Growth), units),
                Ovality = Quantity.From(Measure.Fraction(station.Ovality), units),
            }).ToArray(),
        };
    }

    public static PartsUtilisation? ToContract(Utilisation? utilisation, UnitSystem units) => utilisation is null ? null : new()
    {
        GovernedBy = utilisation.Governing.Id,
        AtRatedLoad = Quantity.From(Measure.Fraction(utilisation.Governing.AtRated), units),
        AtProofLoad = Quantity.From(Measure.Fraction(utilisation.Governing.AtProof), units),
        Parts = utilisation.Parts.Select(part => new PartUtilisation
        {
            Id = part.Id,
            Stress = Quantity.From(Measure.Stress(part.StressPa), units),
            AtRatedLoad = Quantity.From(Measure.Fraction(part.AtRated), units),
            AtProofLoad = Quantity.From(Measure.Fraction(part.AtProof), units),
        }).ToArray(),
    };
}
