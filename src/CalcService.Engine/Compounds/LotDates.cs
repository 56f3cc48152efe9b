namespace CalcService.Engine.Compounds;

/// <summary>A last good day, where it is given.</summary>
/// <param name="Member">The member of the lot that gives it.</param>
/// <param name="Part">What it holds for.</param>
/// <param name="Day">The day.</param>
public sealed record LotDate(string Member, string Part, DateOnly? Day);

/// <summary>The last good days of a lot: of its whole kits and of each part that goes into the mix.</summary>
public sealed class LotDates
{
    private readonly LotDate[] _kit;
    private readonly LotDate[] _parts;

    /// <param name="lot">The lot.</param>
    /// <param name="shelfLifeMonths">The sheet's shelf life.</param>
    /// <param name="withDose">Whether a dose goes into the mix, or may.</param>
    public LotDates(StockLot lot, int? shelfLifeMonths, bool withDose)
    {
        DateOnly? byAge = lot.MadeOn is { } made && shelfLifeMonths is { } months ? made.AddMonths(months) : null;
        _kit = [new("expiresOn", "whole kit", lot.ExpiresOn), new("madeOn", "whole kit", byAge)];
        LotDate[] dose = withDose ? [new("doseExpiresOn", "dose", lot.DoseExpiresOn)] : [];
        _parts = [new("resinExpiresOn", "resin", lot.ResinExpiresOn), new("hardenerExpiresOn", "hardener", lot.HardenerExpiresOn), .. dose];
    }

    /// <summary>The last good day that counts: the earliest of all that are given.</summary>
    public LotDate? Earliest => _kit.Concat(_parts).Where(date => date.Day is not null).MinBy(date => date.Day);

    /// <summary>
    /// The date without which nobody knows whether the lot is good: a kit without a date of its own is as old as its
    /// oldest part, so each part needs one. Null where nothing is missing.
    /// </summary>
    public LotDate? Missing =>
        _kit.Any(date => date.Day is not null) ? null
        : _parts.All(date => date.Day is null) ? _kit[0]
        : Array.Find(_parts, date => date.Day is null);
}
