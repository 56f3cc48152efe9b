using System.Globalization;

namespace CalcService.Api.Sheets;

/// <summary>Moments along the width of a picture, with marks at round times.</summary>
public sealed class TimeAxis(DateTimeOffset from, DateTimeOffset to, double left, double right)
{
    private const int MostMarks = 10;

    private static readonly TimeSpan[] Steps =
    [
        TimeSpan.FromMinutes(5), TimeSpan.FromMinutes(10), TimeSpan.FromMinutes(15), TimeSpan.FromMinutes(30), TimeSpan.FromHours(1),
            TimeSpan.FromHours(2),
        TimeSpan.FromHours(3), TimeSpan.FromHours(6), TimeSpan.FromHours(12), TimeSpan.FromDays(1), TimeSpan.FromDays(2),
        TimeSpan.FromDays(7),
    ];

    public double X(DateTimeOffset at) => left + ((right - left) * Math.Clamp((at - from) / (to - from), 0, 1));

    /// <summary>Draws marks below a line, and a line upwards from each.</summary>
    public void Draw(SvgText svg, double top, double bottom)
    {
        var step = Array.Find(Steps, step => (to - from) / step <= MostMarks);
        step = step == TimeSpan.Zero ? Steps[^1] : step;
        while ((to - from) / step > MostMarks)
        {
            step *= 2;
        }

        var first = from.Ticks % step.Ticks == 0 ? from : from.AddTicks(step.Ticks - (from.Ticks % step.Ticks));
        for (var mark = first; mark <= to; mark += step)
        {
            svg.Line(X(mark), top, X(mark), bottom, "#ddd", .6);
            svg.Label(X(mark), bottom + 11,
                mark.ToString(step >= TimeSpan.FromDays(1) ? "MM-dd" : mark.TimeOfDay == TimeSpan.Zero ? "MM-dd HH:mm" : "HH:mm",
                CultureInfo.InvariantCulture));
        }
    }
}
