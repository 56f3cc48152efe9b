using CalcService.Engine.Findings;

namespace CalcService.Engine.Reuse;

/// <summary>The basket as measured, section by section.</summary>
internal static class BoreWear
{
    /// <summary>A section is looked for in each third: what happens at the small end says nothing about the mouth.</summary>
    private const int Thirds = 3;

    public static WearFacts Measure(ReuseScope scope)
    {
        var (basket, trace) = (scope.Socket.Nominal.Basket, scope.Trace);
        var stations = scope.Socket.Measured.Stations.Where(station => station.DiametersM.Count > 0)
            .OrderBy(station => station.FromSmallEndM)
            .Select(station =>
            {
                var nominal = basket.DiameterAtM(station.FromSmallEndM / basket.LengthM);
                var (least, most) = (station.DiametersM.Min(), station.DiametersM.Max());
                return new StationWear(station.FromSmallEndM, nominal, least, most,
                    WearFormulas.Growth(most, nominal, trace), WearFormulas.Ovality(most, least, nominal, trace));
            }).ToArray();
        return new()
        {
            Stations = stations,
            BoreGrowth = stations.Length > 0 ? stations.Max(station => station.Growth) : null,
            Ovality = stations.Length > 0 ? stations.Max(station => station.Ovality) : null,
            // Between neighbours, so that a groove in the middle shows.
            TaperLoss = stations.Length > 1
                ? stations.Zip(stations.Skip(1),
                (lower, upper) =>
                WearFormulas.TaperLoss(lower.LargestM, upper.LargestM, upper.FromSmallEndM - lower.FromSmallEndM, basket.Taper, trace))
                .Max()
                : null,
        };
    }

    /// <summary>Sections that are missing or have a single diameter.</summary>
    public static IReadOnlyList<Gap> Gaps(UsedSocket socket)
    {
        var (stations, length) = (socket.Measured.Stations, socket.Nominal.Basket.LengthM);
        List<Gap> gaps = [.. stations.Select((station, i) => (station, i)).Where(pair => pair.station.DiametersM.Count < 2)
            .Select(pair =>
            new Gap(ReuseFindings.MeasurementMissing, ReusePointers.Measured($"stations/{pair.i}/diameters"),
            "a second diameter across this section"))];
        string[] names = ["near the small end", "in the middle", "near the mouth"];
        var without = names.Where((_, third) => !stations.Any(station => Third(station.FromSmallEndM, length) == third)).ToArray();
        if (without.Length > 0)
        {
            gaps.Add(new(ReuseFindings.MeasurementMissing, ReusePointers.Measured("stations"), "the bore " + string.Join(", ", without)));
        }

        return gaps;
    }

    private static int Third(double fromSmallEndM, double lengthM) => Math.Min(Thirds - 1, (int)(fromSmallEndM / lengthM * Thirds));
}
