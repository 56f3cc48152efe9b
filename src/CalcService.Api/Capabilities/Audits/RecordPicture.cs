using CalcService.Api.Sheets;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>The times of a record along a line, above them how long the end had to rest and to cure.</summary>
public static class RecordPicture
{
    private const double Width = 680, Left = 96, Right = 660, Top = 66, Row = 16;

    public static string Write(RecordedTimes times, RecomputedNumbers plan)
    {
        (string Name, DateTimeOffset At)[] known =
        [
            .. new (string Name, DateTimeOffset? At)[]
            {
                ("prepared", times.PreparedAt), ("read", times.ReadAt), ("mixed", times.MixedAt), ("poured", times.PouredAt),
                    ("gel seen", times.GelAt),
                ("moved", times.MovedAt), ("released", times.ReleasedAt), ("proof loaded", times.ProofAt),
                ("in service", times.InServiceAt),
            }.Where(one => one.At is not null).Select(one => (one.Name, one.At!.Value)),
        ];
        var bottom = Top + (Math.Max(1, known.Length) * Row);
        var svg = new SvgText(Width, bottom + 20, "Times of the record");
        DateTimeOffset[] all = [.. known.Select(one => one.At), .. new[] { plan.UndisturbedUntil, plan.LoadFrom }.OfType<DateTimeOffset>()];
        if (all.Length < 2 || all.Min() == all.Max())
        {
            svg.Label(Width / 2, Top, "The record holds no two times.");
            return svg.ToString();
        }

        var axis = new TimeAxis(all.Min(), all.Max(), Left, Right);
        axis.Draw(svg, Top, bottom);
        if (times.MixedAt is { } mixed)
        {
            Bar(svg, axis, 20, mixed, plan.UndisturbedUntil, "#e8c98a", "undisturbed");
            Bar(svg, axis, 38, mixed, plan.LoadFrom, "#f3e6c8", "no load");
        }

        for (var i = 0; i < known.Length; i++)
        {
            var y = Top + (i * Row) + (Row / 2);
            svg.Label(Left - 6, y + 3, known[i].Name, "end");
            svg.Box(axis.X(known[i].At) - 3, y - 3, 6, 6, "#b5451b", SvgText.Ink, known[i].Name);
        }

        return svg.ToString();
    }

    private static void Bar(SvgText svg, TimeAxis axis, double y, DateTimeOffset from, DateTimeOffset? until, string fill, string name)
    {
        if (until is { } end)
        {
            svg.Label(Left - 6, y + 10, name, "end");
            svg.Box(axis.X(from), y, Math.Max(.5, axis.X(end) - axis.X(from)), 12, fill, SvgText.Ink, name);
        }
    }
}
