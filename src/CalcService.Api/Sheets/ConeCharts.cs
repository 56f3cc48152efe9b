using CalcService.Api.Units;

namespace CalcService.Api.Sheets;

/// <summary>The two charts beside a cone, with its heights: pressure on the wall, and load left in the wires.</summary>
internal static class ConeCharts
{
    private const double PressureAt = 350;
    private const double LoadAt = 630;
    private const double ChartWidth = 220;

    private static readonly string[] Names = ["lower third", "middle third", "upper third"];

    private static readonly (string Colour, string Dashes)[] Pens = [("#a01515", ""), ("#1f4e79", "6 3"), ("#555", "2 3")];

    public static void Draw(SvgText svg, ConeDrawing drawing, double scale, double bottom)
    {
        var highest = drawing.Curves.Max(curve => curve.Points.Max(point => point.Pressure.Si));
        var reach = Math.Max(highest, drawing.Strength ?? 0) * 1.08;
        Frame(svg, PressureAt, bottom, "Pressure of the cone on the wall");
        Frame(svg, LoadAt, bottom, "Load still in the wires");
        Thirds(svg, drawing, scale, bottom);
        if (drawing.Strength is { } strength)
        {
            var x = PressureAt + (strength / reach * ChartWidth);
            svg.Line(x, ConePicture.Top, x, bottom, "#777", 1, "1 3")
                .Label(Math.Min(x, PressureAt + ChartWidth - 70), ConePicture.Top - 6, "strength of the compound", colour: "#555");
        }

        for (var i = drawing.Curves.Count - 1; i >= 0; i--)
        {
            var (curve, (colour, dashes)) = (drawing.Curves[i], Pens[i % Pens.Length]);
            double Y(ConePoint point) => bottom - (point.X * scale);
            svg.Path([.. curve.Points.Select(point => (PressureAt + (point.Pressure.Si / reach * ChartWidth), Y(point)))], colour, i == 0
                ? 2.4 : 1.6, dash: dashes);
            svg.Path([.. curve.Points.Select(point => (LoadAt + (point.Share * ChartWidth), Y(point)))], colour, i == 0 ? 2.4 : 1.6,
                dash: dashes);
            var first = curve.Points[0].Pressure;
            svg.Label(PressureAt + Math.Min(first.Si / reach * ChartWidth, ChartWidth - 20), bottom + 14 + (i % 2 * 13),
                ConePicture.Text(first), colour: colour);
        }

        svg.Label(PressureAt - 4, bottom + 14, "0", "end").Label(LoadAt, bottom + 14, "0 %")
            .Label(LoadAt + ChartWidth, bottom + 14, "100 %");
        Legend(svg, drawing, bottom + 44);
        FreePart(svg, drawing.Curves[0], drawing.Length, scale, bottom);
    }

    private static void Frame(SvgText svg, double x, double bottom, string title) => svg
        .Label(x + (ChartWidth / 2), 18, title, bold: true)
        .Line(x, ConePicture.Top, x, bottom)
        .Line(x, bottom, x + ChartWidth, bottom)
        .Label(x - 6, ConePicture.Top + 4, "mouth", "end")
        .Label(x - 6, bottom - 2, "small end", "end");

    /// <summary>Lines at the thirds through all three parts of the picture, with what each third takes in service.</summary>
    private static void Thirds(SvgText svg, ConeDrawing drawing, double scale, double bottom)
    {
        var height = drawing.Length.Si * scale;
        for (var third = 1; third < 3; third++)
        {
            var y = bottom - (height * third / 3);
            svg.Line(PressureAt, y, PressureAt + ChartWidth, y, "#bbb", .8, "3 3")
                .Line(LoadAt, y, LoadAt + ChartWidth + 90, y, "#bbb", .8, "3 3");
        }

        for (var third = 0; third < 3; third++)
        {
            var y = bottom - (height * ((third + .5) / 3));
            svg.Label(LoadAt + ChartWidth + 12, y - 2, Names[third], "start", colour: "#555")
                .Label(LoadAt + ChartWidth + 12, y + 12, $"takes {ConePicture.Text(drawing.Curves[0].Thirds[third])}", "start", bold: true);
        }
    }

    private static void Legend(SvgText svg, ConeDrawing drawing, double y)
    {
        var x = PressureAt;
        for (var i = 0; i < drawing.Curves.Count; i++)
        {
            var (colour, dashes) = Pens[i % Pens.Length];
            svg.Line(x, y - 4, x + 26, y - 4, colour, i == 0 ? 2.4 : 1.6, dashes)
                .Label(x + 32, y, $"{drawing.Curves[i].Name} {ConePicture.Text(drawing.Curves[i].Load)}", "start", colour: colour);
            x += 190;
        }
    }

    /// <summary>Above its contact the cone has shrunk off the wall.</summary>
    private static void FreePart(SvgText svg, ConeCurve curve, Quantity length, double scale, double bottom)
    {
        if (curve.ContactTo.Si < length.Si * .97)
        {
            var y = bottom - (curve.ContactTo.Si * scale);
            svg.Line(PressureAt, y, PressureAt + 60, y, "#a01515", 1)
                .Label(PressureAt + 64, y + 4, "off the wall above here", "start", colour: "#a01515");
        }
    }
}
