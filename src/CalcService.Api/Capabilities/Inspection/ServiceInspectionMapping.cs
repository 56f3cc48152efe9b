using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Inspection;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Inspection;

/// <summary>An inspection from the contract to the engine and back.</summary>
public static class ServiceInspectionMapping
{
    /// <param name="request">A valid request.</param>
    /// <param name="sheet">The sheet of its compound, where it names one.</param>
    public static InspectionInput ToEngine(ServiceInspectionRequest request, Engine.Compounds.CompoundSheet? sheet)
    {
        var found = request.Inspection ?? new();
        return new()
        {
            AssessedOn = request.AssessedOn,
            RuleSet = request.RuleSet,
            Rope = request.Rope.ToEngine(),
            Compound = sheet,
            BrokenWires = found.BrokenWires is { } wires
                ? wires.Select(one => new BrokenWires(one.Count, one.Place ?? WirePlace.Unknown, one.FromMouth?.Si, one.InOneStrand))
                .ToArray()
                : null,
            Cracks = Known(found.Cracks),
            Corrosion = found.Corrosion ?? Degree.Unknown,
            Wear = found.Wear ?? Degree.Unknown,
            BendAtMouth = Known(found.BendAtMouth),
            ImproperlyApplied = Known(found.ImproperlyApplied),
            ConeMovement = Known(found.ConeMovement),
            RustBleed = Known(found.RustBleed),
            Lubricant = found.Lubricant ?? LubricantState.Unknown,
            HighestTemperatureK = found.HighestTemperature?.Si,
            Chemicals = found.Chemicals,
            SocketedOn = found.SocketedOn,
            IsAtDrum = Known(found.AtDrum),
            BaselineDiameterM = found.BaselineDiameter?.Si,
            StrengthLoss = found.StrengthLoss?.Si,
            LengthLeftM = found.LengthLeft?.Si,
            DrumTurnsLeft = found.DrumTurnsLeft?.Si,
            DrumDiameterM = found.DrumDiameter?.Si,
            Attachment = new(request.Attachment?.Efficiency?.Si, Known(request.Attachment?.ResinByDesign)),
        };
    }

    /// <param name="result">What was found out.</param>
    /// <param name="units">Units of the answer.</param>
    public static ServiceInspectionResult ToContract(InspectionResult result, UnitSystem units) => new()
    {
        Disposition = result.Disposition,
        Checks = result.Checks.Select(check => Check(check, units)).ToArray(),
        CutFrom = Quantity.From(result.CutFromM, QuantityKind.Length, units),
        RopeLeft = new()
        {
            Enough = result.Left.Enough switch { true => Fact.Yes, false => Fact.No, _ => Fact.Unknown },
            DrumTurns = Quantity.From(result.Left.TurnsAfterCut, QuantityKind.Count, units),
        },
        NextDue = result.NextDue is { } due
            ? new() { On = due.On, Rule = due.Rule.Text, Source = AnswerMaker.Source(due.Rule.Source) }
            : null,
        Strictest = result.Strictest is { } strictest ? Check(strictest, units) : null,
    };

    private static InspectionCheckResult Check(InspectionCheck check, UnitSystem units) => new()
    {
        Id = check.Id,
        Outcome = check.Outcome,
        Measured = check.Measured is { } measured ? Quantity.From(measured, units) : null,
        Limit = Quantity.From((Measure?)check.Limit, units),
        Rule = check.Limit.Text,
        RuleSet = check.Limit.RuleSet,
        Source = AnswerMaker.Source(check.Limit.Source),
        Missing = check.Missing,
    };

    private static bool? Known(Fact? fact) => fact switch { Fact.Yes => true, Fact.No => false, _ => null };
}
