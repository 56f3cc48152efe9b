using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a lot on the shelf may be.</summary>
public sealed class StockLotValidator : AbstractValidator<StockLot>
{
    public StockLotValidator()
    {
        this.Ranges()
            .Of(lot => lot.Count, 0, 100000)
            .Of(lot => lot.DoseCount, 0, 1000000);
        RuleFor(lot => lot.Storage!).SetValidator(new LotStorageValidator());
        RuleFor(lot => lot).Custom((lot, context) =>
        {
            (string Member, DateOnly? LastGoodDay)[] dates =
            [
                (nameof(StockLot.ExpiresOn), lot.ExpiresOn),
                (nameof(StockLot.ResinExpiresOn), lot.ResinExpiresOn),
                (nameof(StockLot.HardenerExpiresOn), lot.HardenerExpiresOn),
                (nameof(StockLot.DoseExpiresOn), lot.DoseExpiresOn),
            ];
            foreach (var (member, _) in dates.Where(date => date.LastGoodDay < lot.MadeOn))
            {
                context.Contradict(member, nameof(StockLot.MadeOn), "The lot ran out before it was made.");
            }
        });
    }
}

/// <summary>What the storage of a lot may be.</summary>
public sealed class LotStorageValidator : AbstractValidator<LotStorage>
{
    public LotStorageValidator()
    {
        this.Ranges()
            .Of(storage => storage.Lowest, -60, 100, "degC", QuantityKind.Temperature)
            .Of(storage => storage.Highest, -60, 100, "degC", QuantityKind.Temperature);
        RuleFor(storage => storage).Custom((storage, context) =>
        {
            if (storage is { Lowest: { } lowest, Highest: { } highest } && lowest.Si > highest.Si)
            {
                context.Contradict(nameof(LotStorage.Lowest), nameof(LotStorage.Highest), "The lowest is above the highest.");
            }

            if (storage.Known == Fact.No && (storage.Lowest ?? storage.Highest) is not null)
            {
                context.Contradict(nameof(LotStorage.Known), storage.Lowest is null ? nameof(LotStorage.Highest) : nameof(LotStorage.Lowest),
                    "A temperature is given, and said not to be known.");
            }
        });
    }
}
