using CalcService.Engine.Compounds;
using CalcService.Engine.Numerics.Covering;

namespace CalcService.Engine.Pouring;

/// <summary>The sizes of kit as items to cover with, from the shelf and from the shop.</summary>
internal sealed class KitChoice
{
    private const double MicrolitresPerM3 = 1e9;
    private const int MicrolitresPerMillilitre = 1000;
    private const decimal CostUnits = 10_000;

    private readonly List<(int Kit, bool Bought)> _meaning = [];
    private readonly List<CoverItem> _items = [];

    public KitChoice(IReadOnlyList<Kit> kits, Shelf shelf, bool mayBuy)
    {
        for (var i = 0; i < kits.Count; i++)
        {
            var cost = (long)Math.Round((kits[i].Cost ?? 0) * CostUnits);
            var onShelf = shelf.Count(kits[i].Code);
            if (onShelf > 0)
            {
                _items.Add(new(SizeOf(kits[i]), 0, cost, onShelf));
                _meaning.Add((i, false));
            }

            if (mayBuy)
            {
                _items.Add(new(SizeOf(kits[i]), cost, 0, null));
                _meaning.Add((i, true));
            }
        }
    }

    public IReadOnlyList<CoverItem> Items => _items;

    /// <summary>What a kit counts for: its whole millilitres, which keeps the covering table small.</summary>
    public static int SizeOf(Kit kit) =>
        (int)Math.Floor(Math.Round(kit.VolumeM3 * MicrolitresPerM3 / MicrolitresPerMillilitre, 6)) * MicrolitresPerMillilitre;

    /// <summary>What a volume needs: the next whole microlitre.</summary>
    public static long NeedOf(double cubicMetres) => (long)Math.Ceiling(Math.Round(cubicMetres * MicrolitresPerM3, 3));

    /// <summary>Kits of a size among the items taken.</summary>
    public int Count(IReadOnlyList<int> taken, int kit, bool bought) => _meaning.IndexOf((kit, bought)) is >= 0 and var item ? taken[item]
        : 0;
}
