using CalcService.Api.Sheets;

namespace CalcService.Api.Capabilities.Curing;

/// <summary>The tasks of the shop: a row for each end, its tasks along the time.</summary>
public static class TaskPicture
{
    /// <summary>As many as a page can hold and a person read.</summary>
    private const int MostRows = 40;

    private const double Width = 680, Left = 96, Right = 668, Top = 34, Row = 14;

    private static readonly Dictionary<string, (string Letter, string Fill)> Look = new(StringComparer.Ordinal)
    {
        ["prepare"] = ("prepare", "#b9c7d3"), ["position"] = ("position", "#8fa9c0"), ["pour"] = ("mix and pour", "#b5451b"),
            ["undisturbed"] = ("undisturbed", "#e8c98a"),
        ["cure"] = ("cure", "#f3e6c8"), ["proof"] = ("proof load", "#3f7d4e"), ["record"] = ("record", "#a9cbb1"),
    };

    /// <summary>As many pictures as the rows need, all over the same time.</summary>
    public static IReadOnlyList<SvgText> Draw(IReadOnlyList<ScheduledTask> tasks)
    {
        var axis = new TimeAxis(tasks.Min(task => task.From), tasks.Max(task => task.To), Left, Right);
        return [.. tasks.GroupBy(task => (task.End, task.Unit)).OrderBy(row => row.Min(task => task.From))
            .ThenBy(row => row.Key.End, StringComparer.Ordinal).ThenBy(row => row.Key.Unit)
            .Chunk(MostRows).Select(rows => Draw(rows, axis))];
    }

    private static SvgText Draw(IGrouping<(string End, int Unit), ScheduledTask>[] rows, TimeAxis axis)
    {
        var bottom = Top + (rows.Length * Row);
        var svg = new SvgText(Width, bottom + 20, "Tasks of the shop over time");
        var x = Left;
        foreach (var (name, fill) in Look.Values)
        {
            svg.Box(x, 8, 9, 9, fill, SvgText.Ink);
            svg.Label(x + 13, 16, name, "start");
            x += 82;
        }

        axis.Draw(svg, Top, bottom);
        for (var i = 0; i < rows.Length; i++)
        {
            var y = Top + (i * Row);
            svg.Label(Left - 5, y + 10, $"{rows[i].Key.End} {rows[i].Key.Unit}", "end");
            foreach (var task in rows[i])
            {
                svg.Box(axis.X(task.From), y + 2, Math.Max(.5, axis.X(task.To) - axis.X(task.From)), Row - 4, Look[task.Task].Fill,
                    SvgText.Ink, $"{task.Task}: {task.On ?? "nobody"}");
            }
        }

        return svg;
    }
}
