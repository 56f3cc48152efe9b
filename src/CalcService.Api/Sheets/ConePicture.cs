using CalcService.Api.Answers;
using CalcService.Api.Units;

namespace CalcService.Api.Sheets;

/// <summary>One place along a loaded cone.</summary>
/// <param name="X">From the small end.</param>
/// <param name="Pressure">On the wall.</param>
/// <param name="Share">Share of the load that is still in the wires.</param>
public sealed record ConePoint(double X, Quantity Pressure, double Share);

/// <summary>A load to draw.</summary>
/// <param name="Name">What load it is.</param>
/// <param name="Load">The load.</param>
/// <param name="Thirds">Shares of the thirds from the small end.</param>
/// <param name="ContactTo">The cone bears up to here.</param>
/// <param name="Points">From the small end to the mouth.</param>
public sealed record ConeCurve(string Name, Quantity Load, IReadOnlyList<Quantity> Thirds, Quantity ContactTo,
    IReadOnlyList<ConePoint> Points);

/// <summary>A socket to draw in section.</summary>
/// <param name="Rope">Rope diameter.</param>
/// <param name="SmallEnd">Bore at the small end.</param>
/// <param name="Mouth">Bore at the mouth.</param>
/// <param name="Length">Length of the basket.</param>
/// <param name="OuterAtSmallEnd">Outside there, m.</param>
/// <param name="OuterAtMouth">Outside there, m.</param>
/// <param name="WallAssumed">Whether the outside is assumed.</param>
/// <param name="Curves">The loads, the first being the one in service; none where the transfer isn't known.</param>
/// <param name="Strength">Compressive strength of the compound, where the sheet gives it.</param>
/// <param name="Says">What the picture means, a line each.</param>
public sealed record ConeDrawing(
    Quantity Rope, Quantity SmallEnd, Quantity Mouth, Quantity Length, double OuterAtSmallEnd, double OuterAtMouth, bool WallAssumed,
    IReadOnlyList<ConeCurve> Curves, double? Strength, IReadOnlyList<string> Says);

/// <summary>
/// A socket in section, mouth up as it is poured, and beside it, at the same heights, how hard the cone presses on the
/// wall and how much of the load the wires still carry.
/// </summary>
public static class ConePicture
{
    internal const double Width = 960;
    internal const double Top = 62;
    private const double Middle = 170;
    private const double RopeBelow = 58;
    private const double Line = 16;
    private const int Digits = 3;

    public static string Write(ConeDrawing drawing)
    {
        var scale = Math.Min(280 / drawing.Length.Si, 220 / Math.Max(drawing.OuterAtMouth, drawing.OuterAtSmallEnd));
        var bottom = Top + (drawing.Length.Si * scale);
        var svg = new SvgText(Width, bottom + RopeBelow + 16 + (Line * drawing.Says.Count),
            "Socket in section, to scale, with pressure on the wall and load in the wires", fontSize: 12);
        Section(svg, drawing, scale, bottom);
        if (drawing.Curves.Count > 0)
        {
            ConeCharts.Draw(svg, drawing, scale, bottom);
        }

        for (var i = 0; i < drawing.Says.Count; i++)
        {
            svg.Label(16, bottom + RopeBelow + 14 + (Line * i), drawing.Says[i], "start");
        }

        return svg.ToString();
    }

    private static void Section(SvgText svg, ConeDrawing drawing, double scale, double bottom)
    {
        var (small, mouth, rope) = (drawing.SmallEnd.Si * scale / 2, drawing.Mouth.Si * scale / 2, drawing.Rope.Si * scale / 2);
        var (outerSmall, outerMouth) = (drawing.OuterAtSmallEnd * scale / 2, drawing.OuterAtMouth * scale / 2);
        svg.Area([(Middle - mouth, Top), (Middle + mouth, Top), (Middle + small, bottom), (Middle - small, bottom)], "#e8dcc0");
        foreach (var side in (double[])[-1, 1])
        {
            svg.Area([(Middle + (side * mouth), Top), (Middle + (side * outerMouth), Top), (Middle + (side * outerSmall), bottom),
                (Middle + (side * small), bottom)], "#aab2b9", stroke: SvgText.Ink);
        }

        svg.Area([(Middle - rope, bottom), (Middle + rope, bottom), (Middle + rope, bottom + 26), (Middle - rope, bottom + 26)], "#5d666e",
            stroke: SvgText.Ink);
        const int Wires = 9;
        for (var w = 0; w < Wires; w++)
        {
            var place = (2.0 * w / (Wires - 1)) - 1;
            svg.Line(Middle + (place * rope * .92), bottom, Middle + (place * mouth * .92), Top + 4, "#5d666e", 1.4);
        }

        Arrows(svg, drawing, scale, bottom);
        svg.Line(Middle, bottom + 28, Middle, bottom + 48, "#111", 2)
            .Area([(Middle - 5, bottom + 46), (Middle + 5, bottom + 46), (Middle, bottom + 56)], "#111");
        if (drawing.Curves.Count > 0)
        {
            svg.Label(Middle + 12, bottom + 50, $"{drawing.Curves[0].Name} {Text(drawing.Curves[0].Load)}", "start", bold: true);
        }

        svg.Label(Middle, 18, "Socket in section, to scale" + (drawing.WallAssumed ? " (wall assumed)" : ""), bold: true);
        svg.Label(Middle, Top - 8, $"mouth {Text(drawing.Mouth)}");
        svg.Label(Middle - Math.Max(outerSmall, rope) - 6, bottom + 14, $"small end {Text(drawing.SmallEnd)}", "end");
        svg.Label(Middle + Math.Max(outerSmall, rope) + 6, bottom + 14, $"rope {Text(drawing.Rope)}", "start");
    }

    /// <summary>The cone's push on the wall at the load in service, longest where it is highest.</summary>
    private static void Arrows(SvgText svg, ConeDrawing drawing, double scale, double bottom)
    {
        if (drawing.Curves.Count == 0)
        {
            return;
        }

        var points = drawing.Curves[0].Points;
        var highest = points.Max(point => point.Pressure.Si);
        foreach (var point in points.Where(point => point.Pressure.Si > highest * .02))
        {
            var share = point.X / drawing.Length.Si;
            var y = bottom - (point.X * scale);
            var wall = (drawing.SmallEnd.Si + (share * (drawing.Mouth.Si - drawing.SmallEnd.Si))) * scale / 2;
            var length = 34 * point.Pressure.Si / highest;
            foreach (var side in (double[])[-1, 1])
            {
                var tip = Middle + (side * (wall + length));
                svg.Line(Middle + (side * wall), y, tip, y, "#a01515", 1.6)
                    .Path([(tip - (side * 4), y - 3), (tip, y), (tip - (side * 4), y + 3)], "#a01515", 1.6);
            }
        }
    }

    internal static string Text(Quantity quantity) => AnswerText.Of(quantity, Digits);
}
