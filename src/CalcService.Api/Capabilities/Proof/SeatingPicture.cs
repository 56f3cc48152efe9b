using CalcService.Api.Answers;
using CalcService.Api.Sheets;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>Seating over load: the band that is expected, and what was read.</summary>
internal static class SeatingPicture
{
    private const double Width = 760;
    private const double Height = 260;
    private const double Left = 70;
    private const double Right = 730;
    private const double Top = 20;
    private const double Bottom = 205;
    private const int Digits = 3, LoadDigits = 4;

    public static string Write(IReadOnlyList<ProofStepResult> steps, string place)
    {
        var svg = new SvgText(Width, Height, "Seating of the cone over the test load", fontSize: 12);
        var told = steps.Where(step => step.ExpectedSeating is not null || step.Seating is not null).OrderBy(step => step.Load.Si)
            .ToArray();
        if (told.Length == 0)
        {
            return svg.Label(Width / 2, Height / 2, "No seating is expected or read: see what was found.").ToString();
        }

        var (most, highest) = (told.Max(step => step.Load.Si),
            told.Max(step => Math.Max(step.ExpectedSeating?.High.Si ?? 0, step.Seating?.Si ?? 0)));
        double X(double load) => Left + ((Right - Left) * load / most);
        double Y(double seat) => Bottom - ((Bottom - Top) * seat / Math.Max(highest, 1e-6));
        var band = told.Where(step => step.ExpectedSeating is not null).ToArray();
        svg.Area(
        [
            .. band.Select(step => (X(step.Load.Si), Y(step.ExpectedSeating!.High.Si))),
            .. band.Reverse().Select(step => (X(step.Load.Si), Y(step.ExpectedSeating!.Low.Si))),
        ], "#ddd", stroke: "#555");
        svg.Line(Left, Bottom, Right, Bottom).Line(Left, Top, Left, Bottom);
        foreach (var step in told)
        {
            svg.Line(X(step.Load.Si), Bottom, X(step.Load.Si), Bottom + 5)
                .Label(X(step.Load.Si), Bottom + 20, AnswerText.AtMost(step.Load, LoadDigits));
            if (step.Seating is { } read)
            {
                var (x, y) = (X(step.Load.Si), Y(read.Si));
                svg.Line(x - 5, y - 5, x + 5, y + 5, width: 2).Line(x - 5, y + 5, x + 5, y - 5, width: 2);
            }
        }

        if (band.Length > 0)
        {
            var last = band[^1].ExpectedSeating!;
            svg.Label(Left - 5, Y(last.High.Si) + 4, AnswerText.Of(last.High, Digits), "end")
                .Label(Left - 5, Y(last.Low.Si) + 4, AnswerText.Of(last.Low, Digits), "end");
        }

        return svg.Label(Left, Height - 12, $"Grey: seating expected at the {place} under load, by a model. Crosses: read.", "start")
            .ToString();
    }
}
