using System.Globalization;
using CalcService.Api.Answers;
using CalcService.Api.Sheets;
using CalcService.Api.Units;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>
/// Degree of cure with its band and what is allowed when, above the temperatures behind it; one chart for each kind of end.
/// </summary>
public static class CurePicture
{
    /// <summary>The first few ends: a wall sheet shows what was poured, not a catalogue.</summary>
    private const int MostEnds = 4;

    private const double Width = 680, Left = 44, Right = 668, CureTop = 52, CureBottom = 212, HeatTop = 236, HeatBottom = 296,
        EndHeight = 322;

    /// <summary>One for each end, the last one saying how many more there are.</summary>
    public static IReadOnlyList<SvgText> Draw(IReadOnlyList<CuredEnd> ends) => [.. ends.Take(MostEnds).Select((end, i) =>
    {
        var more = i == MostEnds - 1 ? ends.Count - MostEnds : 0;
        var svg = new SvgText(Width, EndHeight, "Degree of cure and temperatures over time");
        DrawEnd(svg, end);
        if (more > 0)
        {
            svg.Label(Left + 200, 16, string.Create(CultureInfo.InvariantCulture, $"and {more} more, not drawn"), "start");
        }

        return svg;
    })];

    private static void DrawEnd(SvgText svg, CuredEnd end)
    {
        svg.Label(Left, 16, $"{end.Quantity} × {end.Id}", "start", bold: true);
        if (end.Curve.Count < 2)
        {
            svg.Label(Left, 34, "Not known: see the findings.", "start");
            return;
        }

        var axis = new TimeAxis(end.Curve[0].At, end.Curve[^1].At, Left, Right);
        Cure(svg, end, axis);
        Heat(svg, end, axis);
    }

    private static void Cure(SvgText svg, CuredEnd end, TimeAxis axis)
    {
        double Y(Quantity degree) => CureBottom - ((CureBottom - CureTop) * degree.Si);
        axis.Draw(svg, CureTop, CureBottom);
        for (var percent = 0; percent <= 100; percent += 20)
        {
            var y = CureBottom - ((CureBottom - CureTop) * percent / 100);
            svg.Line(Left, y, Right, y, percent == 0 ? SvgText.Ink : "#ddd", .6);
            svg.Label(Left - 4, y + 3, percent.ToString(CultureInfo.InvariantCulture) + " %", "end");
        }

        if (end.Curve.All(point => point is { CureEarliest: not null, CureLatest: not null }))
        {
            svg.Area(end.Curve.Select(point => (axis.X(point.At), Y(point.CureEarliest!)))
                .Concat(end.Curve.Reverse().Select(point => (axis.X(point.At), Y(point.CureLatest!)))), "#cfe0ee", "band");
        }

        if (end.GelAt is { Earliest: { } earliest, Latest: { } latest })
        {
            svg.Box(axis.X(earliest), CureTop, Math.Max(1, axis.X(latest) - axis.X(earliest)), CureBottom - CureTop, "rgba(200,150,40,.25)",
                title: "gel, earliest to latest");
        }

        svg.Path(end.Curve.Select(point => (axis.X(point.At), Y(point.CureCentre))), "#1f5f8b", 1.6, "centre");
        svg.Path(end.Curve.Select(point => (axis.X(point.At), Y(point.CureSkin))), "#1f5f8b", 1.2, "skin", "4 2");
        // What the sheet alone would say, beside the model.
        svg.Path(end.Curve.Where(point => point.SheetShare is not null).Select(point => (axis.X(point.At), Y(point.SheetShare!))),
            "#3a7d44", .8, "sheet", "1 2");
        Milestones(svg, end, axis);
    }

    private static void Milestones(SvgText svg, CuredEnd end, TimeAxis axis)
    {
        var row = 0;
        foreach (var (what, at) in new (string, DateTimeOffset?)[]
        {
            ("gel", end.GelAt.Expected), ("undisturbed until", end.UndisturbedUntil), ("proof load from", end.ProofLoadFrom),
                ("service from", end.ServiceFrom),
        })
        {
            if (at is not { } moment)
            {
                continue;
            }

            var x = axis.X(moment);
            var y = CureTop + 10 + (row++ * 13);
            svg.Line(x, CureTop, x, CureBottom, "#a33", 1, "5 3");
            var isRight = x > (Left + Right) / 2;
            svg.Label(isRight ? x - 3 : x + 3, y, $"{what} {moment.ToString("MM-dd HH:mm", CultureInfo.InvariantCulture)}", isRight ? "end"
                : "start", bold: true, colour: "#a33");
        }
    }

    private static void Heat(SvgText svg, CuredEnd end, TimeAxis axis)
    {
        var all = end.Curve.SelectMany(point => new[] { point.Air, point.Centre, point.Skin }).ToArray();
        var (low, high) = (all.Min(quantity => quantity.Si) - 1, all.Max(quantity => quantity.Si) + 1);
        double Y(Quantity temperature) => HeatBottom - ((HeatBottom - HeatTop) * (temperature.Si - low) / (high - low));
        axis.Draw(svg, HeatTop, HeatBottom);
        svg.Line(Left, HeatBottom, Right, HeatBottom, SvgText.Ink, .6);
        foreach (var quantity in new[] { all.MinBy(quantity => quantity.Si)!, all.MaxBy(quantity => quantity.Si)! })
        {
            svg.Label(Left - 4, Y(quantity) + 3, AnswerText.Of(quantity, 3), "end");
        }

        svg.Path(end.Curve.Select(point => (axis.X(point.At), Y(point.Centre))), "#b5451b", 1.4, "centreTemperature");
        svg.Path(end.Curve.Select(point => (axis.X(point.At), Y(point.Skin))), "#b5451b", 1, "skinTemperature", "4 2");
        svg.Path(end.Curve.Select(point => (axis.X(point.At), Y(point.Air))), "#666", 1, "airTemperature", "1 2");
        svg.Label(Right, 34,
            "cure: full line centre, dashes skin, shade band, dots the sheet · heat: full line centre, dashes skin, dots air", "end");
    }
}
