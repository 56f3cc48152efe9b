using CalcService.Api.Answers;
using CalcService.Api.Units;

namespace CalcService.Api.Sheets;

/// <summary>A section of a used bore to draw.</summary>
public sealed record WornSection(Quantity FromSmallEnd, Quantity Nominal, Quantity Smallest, Quantity Largest, Quantity Growth,
    Quantity Ovality);

/// <summary>A used basket to draw.</summary>
/// <param name="SmallEnd">Bore of the drawing at the small end.</param>
/// <param name="Mouth">Bore of the drawing at the mouth.</param>
/// <param name="Length">Length of the basket.</param>
/// <param name="OuterAtSmallEnd">Outside there, m.</param>
/// <param name="OuterAtMouth">Outside there, m.</param>
/// <param name="WallAssumed">Whether the outside is assumed.</param>
/// <param name="Sections">Sections as found.</param>
/// <param name="GrowthLimit">Growth that is allowed, where a limit is given.</param>
/// <param name="OvalityLimit">Ovality that is allowed, where a limit is given.</param>
/// <param name="Says">What the picture means, a line each.</param>
public sealed record WornBasket(
    Quantity SmallEnd, Quantity Mouth, Quantity Length, double OuterAtSmallEnd, double OuterAtMouth, bool WallAssumed,
    IReadOnlyList<WornSection> Sections, Quantity? GrowthLimit, Quantity? OvalityLimit, IReadOnlyList<string> Says);

/// <summary>
/// A basket in section, mouth up, with the sections that were measured. Wear is too small to see to scale, so beside it,
/// at the same heights, stands how far each section is off its drawing, against the limit.
/// </summary>
public static class WornBasketPicture
{
    private const double Width = 960;
    private const double Top = 62;
    private const double Middle = 190;
    private const double GrowthAt = 570;
    private const double OvalityAt = 770;
    private const double Chart = 110;
    private const double Line = 16;
    private const int FontSize = 12;
    private const int Digits = 4;
    private const string Red = "#a01515";
    private const string Grey = "#1f4e79";

    public static string Write(WornBasket basket)
    {
        var scale = Math.Min(280 / basket.Length.Si, 220 / Math.Max(basket.OuterAtMouth, basket.OuterAtSmallEnd));
        var bottom = Top + (basket.Length.Si * scale);
        var svg = new SvgText(Width, bottom + 44 + (Line * basket.Says.Count),
            "Used basket in section, to scale, with its wear against the limits", FontSize);
        Section(svg, basket, scale, bottom);
        Bars(svg, basket, GrowthAt, "Growth of the bore", basket.GrowthLimit, one => one.Growth, scale, bottom);
        Bars(svg, basket, OvalityAt, "Out of round", basket.OvalityLimit, one => one.Ovality, scale, bottom);
        for (var i = 0; i < basket.Says.Count; i++)
        {
            svg.Label(16, bottom + 44 + (Line * i), basket.Says[i], "start");
        }

        return svg.ToString();
    }

    private static void Section(SvgText svg, WornBasket basket, double scale, double bottom)
    {
        var (small, mouth) = (basket.SmallEnd.Si * scale / 2, basket.Mouth.Si * scale / 2);
        var (outerSmall, outerMouth) = (basket.OuterAtSmallEnd * scale / 2, basket.OuterAtMouth * scale / 2);
        foreach (var side in (double[])[-1, 1])
        {
            svg.Area([(Middle + (side * mouth), Top), (Middle + (side * outerMouth), Top), (Middle + (side * outerSmall), bottom),
                (Middle + (side * small), bottom)], "#aab2b9", stroke: "#222");
        }

        foreach (var one in basket.Sections)
        {
            var (y, half) = (bottom - (one.FromSmallEnd.Si * scale), one.Largest.Si * scale / 2);
            svg.Line(Middle - half, y, Middle + half, y, Red, 2)
                .Line(Middle + half, y, Middle + Math.Max(outerSmall, outerMouth) + 8, y, "#bbb", .8, "3 3")
                .Label(Middle + Math.Max(outerSmall, outerMouth) + 12, y + 4,
                $"{Text(one.Smallest)} to {Text(one.Largest)} (drawn {Text(one.Nominal)})", "start", colour: Red);
        }

        svg.Label(Middle, 18, "Basket in section, to scale" + (basket.WallAssumed ? " (wall assumed)" : ""), bold: true)
            .Label(Middle, Top - 8, $"mouth {Text(basket.Mouth)}")
            .Label(Middle, bottom + 16, $"small end {Text(basket.SmallEnd)}");
    }

    private static void Bars(SvgText svg, WornBasket basket, double x, string title, Quantity? limit, Func<WornSection, Quantity> of,
        double scale, double bottom)
    {
        // From nothing to somewhat beyond the limit or the worst section; a bore smaller than drawn has no bar.
        var reach = 1.15 * Math.Max(Math.Max(limit?.Si ?? 0, basket.Sections.Select(one => of(one).Si).DefaultIfEmpty(0).Max()), 1e-6);
        svg.Label(x + (Chart / 2), 18, title, bold: true).Line(x, Top, x, bottom);
        foreach (var one in basket.Sections)
        {
            var (y, length) = (bottom - (one.FromSmallEnd.Si * scale), Math.Max(0, of(one).Si) / reach * Chart);
            var colour = limit is not null && of(one).Si > limit.Si ? Red : Grey;
            svg.Line(x, y, x + length, y, colour, 7).Label(x + length + 6, y + 4, Text(of(one)), "start", colour: colour);
        }

        if (limit is null)
        {
            svg.Label(x + (Chart / 2), 36, "no limit given", colour: Red);
            return;
        }

        var at = x + (limit.Si / reach * Chart);
        svg.Line(at, Top - 10, at, bottom + 10, "#111", 1.4, "6 3").Label(at, Top - 14, $"limit {Text(limit)}");
    }

    private static string Text(Quantity quantity) => AnswerText.Of(quantity, Digits);
}
