using CalcService.Engine.Compounds;
using System.Globalization;
using CalcService.Engine.Numerics.Covering;

namespace CalcService.Engine.Pouring;

/// <summary>
/// The mixes of a job with what they cost, and what may be used that they leave on the shelf, kits by size and all doses.
/// </summary>
internal sealed record MixPlan(
    IReadOnlyList<Mix> Mixes, IReadOnlyList<KitCount> Counts, decimal? Cost, decimal? StockValue, bool IsOptimal, double Gap,
    IReadOnlyList<int> LeftOnShelf, long DosesOnShelf)
{
    /// <summary>Reads groups as mixes, one after another by the same crew, lots first expiry first.</summary>
    public static MixPlan From(PourScope scope, PlannedEnd[] ends, GroupedCover cover, KitChoice choice, Shelf shelf, double? potLifeS)
    {
        var kits = scope.Input.Compound.Kits;
        var mixes = new List<Mix>();
        double? startsAfterS = 0;
        foreach (var group in cover.Groups)
        {
            scope.Trace.Of = $"mix {mixes.Count + 1}";
            var mix = Read(scope, ends, group, choice, shelf, mixes.Count + 1, startsAfterS, potLifeS);
            mixes.Add(mix);
            startsAfterS += mix.UsedInS;
        }

        scope.Trace.Of = "";
        var counts = kits.Select((kit, i) => new KitCount(kit.Code,
            cover.Groups.Sum(group => choice.Count(group.Taken, i, bought: false)),
            cover.Groups.Sum(group => choice.Count(group.Taken, i, bought: true)))).ToArray();
        var priced = kits.All(kit => kit.Cost is not null);
        return new(
            mixes,
            counts,
            priced ? kits.Select((kit, i) => counts[i].ToBuy * kit.Cost!.Value).Sum() : null,
            priced ? kits.Select((kit, i) => counts[i].FromStock * kit.Cost!.Value).Sum() : null,
            cover.IsOptimal,
            cover.Gap,
            [.. kits.Select(kit => shelf.Count(kit.Code))],
            shelf.Doses);
    }

    private static Mix Read(PourScope scope, PlannedEnd[] ends, CoverGroup group, KitChoice choice, Shelf shelf, int number,
        double? startsAfterS, double? potLifeS)
    {
        var kits = scope.Input.Compound.Kits;
        var taken = new List<MixKit>();
        for (var i = 0; i < kits.Count; i++)
        {
            taken.AddRange(shelf.Take(kits[i].Code, choice.Count(group.Taken, i, bought: false)));
            if (choice.Count(group.Taken, i, bought: true) is > 0 and var count)
            {
                taken.Add(new(kits[i].Code, null, count));
            }
        }

        var fills = ends.Select((end, i) => new MixFill(end.Id, group.Served[i])).Where(fill => fill.Count > 0).ToArray();
        var needed = MixFormulas.NeededM3(scope.Allowance,
            ends.Select((end, i) => group.Served[i] * end.Fill.HighM3!.Value).Sum(), scope.VesselResidueM3, scope.Trace);
        var startsAt = Instants.After(scope.Input.PourAt, startsAfterS);
        return new(number, taken, fills, needed, taken.Sum(kit => kit.Count * kits.First(known => known.Code == kit.Kit).VolumeM3),
            startsAt,
            PotLifeChecks.UsedInS(scope, taken.Sum(kit => kit.Count), ends, group.Served),
            potLifeS is { } potLife ? Instants.After(startsAt, Math.Floor(potLife)) : null)
        {
            WitnessLabel = $"{scope.Input.Reference ?? "mix"}/{number.ToString(CultureInfo.InvariantCulture)}",
        };
    }
}
