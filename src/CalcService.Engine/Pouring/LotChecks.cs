using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring;

/// <summary>Why a lot may not be used.</summary>
/// <param name="Definition">The finding that says so; its first severity holds where the stock would be enough with the lot.</param>
/// <param name="Member">The member of the lot to act on.</param>
internal sealed record LotReason(FindingDefinition Definition, string Member)
{
    public Judged Judged { get; init; }

    public IReadOnlyList<string> Related { get; init; } = [];

    public IReadOnlyList<FindingWord> Words { get; init; } = [];
}

/// <summary>Looks for the reason why a lot may not be used. A lot has one: the first that holds.</summary>
internal static class LotChecks
{
    /// <summary>The reason, or null where the lot may be used and so has a last good day.</summary>
    public static LotReason? Find(PourScope scope, StockLot lot, LotDates dates) =>
        Expired(scope, dates) ?? NotSealed(lot) ?? Quarantined(lot) ?? StoredOutsideRange(scope, lot) ?? Reserved(scope, lot)
        ?? Undated(dates);

    /// <summary>What has to be known of a lot that is used.</summary>
    public static IEnumerable<StatedFact> Facts(StockLot lot, TemperatureRange? range, string at)
    {
        yield return StatedFact.Of(at + "/state", "the state of the packs", lot.State, isNeeded: true);
        yield return StatedFact.Of(at + "/quarantined", "whether the lot is held in quarantine", lot.Quarantined, isNeeded: true);
        if (lot.StorageStated(range) is var stored && stored != Stated.Known)
        {
            yield return new(at + "/storage", "how cold and how warm the lot was stored", stored, IsNeeded: false);
        }
    }

    private static LotReason? Expired(PourScope scope, LotDates dates)
    {
        var today = DateOnly.FromDateTime(scope.Input.PourAt.DateTime);
        if (dates.Earliest is not { Day: { } lastGoodDay } earliest || lastGoodDay >= today)
        {
            return null;
        }

        var days = today.DayNumber - lastGoodDay.DayNumber;
        return new(PouringFindings.LotExpired, earliest.Member)
        {
            Judged = new(Measure.Days(-days), Limit.Of(Measure.Days(0))),
            Related = [PourPointers.PourAt],
            Words = [new("part", earliest.Part), new("expiresOn", lastGoodDay), new("days", days.ToString(CultureInfo.InvariantCulture))],
        };
    }

    private static LotReason? NotSealed(StockLot lot) => lot.State switch
    {
        LotState.Opened => new(PouringFindings.LotNotSealed, "state") { Words = [new("state", "opened or part-used")] },
        LotState.Damaged => new(PouringFindings.LotNotSealed, "state") { Words = [new("state", "damaged or leaking")] },
        _ => null,
    };

    private static LotReason? Quarantined(StockLot lot) =>
        lot.Quarantined == Fact.Yes ? new(PouringFindings.LotQuarantined, "quarantined") : null;

    private static LotReason? StoredOutsideRange(PourScope scope, StockLot lot)
    {
        if (scope.Input.Compound.Storage is not { } range)
        {
            return null;
        }

        var (minimum, maximum) = (Measure.Temperature(range.MinimumK), Measure.Temperature(range.MaximumK));
        LotReason Outside(string member, Judged judged) => new(PouringFindings.StorageOutsideRange, "storage/" + member)
        {
            Judged = judged,
            Related = [PourPointers.StorageRange],
            Words = [new("minimum", minimum), new("maximum", maximum)],
        };
        Judged? Beyond(double? kelvins) => kelvins is { } read ? Judged.Outside(Measure.Temperature(read), minimum, maximum) : null;
        return (Beyond(lot.Storage?.LowestK), Beyond(lot.Storage?.HighestK)) switch
        {
            ({ IsBelow: true } cold, _) => Outside("lowest", cold),
            (_, { IsAbove: true } warm) => Outside("highest", warm),
            // The coldest it was may be too warm, and the other way round.
            ({ } warm, _) => Outside("lowest", warm),
            (_, { } cold) => Outside("highest", cold),
            _ => null,
        };
    }

    private static LotReason? Reserved(PourScope scope, StockLot lot) =>
        lot.ReservedFor is { } job && job != scope.Input.Reference
            ? new(PouringFindings.LotReserved, "reservedFor") { Related = [PourPointers.Reference], Words = [new("job", job)] }
            : null;

    private static LotReason? Undated(LotDates dates) =>
        dates.Missing is { } missing ? new(PouringFindings.LotExpiryMissing, missing.Member) { Words = [new("part", missing.Part)] } : null;
}
