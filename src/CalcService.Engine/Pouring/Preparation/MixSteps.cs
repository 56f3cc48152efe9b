using System.Globalization;
using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Engine.Pouring.Preparation;

/// <summary>The steps from the last reading to the set cones, mix by mix.</summary>
internal static class MixSteps
{
    public static IEnumerable<PlannedStep> Of(PourScope scope, PourPlanResult plan)
    {
        yield return new(StepCatalogue.Read, null, null) { Words = [new("validUntil", Instants.Clock(plan.ReadingsValidUntil))] };
        foreach (var mix in plan.Mixes)
        {
            var number = new FindingWord("number", Measure.Count(mix.Number));
            var mixing = scope.Input.Compound.MixingTimeS is { } seconds ? new StepValue("mixingTime", Measure.Duration(seconds))
                : (StepValue?)null;
            yield return new(StepCatalogue.Mix, null, mix.Number)
            {
                Values = mixing is { } time ? [time] : [],
                Words =
                [
                    number, new("startsAt", Instants.Clock(mix.StartsAt)),
                    new("kits",
                    string.Join(", ",
                    mix.Kits.Select(kit => $"{Text(kit.Count)} {kit.Kit}{(kit.Lot is null ? "" : $" of lot {kit.Lot}")}"))),
                    new("order", Order(scope.Input.Compound, plan.Dose?.PerKit, mix)),
                    new("vessel", scope.Input.Compound.Vessels is { Count: > 0 } vessels ? ", in " + string.Join(" or ", vessels) : ""),
                    .. mixing is null ? new FindingWord[] { new("mixingTime", "as the sheet says") } : [],
                ],
            };
            yield return new(StepCatalogue.Witness, null, mix.Number)
            {
                Values = scope.Input.WitnessSampleM3 is { } sample ? [new("volume", Measure.Volume(sample))] : [],
                Words = [number, new("label", mix.WitnessLabel)],
            };
            yield return new(StepCatalogue.Fill, null, mix.Number)
            {
                Words = [number, new("fills", string.Join(", ", mix.Fills.Select(fill => $"{Text(fill.Count)} × {fill.End}"))),
                    new("stopAt", Instants.Clock(mix.StopPouringAt))],
            };
        }

        yield return new(StepCatalogue.Leave, null, null) { Words = [new("gelledAt", Instants.Clock(plan.GelledAt))] };
    }

    /// <summary>The sheet's order; else the dose first, stirred in, as the safety notes have it.</summary>
    private static string Order(CompoundSheet sheet, int? perKit, Mix mix)
    {
        var doses = perKit is { } each ? Text(checked(each * mix.Kits.Sum(kit => kit.Count))) : "?";
        var parts = sheet.MixingOrder.Count > 0 ? sheet.MixingOrder : perKit == 0 ? [MixPart.Resin, MixPart.Hardener]
            : [MixPart.Resin, MixPart.Dose, MixPart.Hardener];
        return string.Join(", then ",
            parts.Where(part => part != MixPart.Unknown && (part != MixPart.Dose || perKit != 0)).Select(part => part switch
        {
            MixPart.Dose => doses == "1" ? "1 dose, stirred in" : $"{doses} doses, stirred in",
            MixPart.Hardener => "the hardener",
            MixPart.Filler => "the filler",
            _ => "the resin",
        }));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
