using CalcService.Api.Validation;
using CalcService.Engine.Findings;
using FluentValidation;

namespace CalcService.Api.Contract;

/// <summary>What a lot on the shelf may be.</summary>
public sealed class StockLotValidator : Contradictions<StockLot>
{
    protected override void Check(StockLot lot, ValidationContext<StockLot> context)
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
    }
}

/// <summary>What the storage of a lot may be.</summary>
public sealed class LotStorageValidator : Contradictions<LotStorage>
{
    protected override void Check(LotStorage storage, ValidationContext<LotStorage> context)
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
    }
}

/// <summary>Lots are of kits that the sheet knows.</summary>
internal static class StockLotKits
{
    public static void MustBeOn<T>(this ValidationContext<T> context, CompoundSheet sheet, IReadOnlyList<StockLot>? lots, string member)
    {
        string[] known = [.. sheet.Kits.Select(kit => kit.Code)];
        for (var i = 0; i < lots?.Count; i++)
        {
            context.MustKnow($"{member}[{i}].{nameof(StockLot.Kit)}", lots[i].Kit, known, "kit");
        }
    }
}
