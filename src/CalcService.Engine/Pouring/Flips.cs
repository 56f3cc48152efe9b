using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;

namespace CalcService.Engine.Pouring;

/// <summary>A reading that would change the decision, the others and the mixes as they are.</summary>
/// <param name="Reading">airTemperature, steelTemperature, compoundTemperature or relativeHumidity.</param>
/// <param name="When">above or below the value.</param>
/// <param name="Value">Where the decision changes, K or a ratio.</param>
/// <param name="To">What it changes to there.</param>
public sealed record Flip(string Reading, string When, double Value, Decision To);

/// <summary>
/// Looks for the nearest value of each reading, either way, at which the decision changes. Nothing here knows the
/// rules: the checks themselves are asked again beyond each value where they may change their mind, and where they
/// did so in between, the place is bisected.
/// </summary>
internal static class Flips
{
    /// <summary>More than the slack of a comparison, so that a check beyond an edge has changed its mind.</summary>
    private const double Beyond = 1e-6;

    /// <summary>Findings that depend on how wet the air is.</summary>
    private static readonly FindingDefinition[] OfWetness = [SteelFindings.SteelAtDewPoint, SteelFindings.SteelNearDewPoint];

    /// <summary>Findings that depend on a reading that is there; all others stay as they are.</summary>
    private static readonly FindingDefinition[] OfReadings =
    [
        .. OfWetness, CompoundFindings.OutsidePouringRange, CompoundFindings.DoseUnknown, PouringFindings.DoseEdge,
        PouringFindings.DoseUncertain, CompoundFindings.DoseContradictsSheet, DoseFindings.DoseAboveMaximum,
        CompoundFindings.GelTimeUnknown, CompoundFindings.GelTimeExtrapolated, CompoundFindings.GelTimeFromOnePoint,
        PouringFindings.PotLifeTooShort,
        PouringFindings.VapourAboveLaw, PouringFindings.VapourMayExceedLaw, PouringFindings.VapourAboveRecommended,
        PouringFindings.VapourAboveOwnLimit, PouringFindings.VapourAboveStricterLaw,
    ];

    public static IReadOnlyList<Flip> Find(PourScope scope, PlannedEnd[] ends, IReadOnlyList<Mix> mixes)
    {
        var lasting = Without(scope, OfReadings);
        if (lasting == Decision.DoNotProceed)
        {
            return [];
        }

        var flips = new List<Flip>();
        var now = scope.Findings.Decide();
        foreach (var reading in FlipReading.Of(scope, withCautions: lasting < Decision.ProceedWithCare))
        {
            var stays = reading.OnlyWets ? Without(scope, OfWetness) : lasting;
            Decision At(double value) => DecisionAt(scope, reading, value, ends, mixes, stays);
            Add(flips, reading, "below", At, now);
            Add(flips, reading, "above", At, now);
        }

        return flips;
    }

    /// <summary>The decision that all other findings give.</summary>
    private static Decision Without(PourScope scope, FindingDefinition[] definitions) =>
        scope.Findings.Decide(finding => !Array.Exists(definitions, definition => definition.Code == finding.Definition.Code));

    private static void Add(List<Flip> flips, FlipReading reading, string when, Func<double, Decision> at, Decision now)
    {
        var sign = when == "above" ? 1 : -1;
        var last = reading.Value;
        foreach (var edge in reading.EdgesFrom(sign))
        {
            var (inside, outside) = (edge - (sign * Beyond), edge + (sign * Beyond));
            if (at(outside) is var beyond && beyond == now)
            {
                last = outside;
                continue;
            }

            var value = edge;
            if ((inside - last) * sign > 0 && at(inside) != now)
            {
                // A check that has no edge of its own, such as pot life, changed its mind on the way.
                value = Bisect(last, inside, at, now);
                beyond = at(value);
            }

            flips.Add(new(reading.Name, when, value, beyond));
            return;
        }
    }

    /// <summary>Nearest value, to a millionth, at which the decision is no longer the present one.</summary>
    private static double Bisect(double same, double changed, Func<double, Decision> at, Decision now)
    {
        while (Math.Abs(changed - same) > 1e-6)
        {
            var middle = (same + changed) / 2;
            (same, changed) = at(middle) == now ? (middle, changed) : (same, middle);
        }

        return changed;
    }

    private static Decision DecisionAt(PourScope plan, FlipReading reading, double value, PlannedEnd[] ends, IReadOnlyList<Mix> mixes,
        Decision lasting)
    {
        var probe = new PourProbe(plan, reading.With(value), lasting);
        ReadingChecks.Check(probe);
        if (probe.IsSettled || reading.OnlyWets)
        {
            return probe.Decision;
        }

        var dose = DoseAndGel.Dose(probe);
        SheetChecks.CheckDose(probe, dose);
        var gel = DoseAndGel.Gel(probe, dose);
        if (ends.All(end => end.Fill.HighM3 is not null))
        {
            PotLifeChecks.CanFillEach(probe, ends, gel?.PotLifeS);
        }

        if (!probe.IsSettled)
        {
            VapourCheck.Check(probe, mixes, gel);
        }

        return probe.Decision;
    }
}
