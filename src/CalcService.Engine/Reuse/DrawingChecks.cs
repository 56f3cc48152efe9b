using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>
/// Whether the socket is the one of the drawing. Steel wears away and yields; it doesn't grow. A size with more metal than the
/// drawing's is of another socket, of one that isn't bare, or a slip of the pen: what was computed against the drawing means nothing then.
/// </summary>
internal static class DrawingChecks
{
    public static void Check(ReuseScope scope)
    {
        var far = Sizes(scope).Where(one => one is { Found: not null, Drawn: not null } && IsFar(scope, one)).ToArray();
        if (far.Length > 0)
        {
            var worst = far.MaxBy(one => Math.Abs(one.Found!.Value - one.Drawn!.Value) / one.Drawn.Value);
            scope.Find(ReuseFindings.NotAsDrawn, worst.Pointer, Judged.Length(worst.Found!.Value, worst.Drawn!.Value),
                [.. far.Select(one => one.Pointer).Where(pointer => pointer != worst.Pointer).Distinct(StringComparer.Ordinal)],
                    words: new FindingWord("what", worst.What));
        }

        CheckPin(scope);
        scope.Write("as-drawn", far.Length > 0 ? CheckOutcome.Undetermined : CheckOutcome.Pass, ReuseFindings.NotAsDrawn,
            missing: [.. far.Select(one => one.Pointer).Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>Each may be as drawn by itself, and yet they don't go together.</summary>
    private static void CheckPin(ReuseScope scope)
    {
        const string Id = "pin-in-hole";
        if (!scope.HasEars || scope.Socket.Measured is not { PinDiameterM: { } pin, PinHoleDiametersM: { Count: > 0 } holes })
        {
            scope.Skip(Id, ReuseFindings.PinThickerThanHole);
            return;
        }

        var (at, hole) = (ReusePointers.Measured("pinDiameter"), holes.Min());
        var judged = Judged.Length(pin, hole);
        if (judged.IsAbove)
        {
            scope.Find(ReuseFindings.PinThickerThanHole, at, judged,
                [ReusePointers.Measured("pinHoleDiameters")]);
        }

        scope.Write(Id, judged.IsAbove ? CheckOutcome.Undetermined : CheckOutcome.Pass, ReuseFindings.PinThickerThanHole,
            judged, missing: judged.IsAbove ? [at] : []);
    }

    private static bool IsFar(ReuseScope scope, (string Pointer, string What, double? Found, double? Drawn, bool MetalIsOutside) one)
    {
        var (found, drawn) = (one.Found!.Value, one.Drawn!.Value);
        var (share, allowed) = ((one.MetalIsOutside ? found - drawn : drawn - found) / drawn,
            WearAllowance.OfFace(scope, drawn).Over(drawn));
        return scope.Rules.FarOffDrawing.Judge(Measure.Fraction(share)).IsAbove && Judged.Fraction(share, allowed).IsAbove;
    }

    private static IEnumerable<(string Pointer, string What, double? Found, double? Drawn, bool MetalIsOutside)> Sizes(ReuseScope scope)
    {
        var (drawn, found) = (scope.Socket.Nominal, scope.Socket.Measured);
        for (var i = 0; i < found.Stations.Count; i++)
        {
            var station = found.Stations[i];
            if (station.DiametersM.Count > 0)
            {
                yield return (ReusePointers.Measured($"stations/{i}/diameters"), "the bore", station.DiametersM.Min(),
                    drawn.Basket.DiameterAtM(station.FromSmallEndM / drawn.Basket.LengthM), false);
            }
        }

        yield return (ReusePointers.Measured("outerDiameter"), "the outside of the basket", found.OuterAtSmallEndM, drawn.OuterAtSmallEndM,
            true);
        yield return (ReusePointers.Measured("outerDiameter"), "the outside of the basket", found.OuterAtMouthM, drawn.OuterAtMouthM, true);
        if (!scope.HasEars)
        {
            yield break;
        }

        yield return (ReusePointers.Measured("pinHoleDiameters"), "the pin hole",
            found.PinHoleDiametersM.Count > 0 ? found.PinHoleDiametersM.Min() : null, drawn.PinHoleDiameterM, false);
        yield return (ReusePointers.Measured("pinDiameter"), "the pin", found.PinDiameterM, drawn.PinDiameterM, true);
        yield return (ReusePointers.Measured("earThickness"), "the thickness of the ears", found.EarThicknessM, drawn.EarThicknessM, true);
        yield return (ReusePointers.Measured("earWidth"), "the width of the ears", found.EarWidthM, drawn.EarWidthM, true);
        yield return (ReusePointers.Measured("earEndDistance"), "the distance from the hole to the end of the ears", found.EarEndDistanceM,
            drawn.EarEndDistanceM, true);
    }
}
