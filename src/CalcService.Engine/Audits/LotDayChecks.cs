using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Audits;

/// <summary>The lots on the day that they were mixed.</summary>
internal static class LotDayChecks
{
    public static void Check(AuditScope scope)
    {
        var kits = scope.Input.Mix.Kits ?? [];
        var lots = kits.Select((lot, i) => (lot, At: $"{AuditPointers.Kits}/{i}")).ToArray();
        CheckDates(scope, lots);
        CheckState(scope, lots);
    }

    private static void CheckDates(AuditScope scope, (StockLot Lot, string At)[] lots)
    {
        var asked = scope.Ask().Fact(lots.Length > 0, AuditPointers.Kits, "the kits of the mix by lot")
            .Time(scope.Input.Times.MixedAt, "mixedAt", "when the compound was mixed");
        var (isExpired, isMadeLater) = (false, false);
        foreach (var (lot, at) in lots)
        {
            var dates = new LotDates(lot, scope.Input.Compound.ShelfLifeMonths, withDose: scope.Input.Mix.DosesPerKit is not 0);
            var missing = dates.Missing;
            asked.Fact(missing is null, $"{at}/{missing?.Member ?? "expiresOn"}", $"the last good day of lot {lot.Lot}, {missing?.Part}");
            isExpired |= IsExpired(scope, lot, at, dates);
            isMadeLater |= IsMadeLater(scope, lot, at);
        }

        scope.Judge("lot-dates", isExpired ? Severity.Stop : isMadeLater ? Severity.Unknown : null, AuditFindings.LotExpiredWhenMixed,
            asked.Gaps);
    }

    /// <summary>Two dates that can't both be true.</summary>
    private static bool IsMadeLater(AuditScope scope, StockLot lot, string at)
    {
        var isLater = scope.Input.Times.MixedAt is { } mixed && lot.MadeOn > DateOnly.FromDateTime(mixed.DateTime);
        if (isLater)
        {
            scope.Find(AuditFindings.TimesContradict, at + "/madeOn", related: [AuditPointers.Time("mixedAt")],
                words: [new("later", "the mixing"), new("earlier", $"the making of lot {lot.Lot}")]);
        }

        return isLater;
    }

    private static bool IsExpired(AuditScope scope, StockLot lot, string at, LotDates dates)
    {
        if (scope.Input.Times.MixedAt is not { } mixed || dates.Earliest is not { Day: { } lastGoodDay } earliest
            || DateOnly.FromDateTime(mixed.DateTime) is var day && day <= lastGoodDay)
        {
            return false;
        }

        var days = day.DayNumber - lastGoodDay.DayNumber;
        scope.Find(AuditFindings.LotExpiredWhenMixed, $"{at}/{earliest.Member}", new(Measure.Days(-days), Limit.Of(Measure.Days(0))),
            [AuditPointers.Time("mixedAt")], words:
        [
            new("lot", lot.Lot), new("part", earliest.Part), new("expiresOn", lastGoodDay),
                new("days", days.ToString(CultureInfo.InvariantCulture)),
        ]);
        return true;
    }

    private static void CheckState(AuditScope scope, (StockLot Lot, string At)[] lots)
    {
        var asked = scope.Ask().Fact(lots.Length > 0, AuditPointers.Kits, "the kits of the mix by lot");
        var isUnfit = false;
        foreach (var (lot, at) in lots)
        {
            asked.Fact(lot.State is not (null or LotState.Unknown), at + "/state", $"what the packs of lot {lot.Lot} looked like")
                .Fact(lot.Quarantined is not (null or Fact.Unknown), at + "/quarantined", $"whether lot {lot.Lot} was held in quarantine");
            if (scope.Input.Compound.Storage is { } range)
            {
                asked.Told(lot.StorageStated(range), at + "/storage", $"how cold and how warm lot {lot.Lot} was stored");
            }

            if (Unfit(lot, scope.Input.Compound.Storage) is (var member, var why))
            {
                isUnfit = true;
                scope.Find(AuditFindings.LotUnfit, $"{at}/{member}", words: [new("lot", lot.Lot), new("why", why)]);
            }
        }

        scope.Judge("lot-state", isUnfit ? Severity.Stop : null, AuditFindings.LotUnfit, asked.Gaps);
    }

    private static (string Member, string Why)? Unfit(StockLot lot, TemperatureRange? range) => lot switch
    {
        { Quarantined: Fact.Yes } => ("quarantined", "quarantined"),
        { State: LotState.Opened } => ("state", "opened or part-used"),
        { State: LotState.Damaged } => ("state", "damaged or leaking"),
        { Storage.LowestK: { } lowest } when IsOutside(lowest, range) => ("storage/lowest", "stored outside the sheet's range"),
        { Storage.HighestK: { } highest } when IsOutside(highest, range) => ("storage/highest", "stored outside the sheet's range"),
        _ => null,
    };

    private static bool IsOutside(double kelvins, TemperatureRange? range) =>
        range is not null
        && Judged.Outside(Measure.Temperature(kelvins), Measure.Temperature(range.MinimumK),
            Measure.Temperature(range.MaximumK)) is not null;
}
