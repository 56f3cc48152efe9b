using CalcService.Api.Answers;
using CalcService.Api.Sheets;
using CalcService.Api.Units;
using CalcService.Engine.Inspection;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>
/// The end lying on its side: the socket, the rope, where wires are broken and where to cut. Along the rope it is to scale.
/// </summary>
internal static class EndPicture
{
    private const double Width = 760;
    private const double Height = 190;
    private const double Mouth = 130;
    private const double End = 720;
    private const double Axis = 90;
    private const double Half = 14;
    private const int Digits = 3;

    /// <summary>Shortest stretch of rope that is drawn, m.</summary>
    private const double Shortest = .5;

    public static string Write(IReadOnlyList<InspectedWires> wires, Quantity? cut)
    {
        var placed = wires.Where(one => PlaceM(one) is not null).ToArray();
        var length = Math.Max(Shortest, 1.15 * Math.Max(cut?.Si ?? 0, placed.Select(one => PlaceM(one)!.Value).DefaultIfEmpty().Max()));
        double X(double metres) => Mouth + ((End - Mouth) * metres / length);
        var svg = new SvgText(Width, Height, "Where wires are broken and where to cut", fontSize: 12);
        svg.Area([(20, Axis - 45), (Mouth, Axis - 24), (Mouth, Axis + 24), (20, Axis + 45)], "#ddd", stroke: "#222");
        svg.Label(75, Axis + 4, "socket");
        svg.Area([(Mouth, Axis - Half), (End, Axis - Half), (End, Axis + Half), (Mouth, Axis + Half)], "#f4f4f4", stroke: "#222");
        foreach (var one in placed)
        {
            var x = X(PlaceM(one)!.Value);
            svg.Line(x - 5, Axis - 5, x + 5, Axis + 5, width: 2).Line(x - 5, Axis + 5, x + 5, Axis - 5, width: 2);
            svg.Label(x, Axis - Half - 8, one.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), bold: true);
        }

        if (cut is not null)
        {
            svg.Line(X(cut.Si), Axis - 45, X(cut.Si), Axis + 45, width: 2, dash: "6 4");
            svg.Label(X(cut.Si), Axis + 62, $"cut here: {AnswerText.AtLeast(cut, Digits)} from the socket", X(cut.Si) > (Mouth + End) / 2
                ? "end" : "start", bold: true);
        }

        var unplaced = wires.Where(one => PlaceM(one) is null).Sum(one => one.Count);
        svg.Label(Mouth, Height - 12, wires.Count == 0 ? "No broken wires are told."
            : $"Crosses: broken wires with their number{(unplaced > 0 ? $"; {unplaced} more without a place" : "")}.", "start");
        return svg.ToString();
    }

    private static double? PlaceM(InspectedWires wires) => wires.FromMouth?.Si ?? (wires.Place == WirePlace.Mouth ? 0 : null);
}
