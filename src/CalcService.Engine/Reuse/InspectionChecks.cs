using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Reuse;

/// <summary>Cracks, rust and what covers them.</summary>
internal static class InspectionChecks
{
    private static readonly Dictionary<SocketPlace, (string Id, string Name)> Places = new()
    {
        [SocketPlace.Basket] = ("crack-basket", "basket"),
        [SocketPlace.Ears] = ("crack-ears", "ears"),
        [SocketPlace.PinHoles] = ("crack-pin-holes", "pin holes"),
        [SocketPlace.Pin] = ("crack-pin", "pin"),
        [SocketPlace.Bail] = ("crack-bail", "bail"),
    };

    public static void Check(ReuseScope scope)
    {
        var inspection = scope.Input.Inspection;
        CheckSurface(scope, inspection);
        scope.MustNotBe("visible-cracks", inspection.VisibleCracks, ReusePointers.Cracks, ReuseFindings.Cracked,
            new(ReuseFindings.VisualMissing, ReusePointers.Cracks, "whether cracks are seen"), new FindingWord("what", "seen by eye"));
        foreach (var (place, (id, name)) in Places)
        {
            var isThere = place == SocketPlace.Basket
                || (place == SocketPlace.Bail ? scope.Socket.Type == SocketType.Closed : scope.HasEars);
            CheckPlace(scope, inspection, place, id, name, isThere);
        }

        CheckIndications(scope, inspection.Indications);
        CheckAge(scope, inspection.InspectedOn);
    }

    private static void CheckSurface(ReuseScope scope, CrackInspection inspection)
    {
        Gap? cover = inspection.Surface switch
        {
            SurfaceState.Clean => null,
            SurfaceState.OldResin => new(ReuseFindings.SurfaceCovered, ReusePointers.Surface, "old resin"),
            SurfaceState.OldMetal => new(ReuseFindings.SurfaceCovered, ReusePointers.Surface, "old metal"),
            SurfaceState.Painted => new(ReuseFindings.SurfaceCovered, ReusePointers.Surface, "paint"),
            _ => new(ReuseFindings.VisualMissing, ReusePointers.Surface, "whether the surface was clean"),
        };
        if (!scope.IsOpen("surface", ReuseFindings.SurfaceCovered, cover is null ? [] : [cover]))
        {
            scope.Write("surface", CheckOutcome.Pass, ReuseFindings.SurfaceCovered);
        }

        var isSevere = inspection.Corrosion == CorrosionState.Severe;
        var isRusty = inspection.Corrosion is CorrosionState.Light or CorrosionState.Pitted;
        var rule = isRusty ? ReuseFindings.CorrodedLight : ReuseFindings.CorrodedSevere;
        scope.MustNotBe("corrosion", inspection.Corrosion == CorrosionState.Unknown ? null : isSevere || isRusty, ReusePointers.Corrosion,
            rule,
            new(ReuseFindings.VisualMissing, ReusePointers.Corrosion, "how far rust has gone"));
    }

    private static void CheckPlace(ReuseScope scope, CrackInspection inspection, SocketPlace place, string id, string name, bool isThere)
    {
        var cracks = (inspection.Indications ?? []).Select((one, i) => (one, i))
            .Where(pair => pair.one.Kind is IndicationKind.Linear or IndicationKind.Crack
            && (pair.one.Place == place || (pair.one.Place == SocketPlace.Unknown && isThere))).ToArray();
        foreach (var (one, i) in cracks)
        {
            scope.Find(ReuseFindings.Cracked, $"{ReusePointers.Indications}/{i}",
                new(one.LengthM is { } length ? Measure.Length(length) : null, null),
                words: new FindingWord("what", one.Place == SocketPlace.Unknown ? "place not said" : name));
        }

        if (cracks.Length > 0)
        {
            scope.Write(id, CheckOutcome.Fail, ReuseFindings.Cracked);
        }
        else if (!isThere)
        {
            scope.Skip(id, ReuseFindings.Cracked);
        }
        else if (!scope.IsOpen(id, ReuseFindings.Cracked, [.. Gaps(inspection, place, name)]))
        {
            scope.Write(id, CheckOutcome.Pass, ReuseFindings.Cracked);
        }
    }

    private static IEnumerable<Gap> Gaps(CrackInspection inspection, SocketPlace place, string name)
    {
        if (inspection.Method is SurfaceMethod.Unknown or SurfaceMethod.None or SurfaceMethod.VisualOnly)
        {
            yield return new(ReuseFindings.CrackSearchMissing, ReusePointers.SurfaceMethod, "no surface method was used");
        }

        if (inspection.Indications is null)
        {
            yield return new(ReuseFindings.CrackSearchMissing, ReusePointers.Indications, "nobody reports what it showed");
        }

        if (inspection.Places?.Contains(place) != true)
        {
            yield return new(ReuseFindings.CrackSearchMissing, ReusePointers.Places,
                inspection.Places is null ? "nobody says which parts were searched" : $"some parts were left out, among them the {name}");
        }
    }

    private static void CheckIndications(ReuseScope scope, IReadOnlyList<Indication>? indications)
    {
        List<Gap> gaps = indications is null
            ? [new(ReuseFindings.CrackSearchMissing, ReusePointers.Indications, "nobody reports what it showed")] : [];
        var all = (indications ?? []).Select((one, i) => (one, Pointer: $"{ReusePointers.Indications}/{i}")).ToArray();
        gaps.AddRange(all.Where(pair => pair.one.Kind == IndicationKind.Unknown
            || (pair.one.Kind == IndicationKind.Rounded && pair.one.Place == SocketPlace.Unknown))
            .Select(pair => new Gap(ReuseFindings.IndicationUnclear, pair.Pointer, "")));
        var rounded = all.Where(pair => pair.one.Kind == IndicationKind.Rounded).ToArray();
        foreach (var (one, pointer) in rounded)
        {
            scope.Find(ReuseFindings.RoundedIndication, pointer, new(one.LengthM is { } length ? Measure.Length(length) : null, null));
        }

        if (!scope.IsOpen("indications", ReuseFindings.RoundedIndication, gaps))
        {
            scope.Weigh("indications", rounded.Length > 0 ? ReuseFindings.RoundedIndication : null, ReuseFindings.RoundedIndication);
        }
    }

    private static void CheckAge(ReuseScope scope, DateOnly? inspectedOn)
    {
        const string Id = "crack-search-age";
        var most = scope.Rules.InspectionAge;
        Gap[] gaps = inspectedOn is null ? [new(ReuseFindings.CrackSearchMissing, ReusePointers.InspectedOn, "nobody says when it was")]
            : [];
        if (scope.IsOpen(Id, ReuseFindings.InspectionOld, gaps, most.Judge(null)))
        {
            return;
        }

        var day = inspectedOn!.Value;
        var age = new Judged(Measure.Days(scope.Input.AssessedOn.DayNumber - day.DayNumber), most.DaysFrom(day));
        if (age.IsAbove)
        {
            scope.Find(ReuseFindings.InspectionOld, ReusePointers.InspectedOn, age);
        }

        scope.Weigh(Id, age.IsAbove ? ReuseFindings.InspectionOld : null, ReuseFindings.InspectionOld, age);
    }
}
