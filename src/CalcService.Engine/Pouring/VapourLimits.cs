using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Engine.Pouring;

/// <summary>
/// The vapour against what law, recommendation and request allow. Of several limits of one kind the one that is passed the furthest is
/// found.
/// </summary>
/// <param name="Scope">The plan.</param>
/// <param name="Limits">The limits of the substance.</param>
/// <param name="May">What may be reached near the work.</param>
/// <param name="Surely">What is reached if the air mixes perfectly: an assumed mixing factor is a rule of thumb, and stops nobody.</param>
internal sealed record VapourLimits(PourScope Scope, AirLimits Limits, VapourResult May, VapourResult Surely)
{
    private const string Peak = "peak", Mean = "eight-hour mean";

    private sealed record Passed(string Which, Judged Judged, string Law);

    public void Check()
    {
        var (jurisdiction, workplace) = (Scope.Conditions.Jurisdiction, Scope.Conditions.Workplace);
        var law = Limits.LawAt(jurisdiction, workplace);
        // A peak says no more of a mean over fifteen minutes than that it may be above.
        var isFound = Find(PouringFindings.VapourAboveLaw, Worst(PassedOf(law with { ShortTerm = null }, Surely)))
            || Find(PouringFindings.VapourMayExceedLaw, Worst(PassedOf(law, May)));
        isFound |= CheckStricter([.. Limits.LawsThatMayHold(jurisdiction, workplace).Where(other => other != law)
            .SelectMany(other => PassedOf(other, May))]);
        if (!isFound)
        {
            Find(PouringFindings.VapourAboveRecommended,
                Worst([.. Over(May.Peak, Limits.RecommendedShortTerm, Peak, ""),
                .. Over(May.TimeWeighted, Limits.RecommendedTimeWeighted, Mean, "")]));
        }

        CheckOwn();
    }

    /// <summary>Laws that may hold as well, as far as it is said.</summary>
    private bool CheckStricter(IReadOnlyList<Passed> stricter) =>
        Find(PouringFindings.VapourAboveStricterLaw, Worst(stricter) is { } passed
        ? passed with { Law = string.Join(", ", stricter.Select(one => one.Law).Distinct()) } : null);

    private static IEnumerable<Passed> PassedOf(AirLaw law, VapourResult reached) =>
        [.. Over(reached.Peak, law.Ceiling, Peak, law.Name), .. Over(reached.Peak, law.ShortTerm, Peak, law.Name),
        .. Over(reached.TimeWeighted, law.TimeWeighted, Mean, law.Name)];

    private static IEnumerable<Passed> Over(double reached, RuleLimit? limit, string which, string law) =>
        limit?.Judge(Measure.AirFraction(reached)) is { IsAbove: true } above ? [new(which, above, law)] : [];

    private static Passed? Worst(IEnumerable<Passed> passed) => passed.MaxBy(one => one.Judged.Share);

    private bool Find(FindingDefinition definition, Passed? found)
    {
        if (found is not { } passed)
        {
            return false;
        }

        Scope.Find(definition, PourPointers.Room, passed.Judged, [PourPointers.Ends],
            words: [new("substance", Limits.Substance), new("which", passed.Which), new("law", passed.Law)]);
        return true;
    }

    private void CheckOwn()
    {
        if (Scope.Conditions.AirLimits is not { } own)
        {
            return;
        }

        Check(May.Peak, Surely.Peak, own.ShortTerm, "shortTerm", Peak);
        Check(May.TimeWeighted, Surely.TimeWeighted, own.TimeWeighted, "timeWeighted", Mean);

        void Check(double may, double surely, double? limit, string member, string which)
        {
            Judged Hold(double reached) => new(Measure.AirFraction(reached), limit is { } most ? Limit.Of(Measure.AirFraction(most))
                : null);
            if (Hold(may) is { IsAbove: true } above)
            {
                var sure = Hold(surely);
                Scope.Find(PouringFindings.VapourAboveOwnLimit, $"{PourPointers.OwnAirLimits}/{member}", sure.IsAbove ? sure : above,
                    [PourPointers.Room], sure.IsAbove ? Severity.Stop : Severity.Caution,
                    words: [new("substance", Limits.Substance), new("which", which), new("from", own.From ?? "the request")]);
            }
        }
    }
}
