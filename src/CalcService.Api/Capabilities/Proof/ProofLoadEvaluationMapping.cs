using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Compounds;
using CalcService.Engine.Cones;
using CalcService.Engine.Findings;
using CalcService.Engine.Proof;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Proof;

/// <summary>An evaluation from the contract to the engine and back.</summary>
public static class ProofLoadEvaluationMapping
{
    /// <param name="request">A valid request.</param>
    /// <param name="sheet">The sheet of its compound.</param>
    public static ProofInput ToEngine(ProofLoadEvaluationRequest request, Engine.Compounds.CompoundSheet sheet)
    {
        var (test, socket, measured) = (request.Test ?? new(), request.Socket, request.Measured);
        return new()
        {
            TestedAt = request.TestedAt,
            Purpose = request.Purpose ?? Purpose.Pour,
            RuleSet = request.RuleSet,
            Compound = sheet,
            Rope = request.Rope.ToEngine(),
            Basket = socket.Basket.ToEngine(),
            OuterAtSmallEndM = socket.OuterAtSmallEnd?.Si,
            OuterAtMouthM = socket.OuterAtMouth?.Si,
            ProofRatingN = socket.ProofRating?.Si,
            RatedLoadN = test.RatedLoad?.Si,
            ProofLoadN = test.ProofLoad?.Si,
            ProofLoadFrom = test.ProofLoadFrom,
            ExclusionZone = test.ExclusionZone,
            Hardness = new(test.Hardness?.Method, test.Hardness?.Value?.Si, test.Hardness?.ReadAt ?? HardnessPlace.Unknown),
            Friction = test.Friction?.Si,
            ReadAt = test.SeatingReadAt ?? SeatingPlace.Unknown,
            ReadUnderLoad = Known(test.ReadUnderLoad),
            Measured = measured is null ? null
            : [.. (measured.Steps ?? []).Select(step => new MeasuredStep(step.Load.Si, step.Seating?.Si))],
            Observations = new()
            {
                WireSlip = measured?.WireSlip,
                Cracks = measured?.Cracks,
                Asymmetry = measured?.Asymmetry,
                CreepUnderHold = measured?.CreepUnderHold,
            },
        };
    }

    /// <param name="result">What was computed.</param>
    /// <param name="units">Units of the answer.</param>
    public static ProofLoadEvaluationResult ToContract(ProofResult result, UnitSystem units) => new()
    {
        Verdict = result.Verdict,
        Phase = result.IsAfter ? "after" : "before",
        ProofLoad = Quantity.From(result.ProofLoadN, QuantityKind.Force, units),
        LeastTestLoad = Quantity.From(result.LeastTestLoadN, QuantityKind.Force, units),
        MostTestLoad = Quantity.From(result.MostTestLoadN, QuantityKind.Force, units),
        Steps = result.Steps.Select(step => new ProofStepResult
        {
            Share = Quantity.From(step.Share, QuantityKind.Fraction, units),
            Load = Quantity.From(Measure.Force(step.LoadN), units),
            ExpectedSeating = Band(step.Expected, units),
            Seating = Quantity.From(step.SeatingM, QuantityKind.Length, units),
        }).ToArray(),
        ExpectedSeating = Band(result.Expected, units),
        SeatingReadAt = result.ReadAt,
        Checks = result.Checks.Select(check => new ProofCheckResult
        {
            Id = check.Id,
            Outcome = check.Outcome,
            Measured = check.Measured is { } measured ? Quantity.From(measured, units) : null,
            Limit = check.Limit is { } limit ? Quantity.From(limit, units) : null,
            Source = AnswerMaker.Source(check.Source),
            Missing = check.Missing,
        }).ToArray(),
    };

    private static ExpectedSeating? Band(SeatingBand? band, UnitSystem units) => band is null ? null : new()
    {
        Low = Quantity.From(Measure.Length(band.LowM), units),
        High = Quantity.From(Measure.Length(band.HighM), units),
    };

    private static bool? Known(Fact? fact) => fact switch { Fact.Yes => true, Fact.No => false, _ => null };
}
