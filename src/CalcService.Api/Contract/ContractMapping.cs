using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;

namespace CalcService.Api.Contract;

/// <summary>The trade's things from the contract to the engine.</summary>
public static class ContractMapping
{
    public static Engine.Ropes.Rope ToEngine(this Rope rope) => new()
    {
        DiameterM = rope.Diameter.Si,
        Construction = rope.Construction,
        Core = rope.Core ?? RopeCore.Unknown,
        Grade = rope.Grade,
        Finish = rope.Finish ?? WireFinish.Unknown,
        CertifiedBreakingForceN = rope.Certificate?.BreakingForce?.Si,
        MetallicAreaM2 = rope.MetallicArea?.Si,
        WireCount = rope.WireCount,
        OuterWireDiameterM = rope.OuterWireDiameter?.Si,
        MeasuredDiameterM = rope.MeasuredDiameter?.Si,
        TemperatureK = rope.Temperature?.Si,
        Lubricant = rope.Lubricant,
        PlasticFilled = rope.PlasticFilled,
        IsUsed = rope.Used == Fact.Yes,
        Function = rope.Function ?? RopeFunction.Unknown,
        LayLengthM = rope.LayLength?.Si,
    };

    public static Engine.Sockets.Basket ToEngine(this Basket basket) => new()
    {
        SmallEndDiameterM = basket.SmallEndDiameter.Si,
        LargeEndDiameterM = basket.LargeEndDiameter.Si,
        LengthM = basket.Length.Si,
        ToleranceM = basket.Tolerance?.Si ?? 0,
        IsTypeTested = basket.TypeTested switch { Fact.Yes => true, Fact.No => false, _ => null },
    };

    public static Engine.Sockets.RopeRange ToEngine(this RopeDiameters range) => new(range.Minimum.Si, range.Maximum.Si);

    public static Engine.Compounds.CompoundSheet ToEngine(this CompoundSheet sheet) => new()
    {
        Name = sheet.Name,
        Kits = sheet.Kits.Select(kit => new Kit(kit.Code, kit.Volume.Si, kit.Cost, kit.PartNumber)).ToArray(),
        GelTimes =
        [.. (sheet.GelTimes ?? [])
        .Select(row =>
        new GelTime(row.Temperature.Si, row.Doses, row.Time.Si) { SelfHeating = row.MeasuredIn?.SelfHeating ?? SelfHeating.Unknown })],
        Doses = [.. (sheet.Doses ?? []).Select(band => new DoseBand(band.From.Si, band.Below.Si, band.PerKit))],
        Pouring = sheet.Pouring is { } pouring ? new(pouring.Minimum.Si, pouring.Maximum.Si) : null,
        Storage = sheet.Storage is { } storage ? new(storage.Minimum.Si, storage.Maximum.Si) : null,
        PotLife = sheet.PotLife?.Si,
        MixingTimeS = sheet.Mixing?.Time.Si,
        ShelfLifeMonths = (int?)sheet.ShelfLife?.Si,
        DensityKgPerM3 = sheet.Cured?.Density?.Si,
        ActivationEnergyJPerMol = sheet.Reaction?.ActivationEnergy?.Si,
        FullStrength =
        [.. (sheet.FullStrength ?? [])
        .Select(row =>
        new FullStrength(row.Temperature.Si, row.AfterGel.Si) { Doses = row.Doses ?? [], IsIsothermal = row.Isothermal == Fact.Yes })],
        AfterGelEnergyJPerMol = sheet.AfterGelEnergy?.Si,
        LowestCureK = sheet.LowestCure?.Si,
        MinimumHoldS = sheet.MinimumHold?.Si,
        PeakLimitK = sheet.PeakLimit?.Si,
        Service = sheet.Service is { } service ? new(service.Minimum.Si, service.Maximum.Si) : null,
        Reaction = sheet.Reaction is { Heat: { } heat, ResinFraction: { } resin } ? new(heat.Si, resin.Si) : null,
        ConductivityWPerMK = sheet.Cured?.Conductivity?.Si,
        Vapour = sheet.Vapour is { } vapour ? new(vapour.Substance, vapour.MassFraction?.Si, vapour.Decay?.Si) : null,
        SpecificHeatJPerKgK = sheet.Cured?.SpecificHeat?.Si,
        IssuedOn = sheet.IssuedOn,
        DoseByTemperatureOf = sheet.DoseByTemperatureOf ?? DosePlace.Unknown,
        MaximumDoses = sheet.MaximumDoses,
        MixingOrder = sheet.MixingOrder ?? [],
        Vessels = sheet.Vessels ?? [],
        PotLifeVolumeM3 = sheet.PotLifeVolume?.Si,
        Currency = sheet.Currency,
        DangerousGoods = sheet.DangerousGoods,
        Cured = new()
        {
            CompressiveStrengthPa = sheet.Cured?.CompressiveStrength?.Si,
            ModulusPa = sheet.Cured?.Modulus?.Si,
            PoissonRatio = sheet.Cured?.PoissonRatio?.Si,
            VolumetricShrinkage = sheet.Cured?.VolumetricShrinkage?.Si,
            ShrinkageAfterGel = sheet.Cured?.ShrinkageAfterGel?.Si,
            ExpansionPerK = sheet.Cured?.Expansion?.Si,
        },
        Hardness = sheet.Hardness is { } hardness ? new(hardness.Method, hardness.Minimum.Si) : null,
        Chemicals = [.. (sheet.Chemicals ?? []).Select(row => new ChemicalRow(row.Substance, row.Effect))],
        Demonstration = sheet.Demonstration == Fact.Yes,
    };

    public static Engine.Compounds.StockLot ToEngine(this StockLot lot) => new(lot.Lot, lot.Kit, lot.Count, lot.ExpiresOn, lot.MadeOn)
    {
        ResinExpiresOn = lot.ResinExpiresOn,
        HardenerExpiresOn = lot.HardenerExpiresOn,
        DoseExpiresOn = lot.DoseExpiresOn,
        DoseCount = lot.DoseCount,
        State = lot.State,
        Quarantined = lot.Quarantined,
        ReservedFor = lot.ReservedFor,
        Storage = lot.Storage is { } storage ? new(storage.Lowest?.Si, storage.Highest?.Si, storage.Known) : null,
    };

    /// <summary>The points of a series; empty where it is a constant.</summary>
    public static IReadOnlyList<Engine.Compounds.AirPoint> ToEngine(this CureAir air) =>
        [.. (air.Series ?? []).Select(point => new Engine.Compounds.AirPoint(point.At, point.Temperature.Si))];

    /// <summary>A fact, null where nobody said.</summary>
    public static bool? Known(this Fact? fact) => fact switch { Fact.Yes => true, Fact.No => false, _ => null };
}
