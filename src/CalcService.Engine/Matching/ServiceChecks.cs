using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Ropes;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Matching;

/// <summary>Whether the compound stands its service, and the preparation suits resin.</summary>
internal static class ServiceChecks
{
    public static void Check(MatchScope scope)
    {
        var (service, range) = (scope.Input.Service, scope.Input.Compound.Service);
        if (range is null)
        {
            scope.SheetSilent(MatchPointers.SheetService, "service temperatures");
        }

        CheckTemperature(scope, service.LowestK, MatchPointers.Lowest, "lowest", range);
        CheckTemperature(scope, service.HighestK, MatchPointers.Highest, "highest", range);
        if (service.Chemicals is not { } chemicals)
        {
            scope.Find(MatchingFindings.SurroundingsNotGiven, MatchPointers.Chemicals);
            return;
        }

        for (var i = 0; i < chemicals.Count; i++)
        {
            CheckChemical(scope, chemicals[i], $"{MatchPointers.Chemicals}/{i}");
        }
    }

    /// <summary>What is done with the core, and whether what is planned spoils the grip.</summary>
    public static CoreTreatment CheckPreparation(MatchScope scope)
    {
        var core = scope.Input.Rope.Core switch
        {
            RopeCore.Fibre => CoreTreatment.CutOut,
            RopeCore.Iwrc => CoreTreatment.Unlaid,
            _ => CoreTreatment.Unknown,
        };
        if (scope.Input.Rope.PlasticFilled == Fact.Yes && scope.Input.Preparation?.PlasticLeftIn is null)
        {
            scope.Find(FitFindings.PlasticFilled, MatchPointers.Rope + "/plasticFilled", related: [MatchPointers.Plastic]);
        }

        if (scope.Input.Preparation is not { } planned)
        {
            return core;
        }

        if (core == CoreTreatment.CutOut && planned.Core is CoreTreatment.LeftIn or CoreTreatment.Unlaid)
        {
            scope.Find(BroomFindings.LeftInBroom, MatchPointers.Core, related: [MatchPointers.Rope + "/core"],
                words: new FindingWord("what", "fibre core"));
        }

        if (planned.PlasticLeftIn == true)
        {
            scope.Find(BroomFindings.LeftInBroom, MatchPointers.Plastic, source: BroomFindings.PlasticOnWires,
                words: new FindingWord("what", "plastic"));
        }

        if (planned.Cleaner is BroomCleaner.Acid or BroomCleaner.Flux)
        {
            scope.Find(BroomFindings.CleanerForbidden, MatchPointers.Cleaner,
                words: new FindingWord("cleaner", planned.Cleaner == BroomCleaner.Acid ? "acid" : "flux"));
        }

        return core;
    }

    private static void CheckTemperature(MatchScope scope, double? kelvins, string pointer, string which, TemperatureRange? range)
    {
        if (kelvins is not { } at)
        {
            scope.Find(MatchingFindings.ServiceTemperatureMissing, pointer, words: new FindingWord("which", which));
            return;
        }

        var found = Measure.Temperature(at);
        if (range is not null && Judged.Outside(found, Measure.Temperature(range.MinimumK),
            Measure.Temperature(range.MaximumK)) is { } outside)
        {
            scope.Find(MatchingFindings.ServiceOutsideSheet, pointer, outside, [MatchPointers.SheetService],
                words: [new("minimum", Measure.Temperature(range.MinimumK)), new("maximum", Measure.Temperature(range.MaximumK))]);
        }
        else if (scope.Rules.ServiceLowest.Judge(found) is { IsBelow: true } cold)
        {
            scope.Find(MatchingFindings.ServiceBeyondOldStandard, pointer, cold);
        }
        else if (scope.Rules.ServiceHighest.Judge(found) is { IsAbove: true } warm)
        {
            scope.Find(MatchingFindings.ServiceBeyondOldStandard, pointer, warm);
        }
    }

    private static void CheckChemical(MatchScope scope, string substance, string pointer)
    {
        var row = scope.Input.Compound.Chemicals.FirstOrDefault(known =>
            string.Equals(known.Substance, substance, StringComparison.OrdinalIgnoreCase));
        var definition = row?.Effect switch
        {
            ChemicalEffect.Resists => null,
            ChemicalEffect.Limited => MatchingFindings.ChemicalLimited,
            ChemicalEffect.Attacked => MatchingFindings.ChemicalAttacks,
            _ => MatchingFindings.ChemicalUnknown,
        };
        if (definition is not null)
        {
            scope.Find(definition, pointer, related: [MatchPointers.SheetChemicals], words: new FindingWord("substance", substance));
        }
    }
}
