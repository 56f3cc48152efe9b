namespace CalcService.Engine.Compounds;

/// <summary>Kits of one size and lot on the shelf.</summary>
/// <param name="Lot">Lot number.</param>
/// <param name="Kit">Code of the kit.</param>
/// <param name="Count">Kits on the shelf.</param>
/// <param name="ExpiresOn">Last good day.</param>
/// <param name="MadeOn">Date of manufacture.</param>
public sealed record StockLot(string Lot, string Kit, int Count, DateOnly? ExpiresOn, DateOnly? MadeOn)
{
    /// <summary>The last good day that counts: the earlier of the printed one and the date of manufacture plus the sheet's shelf life.</summary>
    public DateOnly? LastGoodDay(int? shelfLifeMonths)
    {
        DateOnly? byAge = MadeOn is { } made && shelfLifeMonths is { } months ? made.AddMonths(months) : null;
        return ExpiresOn is { } printed && !(byAge < printed) ? printed : byAge;
    }
}
